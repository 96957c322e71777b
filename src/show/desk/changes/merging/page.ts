import { markedIn, sideOf } from "../../../../base/text/conflict-marks.ts";
import type { FileChange } from "../../../../base/text/edit.ts";
import { hashOf } from "../../../../base/text/hash.ts";
import type { Graph } from "../../../../link/graph.ts";
import { isList } from "../../../../read/edit/written.ts";
import { besideLists, recordsIn } from "../../../../read/edit/merge/reading.ts";
import { hiddenIn } from "../hidden.ts";
import type { Hidden } from "../hidden.ts";
import { mergingByLines } from "./lines.ts";
import { mergingByRecord } from "./records.ts";
import { answersIn, answersWritten, ownIn, settledAnswers } from "./told.ts";
import type { MergePage } from "./told.ts";

/** What is asked of a merge: the file, the answers so far, a letter for each clash, and whether it is to go by lines. */
export interface MergeAsked {
  readonly file: string;
  readonly answers: string;
  /** Own words in place of readings, as an address has them; left out where there are none. */
  readonly own?: string;
  readonly byLines: boolean;
}

/** The merge of a file of the corpus; `graph` is of the rest of it, null where it cannot be read at all. Null where there is no such file. */
export function mergePage(
  texts: ReadonlyMap<string, string>,
  graph: Graph | null,
  { file, answers, own = "", byLines }: MergeAsked,
): MergePage | null {
  const text = texts.get(file);
  if (text === undefined) return null;
  const marked = markedIn(text);
  if (!marked) return { file, marked: null };
  const sides = {
    base: sideOf(marked, "base"),
    mine: sideOf(marked, "mine"),
    theirs: sideOf(marked, "theirs"),
  };
  const hidden = graph ? hiddenIn(graph) : hiddenBy(texts, [sides.mine, sides.theirs, sides.base ?? ""]);
  const byRecord = mergingByRecord({ path: file, ...sides }, { graph, hidden });
  const lines = mergingByLines(marked, text, hidden);
  const taken = byLines || !byRecord ? lines : byRecord;
  const given = answersIn(taken.clashes, answers);
  const all = settledAnswers(taken.clashes, given, ownIn(own)).filter((one) => one !== null);
  const written = all.length === given.length ? taken.written(all) : null;
  return {
    file,
    marked: {
      names: marked.names,
      by: taken === lines ? "lines" : "record",
      byRecord: byRecord !== null,
      clashes: taken.clashes,
      answered: answersWritten(given),
      own,
      alone: taken.alone,
      change: written && "text" in written ? changeOf(file, text, written.text) : null,
      problem: written && "problem" in written ? written.problem : null,
      withheld: taken === lines && lines.withheld,
    },
  };
}

/** One exact edit from the first letter that differs to the last. */
function changeOf(file: string, text: string, next: string): FileChange {
  const shorter = Math.min(text.length, next.length);
  let start = 0;
  while (start < shorter && text[start] === next[start]) start++;
  let tail = 0;
  while (tail < shorter - start && text.at(-1 - tail) === next.at(-1 - tail)) tail++;
  const edit = { file, start, end: text.length - tail, text: next.slice(start, next.length - tail) };
  return { file, madeFor: hashOf(text), edits: [edit] };
}

/** What is withheld where the settings themselves are not merged: whatever any version of them withholds. */
function hiddenBy(texts: ReadonlyMap<string, string>, versions: readonly string[]): Hidden {
  const ids = [texts.get("corpus.yaml") ?? "", ...versions].flatMap((text) => {
    const said = recordsIn("corpus.yaml", text)?.get(besideLists)?.fields["withhold"];
    const all = said === undefined ? [] : isList(said) ? said : [said];
    return all.filter((one) => typeof one === "string");
  });
  return {
    names: (text) => {
      const name = text.split(/\s/u)[0] ?? "";
      return ids.some((id) => name === id || name.startsWith(`${id}/`));
    },
    place: () => true,
  };
}
