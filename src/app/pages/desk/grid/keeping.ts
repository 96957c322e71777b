import { hashOf } from "../../../../base/text/hash.ts";
import type { GridDraft } from "../../../../show/desk/grid/draft.ts";
import { keepAtDesk, keptAtDesk } from "../../../desk/drafts.ts";

/** A grid that was begun and not saved, with its address. */
export interface KeptGrid {
  readonly at: string;
  readonly grid: GridDraft;
}

const beginning = "grid-";
const inTab = (at: string): string => `variorum grid ${at}`;

/** The address of a grid, by what was known when it was asked for. */
export function gridPath(presets: readonly (readonly [string, string])[]): string {
  const query = presets.map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(value)}`);
  return query.length === 0 ? "/grid" : `/grid?${query.join("&")}`;
}

/** The grid of an address that this tab has at hand. */
export function gridInTab(at: string): GridDraft | null {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(inTab(at)) ?? "null");
    return isGrid(kept) ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps a grid at once in this tab and soon at the desk, where there is one; null once it is saved or thrown away. */
export function keepGrid(at: string, grid: GridDraft | null, atDesk: boolean): void {
  try {
    if (grid) sessionStorage.setItem(inTab(at), JSON.stringify(grid));
    else sessionStorage.removeItem(inTab(at));
  } catch {
    // A tab without storage still has the desk.
  }
  if (atDesk) keepAtDesk(`${beginning}${hashOf(at).slice(0, 16)}`, grid && { at, grid });
}

/** All grids that the desk has kept: from other addresses, other tabs, or from before the program ended. */
export async function gridsAtDesk(): Promise<readonly KeptGrid[]> {
  const kept = await keptAtDesk(beginning);
  return kept.flatMap(({ value }) => {
    const { at, grid } = (value ?? {}) as Partial<Record<keyof KeptGrid, unknown>>;
    return typeof at === "string" && /^\/grid(?:\?|$)/u.test(at) && isGrid(grid) ? [{ at, grid }] : [];
  });
}

/** Whether something kept is a grid: neither the tab nor the folder is only ours. */
function isGrid(value: unknown): value is GridDraft {
  const { columns, every, rows, fresh } = (value ?? {}) as Partial<Record<keyof GridDraft, unknown>>;
  return (
    areTexts(columns) &&
    areTexts(fresh) &&
    isCells(every) &&
    Array.isArray(rows) &&
    rows.every((row: unknown) => {
      const { key, cells } = (row ?? {}) as { readonly key?: unknown; readonly cells?: unknown };
      return Number.isSafeInteger(key) && isCells(cells);
    })
  );
}

function areTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every((one) => typeof one === "string");
}

function isCells(value: unknown): boolean {
  return (
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    Object.values(value).every((one) => typeof one === "string")
  );
}
