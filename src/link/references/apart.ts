import { finding } from "../../base/finding.ts";
import type { Finding } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Citation } from "../../read/grammar/field.ts";
import { spanOf } from "../../read/record.ts";
import { nodeAt } from "../../read/yaml/tree.ts";
import type { Node, Step } from "../../read/yaml/tree.ts";
import type { AnyLinked } from "../graph.ts";
import type { Known } from "./points-to.ts";

const locatorWord = /^(pp?|figs?|pls?|nos?|nn?|cols?|chs?|vols?|tabs?|§+)\.?$/iu;

/** Whether a comma took a citation of a list apart: `[vane-1968 p. 12, fig. 3]` has two entries, and no source is called `fig.`. */
export function apartAt(
  record: AnyLinked,
  citations: readonly Citation[],
  path: readonly Step[],
  { names, sources }: Known,
  findings: Finding[],
): boolean {
  const isTail = ({ key }: Citation): boolean =>
    locatorWord.test(key) && !sources.has(key) && !names.records.has(key);
  const first = citations.findIndex(isTail);
  if (first < 0) return false;
  const next = citations.findIndex((one, place) => place > first && !isTail(one));
  const last = (next < 0 ? citations.length : next) - 1;
  const [head, tail] = [nodeAt(record.node, [...path, first - 1]), nodeAt(record.node, [...path, last])];
  const word = citations[first]?.key ?? "";
  const message = say`Unexpected \`${word}\` as a source, expected quotes round a citation that holds a comma`;
  const at = spanOf(record, ...path, first);
  const bare =
    first > 0 &&
    canQuote(
      citations
        .slice(first - 1, last + 1)
        .map((_, place) => nodeAt(record.node, [...path, first - 1 + place])),
    );
  const edits = [
    { file: record.file, start: head.start, end: head.start, text: '"' },
    { file: record.file, start: tail.end, end: tail.end, text: '"' },
  ];
  const fix = bare ? { label: say`Put the citation in quotes`, edits } : null;
  findings.push(finding("split-value", message, at, { about: [record.id], fix }));
  return true;
}

/** Whether quotes round the whole of these give one text: nothing between them but a comma and a space, no quotes within. */
function canQuote(nodes: readonly Node[]): boolean {
  return nodes.every((node, place) => {
    const before = nodes[place - 1];
    const near = before === undefined || node.start - before.end <= 2;
    return near && node.is === "text" && node.plain && !/["\\]/u.test(node.text);
  });
}
