import { isBlock, isFlow } from "../site/site.ts";
import type { Site } from "../site/site.ts";
import { columnOf } from "./lines.ts";

/** How the writer of a file writes: learnt from what stands in it, with the manual's habits where it does not say. */
export interface Hand {
  /** Columns by which a map stands further in than its key. */
  readonly step: number;
  /** Columns by which the dashes of a list stand further in than its key: of records, and within them. */
  readonly dashOfRecords: number;
  readonly dash: number;
  /** Spaces behind a dash. */
  readonly gap: number;
  /** What stands inside the brackets of a map and of a list, at both ends. */
  readonly insideMap: string;
  readonly insideList: string;
  /** The most entries of a map within a record that is written in one line; 0 where all are written over lines. */
  readonly mostInLine: number;
}

/** Learns the hand of a file. */
export function handOf(text: string, root: Site | null): Hand {
  const met = {
    step: [],
    records: [],
    dash: [],
    gap: [],
    map: [],
    list: [],
    inLine: [],
    overLines: [],
  } as Met;
  if (root) look(text, root, 0, met);
  const records = most(met.records) ?? most(met.dash) ?? 2;
  const small = Math.max(3, ...met.inLine);
  return {
    step: most(met.step) ?? 2,
    dashOfRecords: records,
    dash: most(met.dash) ?? records,
    gap: most(met.gap) ?? 1,
    insideMap: most(met.map) ?? " ",
    insideList: most(met.list) ?? "",
    mostInLine: met.inLine.length === 0 && met.overLines.length > 0 ? 0 : small,
  };
}

/** The quotes that a record is written with: those it has more of; null where it has none. */
export function quotesIn(site: Site): "single" | "double" | null {
  const count = (style: Site["style"], at: Site): number =>
    (at.style === style ? 1 : 0) + at.parts.reduce((sum, { value }) => sum + count(style, value), 0);
  const [single, double] = [count("single", site), count("double", site)];
  return single === double && single === 0 ? null : single > double ? "single" : "double";
}

interface Met {
  readonly step: number[];
  readonly records: number[];
  readonly dash: number[];
  readonly gap: number[];
  readonly map: string[];
  readonly list: string[];
  readonly inLine: number[];
  readonly overLines: number[];
}

function look(text: string, site: Site, depth: number, met: Met): void {
  if (isFlow(site) && site.parts.length > 0) {
    const inside = /^[ \t]*/u.exec(text.slice(site.start + 1, site.end))?.[0] ?? "";
    const oneLine = !text.slice(site.start, site.end).includes("\n");
    if (oneLine) (site.style === "flow map" ? met.map : met.list).push(inside);
    if (oneLine && site.style === "flow map" && depth > 2) met.inLine.push(site.parts.length);
  }
  if (site.style === "block map" && depth > 2) met.overLines.push(site.parts.length);
  for (const { from, at, value } of site.parts) {
    const below = isBlock(value) && text.slice(at, value.start).includes("\n");
    const further = columnOf(text, value.start) - columnOf(text, from);
    if (site.style === "block map" && below) {
      if (value.style === "block map") met.step.push(further);
      else (depth === 0 ? met.records : met.dash).push(further);
    }
    if (site.style === "block list" && value.start > at && !below && !/\n/u.test(text.slice(at, value.start)))
      met.gap.push(value.from - at);
    look(text, value, depth + 1, met);
  }
}

/** The value met most often, the first of several. */
function most<T>(values: readonly T[]): T | null {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best: T | null = null;
  for (const [value, count] of counts) if (best === null || count > (counts.get(best) ?? 0)) best = value;
  return best;
}
