import { say } from "../../../../base/text/said/said.ts";
import type { Leaf, LeafRun, Paragraph } from "./leaf.ts";
import { linesIn, paragraph, sizeOf } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { foot, margin, smallest } from "./room.ts";
import { ownRun } from "./words.ts";

const top = 92;

/** The entries of what a talk cites, on as many leaves as they need. */
export function referenceLeaves(entries: readonly (readonly LeafRun[])[], setup: Setup): readonly Leaf[] {
  const { width, height } = sizeOf(setup);
  const inner = width - 2 * margin;
  const room = height - foot - 8 - top;
  const leaves: Paragraph[][] = [];
  let used = room;
  for (const entry of entries) {
    const line = paragraph(entry, smallest, { before: 8 });
    const high = linesIn(setup, line, inner) * line.leading;
    if (leaves.length === 0 || used + line.before + high > room) {
      leaves.push([line]);
      used = high;
    } else {
      leaves.at(-1)?.push(line);
      used += line.before + high;
    }
  }
  const title = paragraph([ownRun(setup, say`References`, "ink")], 30);
  return leaves.map((lines, nth) => ({
    slide: null,
    nth,
    title: setup.told(say`References`),
    boxes: [
      { is: "text", role: "title", lines: [title], x: margin, y: 30, width: inner, height: title.leading },
      { is: "text", role: "body", lines, x: margin, y: top, width: inner, height: room },
    ],
    notes: null,
  }));
}
