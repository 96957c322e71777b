import type { Finding } from "../../base/finding.ts";
import type { Plan } from "../../base/text/edit.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { hunksIn } from "../../base/text/lines/hunk.ts";
import type { Hunk } from "../../base/text/lines/hunk.ts";
import { paint } from "./paint.ts";

/** What is planned: the findings that are mended, those that wait for another change, and those that are a choice. */
export interface Mending extends Plan<Finding> {
  readonly choices: readonly Finding[];
}

/** Each change with its lines as they are and as they would be (or were, and are), then how many there are. */
export function fixText(
  { done, waiting, choices, changes }: Mending,
  texts: ReadonlyMap<string, string>,
  written: boolean,
): readonly string[] {
  const hunksOf = hunksIn(texts);
  const hunks = ({ fix }: Finding): readonly Hunk[] => hunksOf(fix?.edits ?? []);
  const out: string[] = [];
  for (const one of done) out.push(...changeText(one, hunks(one), written), "");
  for (const one of waiting)
    out.push(...heading(one, hunks(one)), "    waits: it touches what another change does", "");
  for (const one of choices) {
    out.push(...changeText(one, hunks(one), false));
    out.push(`    a choice of yours: --rule ${one.rule} makes it`, "");
  }
  const made = `${many(done.length, "change")} in ${many(changes.length, "file")}`;
  const rest = [
    ...(waiting.length > 0 ? [`${waiting.length} waiting, to be asked for again afterwards`] : []),
    ...(choices.length > 0 ? [`${many(choices.length, "choice")} of yours`] : []),
  ];
  const beside = rest.length > 0 ? `; ${rest.join(", ")}` : "";
  if (done.length === 0) out.push(`Nothing can be mended with certainty${beside}.`);
  else if (written) out.push(`${made} made${beside}.`);
  else out.push(`${made} would be made${beside}. Nothing was written; --fix --write makes them.`);
  return out;
}

/** How many of something, in words. */
export function many(n: number, one: string): string {
  return `${n} ${one}${n === 1 ? "" : "s"}`;
}

function changeText(one: Finding, hunks: readonly Hunk[], written: boolean): readonly string[] {
  return [
    ...heading(one, hunks),
    ...hunks.flatMap((hunk, place) => [
      ...(place === 0 || hunk.file === hunks[place - 1]?.file ? [] : [`    ${hunk.file}`]),
      ...linesText(hunk, written),
    ]),
  ];
}

function heading(one: Finding, [hunk]: readonly Hunk[]): readonly string[] {
  const where = hunk ? `${hunk.file}:${hunk.line}` : "the corpus";
  const label = one.fix ? inEnglish(one.fix.label) : "";
  return [`${paint.bold(where)}  ${one.rule}  ${label}`, `    ${inEnglish(one.message)}`];
}

function linesText({ line, before, after }: Hunk, written: boolean): readonly string[] {
  const long = [...before, ...after].some((text) => text.length > widest);
  const from = long ? Math.max(0, firstDifference(before[0] ?? "", after[0] ?? "") - lead) : 0;
  const wide = String(line + Math.max(before.length, after.length)).length;
  const row = (text: string, place: number, word: string): string =>
    `    ${String(line + place).padStart(wide)} ${(place === 0 ? word : "").padEnd(8)} ┆ ${clipped(text, from)}`;
  return [
    ...before.map((text, place) => row(text, place, written ? "was" : "is")),
    ...after.map((text, place) => row(text, place, written ? "is now" : "would be")),
  ];
}

const lead = 48;
const widest = 100;

/** A long line is shown from a little before what changes. */
function clipped(text: string, from: number): string {
  const begun = from > 0 ? `…${text.slice(from)}` : text;
  return begun.length > widest ? `${begun.slice(0, widest - 1)}…` : begun;
}

function firstDifference(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}
