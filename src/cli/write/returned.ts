import { readFileSync, statSync } from "node:fs";
import { inEnglish } from "../../base/text/said/english.ts";
import { build } from "../../build.ts";
import type { SourceFile } from "../../build.ts";
import { NoCorpus, readCorpusFolder } from "../../host/corpus-folder.ts";
import { emptyMemo } from "../../host/evaluate.ts";
import { prepared } from "../../link/edit/prepare.ts";
import type { Graph } from "../../link/graph.ts";
import { labelOf } from "../../link/names/label.ts";
import { textsOf } from "../../read/source-file.ts";
import { isOpenThing } from "../../show/desk/visit/filled/signable.ts";
import { visitTold } from "../../show/desk/visit/filled/told.ts";
import type { VisitTold } from "../../show/desk/visit/filled/told.ts";
import { isReturned, largestReturned, returnedIn } from "../../show/desk/visit/returned.ts";
import { measurableIn, visibleIn } from "../../show/desk/visit/sheet/keys.ts";
import { atDesk } from "../desk/at-desk.ts";
import { Stop } from "../fault.ts";

/** Whether a file is a visit sheet that was filled in. */
export function isVisitFile(path: string): boolean {
  const about = statSync(path, { throwIfNoEntry: false });
  return about?.isFile() === true && about.size <= largestReturned && isReturned(readFileSync(path, "utf8"));
}

/** What the user asked of it. */
export interface Bringing {
  readonly into?: string;
  readonly json?: boolean;
}

/** Brings filled sheets into a corpus, each as one step of its desk, and prints what came in; exits with 1 where a row could not be read. */
export function bringVisits(paths: readonly string[], { into, json }: Bringing): void {
  if (into === undefined)
    throw new Stop("Missing --into, expected the folder of the corpus: variorum import FILE --into CORPUS");
  const other = paths.find((path) => !isVisitFile(path));
  if (other !== undefined)
    throw new Stop(`Unexpected file \`${other}\` beside a visit sheet, expected visit sheets alone`);
  const brought = paths.map((path) => bringVisit(path, into));
  const text =
    json === true
      ? JSON.stringify({ format: 1, visits: brought }, null, 2)
      : brought.flatMap(linesOf).map(withoutControls).join("\n");
  process.stdout.write(`${text}\n`);
  process.exitCode = brought.every((one) => one.failures.length === 0) ? 0 : 1;
}

/** What came of one filled sheet. */
interface Brought {
  readonly file: string;
  readonly added: VisitTold["coming"];
  /** Rows that the corpus has already, in words. */
  readonly already: readonly string[];
  readonly failures: readonly { readonly row: string; readonly why: string }[];
}

/** A line as a terminal may print it: what a stranger's file says gives it no orders. */
const withoutControls = (line: string): string => line.replace(/\p{Cc}/gu, "\uFFFD");

function linesOf({ file, added, already, failures }: Brought): readonly string[] {
  return [
    ...failures.map(({ row, why }) => `${file}: not brought in: ${row}: ${why}`),
    ...already.map((row) => `${file}: there already: ${row}`),
    countsText(added),
  ];
}

function bringVisit(path: string, folder: string): Brought {
  const returned = returnedIn(readFileSync(path, "utf8"));
  if ("problem" in returned) throw new Stop(`${path}: ${inEnglish(returned.problem)}`);
  const files = filesOf(folder);
  const { model } = build(files, [], emptyMemo(new Map()), {});
  if (!model) throw new Stop(`Unreadable corpus \`${folder}\`, expected one that variorum check can read`);
  const { graph } = model;
  const told = visitTold(graph, returned.asked, returned.filled);
  const [head] = told.head;
  if (head) throw new Stop(`${path}: ${inEnglish(head.message)}`);
  if (told.action !== null) written(folder, files, graph, told.action);
  const failures = Object.entries(told.measured).flatMap(([key, { troubles }]) =>
    troubles.map(({ message }) => ({ row: nameOf(graph, key), why: inEnglish(message) })),
  );
  const already = told.already.map((key) => nameOf(graph, key));
  return { file: path, added: told.coming, already, failures };
}

function written(
  folder: string,
  files: readonly SourceFile[],
  graph: Graph,
  action: NonNullable<VisitTold["action"]>,
): void {
  const texts = textsOf(files);
  const step = prepared({ graph, files: texts }, action);
  if ("problem" in step) throw new Stop(inEnglish(step.problem));
  if (!("changes" in step)) throw new Stop("Unexpected change of the corpus, expected it as it was read");
  const { changes } = step;
  atDesk(folder, (desk) => desk.edit(inEnglish(step.step), changes));
}

function nameOf(graph: Graph, key: string): string {
  const about = measurableIn(key);
  if (about !== null && isOpenThing(graph, about.of))
    return `${about.dimension} of ${labelOf(graph, about.of)}`;
  return visibleIn(key)?.feature ?? "a row of the sheet";
}

function countsText(coming: VisitTold["coming"]): string {
  const rows: readonly (readonly [number, string, string])[] = [
    [coming.measurements, "measurement", "measurements"],
    [coming.observations, "observation", "observations"],
    [coming.images, "image", "images"],
    [coming.arguments, "argument", "arguments"],
  ];
  const told = rows.flatMap(([n, one, more]) => (n === 0 ? [] : [`${n} ${n === 1 ? one : more}`]));
  return told.length === 0 ? "Nothing new in it." : `${told.join(", ")} added.`;
}

function filesOf(folder: string): readonly SourceFile[] {
  try {
    return readCorpusFolder(folder);
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
}
