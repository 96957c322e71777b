import { finding } from "../../base/finding.ts";
import type { Finding, Id, Span } from "../../base/finding.ts";
import { nearestAmong } from "../../base/nearest.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { slipAmong } from "../../base/text/slip.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { Target } from "../../read/grammar/field.ts";
import { suchAs } from "../../read/decode/named.ts";
import { listNames } from "../../read/grammar/kinds.ts";
import { kindWords, oneOfKind } from "../../read/grammar/words.ts";
import { spanOf } from "../../read/record.ts";
import { nodeAt } from "../../read/yaml/tree.ts";
import type { Node, Step } from "../../read/yaml/tree.ts";
import type { AnyLinked } from "../graph.ts";
import type { Names } from "../names/name.ts";

/** What references are checked against. */
export interface Known {
  readonly names: Names;
  readonly sources: ReadonlyMap<Id, Source>;
  /** Records lost so far: what refers to them is not blamed again. */
  readonly lost: ReadonlySet<Id>;
}

/** What a citation may point to. */
export const cited: readonly Target[] = ["sources", "passages"];

/** Tells whether an id leads to something of the right kind, and says so when it does not. */
export function pointsTo(
  record: AnyLinked,
  id: Id,
  to: readonly Target[],
  path: readonly Step[],
  known: Known,
  findings: Finding[],
): boolean {
  const { names, sources, lost } = known;
  const at = (): Span => spanOf(record, ...path);
  const about = [record.id];
  const target = names.records.get(id);
  if (target && !lost.has(id)) {
    if ((to as readonly string[]).includes(target.list)) return true;
    const message = say`Unexpected ${kindWords[target.list]} \`${id}\`, expected ${expected(to)}`;
    findings.push(finding("unknown-reference", message, at(), { about }));
    return false;
  }
  if (sources.has(id)) {
    if (to.includes("sources")) return true;
    const message = say`Unexpected source \`${id}\`, expected ${expected(to)}`;
    findings.push(finding("unknown-reference", message, at(), { about }));
    return false;
  }
  if (lost.has(id) || names.lost.has(id)) return false;
  const { near, meant } = likeIn(to, known)(id);
  const written = meant === null ? null : writtenAt(nodeAt(record.node, path), id);
  const fix =
    meant === null || written === null
      ? null
      : { label: say`Write ${meant}`, edits: [{ file: record.file, ...written, text: meant }] };
  const message = say`Unknown id \`${id}\`, expected ${suchAs(expected(to), near)}`;
  findings.push(finding("unknown-reference", message, at(), { about, fix }));
  return false;
}

/** What an unknown id is like. */
interface Like {
  readonly near: readonly Id[];
  /** The one it can only be a slip for. */
  readonly meant: Id | null;
}

const likenesses = new WeakMap<Names, Map<string, (id: Id) => Like>>();

/** Tells what ids are like among all that may be referred to; an id that is unknown in many places is looked up once. */
function likeIn(to: readonly Target[], known: Known): (id: Id) => Like {
  const made = likenesses.get(known.names) ?? new Map<string, (id: Id) => Like>();
  likenesses.set(known.names, made);
  const had = made.get(to.join(" "));
  if (had) return had;
  const ids = candidates(to, known);
  const [nearest, slip] = [nearestAmong(ids), slipAmong(ids)];
  const found = new Map<Id, Like>();
  const like = (id: Id): Like => {
    const one = found.get(id) ?? { near: nearest(id), meant: slip(id) };
    found.set(id, one);
    return one;
  };
  made.set(to.join(" "), like);
  return like;
}

function candidates(to: readonly Target[], known: Known): readonly Id[] {
  const ids: Id[] = to.includes("sources") ? [...known.sources.keys()] : [];
  for (const record of known.names.records.values()) {
    if ((to as readonly string[]).includes(record.list)) ids.push(record.id);
  }
  return ids;
}

/** What a reference was to lead to, in words. */
export function expected(to: readonly Target[]): Text {
  if (to.length > listNames.length) return say`a record or a source`;
  const [one, ...others] = to;
  return one === undefined
    ? say`a record or a source`
    : say`${row([oneOfKind[one], ...others.map((target) => kindWords[target])], "or")}`;
}

/** Where an id that begins a value is written; null where the value is not written as it is meant. */
function writtenAt(node: Node, id: Id): { readonly start: number; readonly end: number } | null {
  if (node.is !== "text" || !node.text.startsWith(id)) return null;
  const quotes = node.plain ? 0 : 1;
  const asMeant = node.end - node.start === node.text.length + 2 * quotes && !node.text.endsWith("\n");
  const start = asMeant ? node.start + quotes : null;
  return start === null ? null : { start, end: start + id.length };
}
