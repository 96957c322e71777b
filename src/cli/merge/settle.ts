import { existsSync, lstatSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import type { FileChange } from "../../base/text/edit.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { groundOf } from "../../build.ts";
import { openDesk } from "../../host/desk/desk.ts";
import { CannotWrite } from "../../host/desk/refusal.ts";
import { textsOf } from "../../read/source-file.ts";
import { mergePage } from "../../show/desk/changes/merging/page.ts";
import { letterOf } from "../../show/desk/changes/merging/told.ts";
import type { Choice, MergeClash, MergePage } from "../../show/desk/changes/merging/told.ts";
import { filesOf } from "../evaluated.ts";
import { Stop } from "../fault.ts";
import { clashesText, countText } from "./print.ts";

/** How the user settles a file in which two versions stand. */
export interface Settling {
  /** `ours`, `theirs` or `both` for all that clashes, or with `N=` before it for one. */
  readonly take: readonly string[];
  readonly byLines?: boolean;
}

/** The lines that say what clashes in a file, or that it was settled; whether it was. A settled file is one step of the desk. */
export function settle(
  given: string,
  { take, byLines = false }: Settling,
): { readonly lines: readonly string[]; readonly settled: boolean } {
  const { folder, file } = placeOf(given);
  const files = filesOf(folder);
  const texts = textsOf(files);
  const ground = groundOf(files, new Map(), undefined);
  const graph = "graph" in ground ? ground.graph : null;
  const asked = (answers: string): MergePage | null => mergePage(texts, graph, { file, answers, byLines });
  const open = asked("")?.marked ?? null;
  if (!open) throw new Stop(`No conflict marks in \`${given}\`, expected a file in which two versions stand`);
  const answers = answersIn(take, open.clashes);
  const { clashes, change, problem } = asked(answers)?.marked ?? open;
  if (problem !== null)
    throw new Stop(`${inEnglish(problem)}: nothing was written; --by-lines merges it line by line`);
  if (take.length === 0 && clashes.length > 0) return { lines: clashesText(given, open), settled: false };
  if (!change)
    throw new Stop(
      `Left: ${countText([...answers].filter((one) => one === "-").length)}, expected --take for each: nothing was written`,
    );
  written(folder, file, change);
  return {
    lines: [`Settled: ${given}, ${countText(clashes.length)}`, `Next: git add ${given}`],
    settled: true,
  };
}

/** The corpus that a file lies in, and its path there. */
function placeOf(given: string): { readonly folder: string; readonly file: string } {
  const path = resolve(given);
  if (!lstatSync(path, { throwIfNoEntry: false })?.isFile())
    throw new Stop(`Unknown file \`${given}\`, expected a file of a corpus`);
  for (let folder = dirname(path); ; folder = dirname(folder)) {
    if (existsSync(join(folder, "corpus.yaml")))
      return { folder, file: relative(folder, path).split(sep).join("/") };
    if (dirname(folder) === folder)
      throw new Stop(`No \`corpus.yaml\` above \`${given}\`, expected a file of a corpus`);
  }
}

const sideOf: Readonly<Record<string, Choice>> = { ours: "mine", theirs: "theirs", both: "both" };

/** The answers as a merge has them, a letter for each clash; what is said of one comes before what is said of all. */
function answersIn(take: readonly string[], clashes: readonly MergeClash[]): string {
  const said = new Map<number | null, Choice>();
  for (const one of take) {
    const found = /^(?:(\d+)=)?(ours|theirs|both)$/u.exec(one);
    const answer = sideOf[found?.[2] ?? ""];
    if (!found || answer === undefined)
      throw new Stop(
        `Unexpected --take ${one}, expected ours, theirs or both, or one of them for a place: 2=theirs`,
      );
    const place = found[1] === undefined ? null : Number(found[1]) - 1;
    if (place !== null && !clashes[place])
      throw new Stop(`Unknown place ${place + 1}, expected 1 to ${clashes.length}`);
    if (place !== null && !clashes[place]?.choices.includes(answer))
      throw new Stop(`Unexpected both for place ${place + 1}, expected ours or theirs: it takes one value`);
    said.set(place, answer);
  }
  const all = said.get(null);
  return clashes
    .map(({ choices }, place) => {
      const answer = said.get(place) ?? (all !== undefined && choices.includes(all) ? all : undefined);
      return answer === undefined ? "-" : letterOf[answer];
    })
    .join("");
}

function written(folder: string, file: string, change: FileChange): void {
  try {
    openDesk(folder).edit(`Merge two versions of ${file}`, [change]);
  } catch (error) {
    if (error instanceof CannotWrite) throw new Stop(error.message);
    throw error;
  }
}
