/** A text cut to so many words, with an ellipsis where words were cut. */
export function clip(text: string, words: number): string {
  const all = text.split(/\s+/);
  if (all.length <= words) return text;
  const cut = all
    .slice(0, words)
    .join(" ")
    .replace(/[,;:]$/, "");
  return `${cut}${"\u2069".repeat(openIsolates(cut))} …`;
}

/** How many words a text has. */
export function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => word !== "" && word !== "…").length;
}

/** How many isolates a text opens and does not close: what follows it must not be turned round by them. */
function openIsolates(text: string): number {
  const opened = text.match(/[\u2066-\u2068]/gu)?.length ?? 0;
  return Math.max(0, opened - (text.match(/\u2069/gu)?.length ?? 0));
}
