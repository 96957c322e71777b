import type { Edit } from "../../finding.ts";
import { edited, inPlace } from "../edit.ts";
import { remembered } from "../remembered.ts";
import { linesIn } from "./lines.ts";

/** Lines of a file as they are and as edits would leave them; line ends are left out. */
export interface Hunk {
  readonly file: string;
  /** The first of the lines, counted from 1. */
  readonly line: number;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Tells what edits of some texts change, file by file and line by line; edits that share a line are one hunk. */
export function hunksIn(texts: ReadonlyMap<string, string>): (edits: readonly Edit[]) => readonly Hunk[] {
  const lineOf = linesIn(texts);
  // Once for all fixes: a text may be made anew each time it is looked up.
  const textOf = remembered((file) => texts.get(file) ?? "");
  return (edits) =>
    [...new Set(edits.map(({ file }) => file))].flatMap((file) => {
      const text = textOf(file);
      const own = edits.filter((edit) => edit.file === file);
      return groupsOf(text, own, (offset) => lineOf(file, offset).start).map((group) => {
        const before = text.slice(group.start, group.end);
        const moved = group.edits.map((one) => ({
          ...one,
          start: one.start - group.start,
          end: one.end - group.start,
        }));
        return {
          file,
          line: lineOf(file, group.start).line,
          before: linesOf(before),
          after: linesOf(edited(before, moved)),
        };
      });
    });
}

/** Edits that share a line, with the whole lines that they are in. */
function groupsOf(
  text: string,
  edits: readonly Edit[],
  lineStart: (offset: number) => number,
): readonly { readonly start: number; readonly end: number; readonly edits: readonly Edit[] }[] {
  const groups: { start: number; end: number; edits: Edit[] }[] = [];
  for (const edit of edits.toSorted(inPlace)) {
    const start = lineStart(edit.start);
    const next = text.indexOf("\n", edit.end);
    const end = next < 0 ? text.length : next;
    const last = groups.at(-1);
    if (last && start <= last.end) {
      last.end = Math.max(last.end, end);
      last.edits.push(edit);
    } else groups.push({ start, end, edits: [edit] });
  }
  return groups;
}

function linesOf(text: string): readonly string[] {
  return text.replace(/^\ufeff|\r$/gu, "").split(/\r?\n/u);
}
