const lines = {
  stands: `<path d="M0 6H32" stroke-width="4"/>`,
  open: `<path d="M0 3.5H32M0 8.5H32" stroke-width="1.8" stroke-dasharray="6.5 6"/>`,
  falls: `<path d="M0 3H13L17 9H32" stroke-width="2.5" fill="none"/>`,
  unsupported: `<path d="M1 6H32" stroke-width="2" stroke-dasharray="0.1 5.4" stroke-linecap="round"/>`,
} as const;

/** The line that tells a standing, before its word: solid, two dashed, stepping down, dotted. */
export function standingLine(standing: keyof typeof lines): string {
  return `<svg width="24" height="9" viewBox="0 0 32 12" stroke="currentColor" aria-hidden="true" focusable="false">${lines[standing]}</svg> `;
}
