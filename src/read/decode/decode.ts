import type { Edit, Finding, Fix, Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { coded, row, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Field, Fields } from "../grammar/field.ts";
import { collector } from "./collector.ts";
import { bareFields } from "./fielded.ts";
import { likenessIn, nearOrAny, requiredIn, shapeWords } from "./named.ts";
import { choiceOf, leavesIn, tooLong } from "./leaf.ts";
import { listOfOne } from "./met.ts";
import type { Fail, Leaves } from "./leaf.ts";
import { isEmpty, plainOf, valueAt } from "../yaml/tree.ts";
import type { Entry, MapNode, Node } from "../yaml/tree.ts";
import { quoted } from "../yaml/split.ts";

/** Turns one file's trees into values by the grammar's fields, telling what does not fit. */
export interface Decoder {
  /** The good fields of a map, or null when a required one is missing or bad. */
  readonly map: (node: MapNode, fields: Fields, open?: Open) => Record<string, unknown> | null;
  /** Says which record is being read: what is told is about it. */
  readonly concerning: (id: Id | null) => void;
  /** Adds a finding about a whole record. */
  readonly tell: (message: Text, node: Node) => void;
  /** What was told: the first thousand findings, and of the others how many there are. */
  readonly findings: readonly Finding[];
  /** How often anything was told. */
  readonly told: () => number;
}

/** What else a map may hold, and what decides that it is no loss to lose an entry. */
interface Open {
  /** Names allowed besides the fields: those that begin with `x-` always are. */
  readonly also?: readonly string[];
  /** Lists whose bad entry costs the whole record. */
  readonly whole?: readonly string[];
}

/** The edits that put another text in the place of a value; null where none is certain. */
export type Putting = (node: Node & { is: "text" }, text: string) => readonly Edit[] | null;

/** A decoder for one file, reading quantities in the given context. */
export function decoderFor(
  file: string,
  context: QuantityContext,
  putting: Putting = (node, text) => [
    { file, start: node.start, end: node.end, text: node.plain ? text : quoted(text) },
  ],
): Decoder {
  const found = collector();
  let told = 0;
  let isTrial = false;
  let about: readonly Id[] = [];
  const standard = leavesIn(context);
  const covered = new Map<1 | 2, Leaves>();

  const tell = (
    message: Text,
    start: number,
    end: number,
    rule = "bad-value",
    fix: Fix | null = null,
  ): void => {
    told++;
    if (!isTrial) found.bad(message, { file, start, end }, { rule, fix, about });
  };

  const leavesFor = (node: MapNode): Leaves => {
    const coverage = valueAt(node, "coverage");
    const k = coverage?.is === "text" ? (coverage.text === "2" ? 2 : coverage.text === "1" ? 1 : null) : null;
    if (k === null) return standard;
    const known = covered.get(k) ?? leavesIn({ ...context, coverage: k });
    covered.set(k, known);
    return known;
  };

  /** The text that is being read. */
  let here: Node & { is: "text" } = { is: "text", text: "", plain: true, start: 0, end: 0 };

  /** Tells at its place what is wrong with the text that is being read. */
  const fail: Fail = (said, { rule, start, end, replacement } = {}) => {
    const node = here;
    // Offsets within the text are offsets in the file only where the text stands as it is.
    const inside = node.plain && start !== undefined && node.end - node.start === node.text.length;
    // The line end of a text under its key stays where it is.
    const put = replacement?.trim();
    const edits = put === undefined ? null : putting(node, put);
    const fix = put === undefined || edits === null ? null : { label: say`Write ${put}`, edits };
    tell(
      said,
      inside ? node.start + start : node.start,
      inside && end !== undefined ? node.start + end : node.end,
      rule,
      fix,
    );
    return null;
  };

  const leaf = (type: keyof Leaves, node: Node, leaves: Leaves): unknown => {
    if (node.is !== "text") return wrong(node, say`a single value`);
    here = node;
    return leaves[type](node.text, fail);
  };

  const wrong = (node: Node, expected: Said): null => {
    tell(say`Unexpected ${shapeWords[node.is]}, expected ${expected}`, node.start, node.end);
    return null;
  };

  const listOf = (
    type: keyof Leaves,
    node: Node,
    leaves: Leaves,
    whole: boolean,
  ): readonly unknown[] | null => {
    if (node.is === "map") return wrong(node, say`a value or a list of values`);
    const entries = node.is === "list" ? node.items : [node];
    const good: unknown[] = [];
    for (const entry of entries) {
      const read = leaf(type, entry, leaves);
      if (read !== null) good.push(read);
    }
    // A list that grew has room for seventeen, and hundreds of thousands of one or two are kept: hence the copy.
    if (whole && good.length < entries.length) return null;
    return good.length === 1 ? listOfOne(good[0]) : good.slice();
  };

  const mapOf = (
    type: "text" | "amount" | "chance",
    node: Node,
    leaves: Leaves,
  ): ReadonlyMap<string, unknown> | null => {
    if (node.is !== "map") return wrong(node, say`a map of names to values`);
    const pairs = node.entries.map((entry) => [entry.key, leaf(type, entry.value, leaves)] as const);
    return new Map(pairs.filter(([, value]) => value !== null));
  };

  const choice = (of: readonly string[], node: Node): unknown => {
    if (node.is !== "text") return wrong(node, say`one word`);
    here = node;
    return choiceOf(of)(node.text, fail);
  };

  const itemsOf = (field: Field & { type: "items" }, node: Node): readonly unknown[] => {
    const entries = node.is === "list" ? node.items : [node];
    const good = entries.map((entry) => {
      if (entry.is === "map") return map(entry, field.fields);
      if (entry.is === "text" && field.short) return map(standingFor(entry, field.short), field.fields);
      return wrong(entry, say`a map with ${row(Object.keys(field.fields), "comma")}`);
    });
    return good.filter((value) => value !== null).slice();
  };

  const namedOf = (field: Field & { type: "named" }, node: Node): ReadonlyMap<string, unknown> | null => {
    if (node.is !== "map") return wrong(node, say`a map of names`);
    const pairs = node.entries.map((entry) => {
      const value =
        entry.value.is === "map" ? map(entry.value, field.fields) : wrong(entry.value, say`a map of fields`);
      return [entry.key, value] as const;
    });
    return new Map(pairs.filter(([, value]) => value !== null));
  };

  const value = (field: Field, node: Node, leaves: Leaves, whole: boolean): unknown => {
    switch (field.type) {
      case "texts":
        return listOf("text", node, leaves, whole);
      case "refs":
        return listOf("ref", node, leaves, whole);
      case "citations":
        return listOf("citation", node, leaves, whole);
      case "quantities":
        return listOf("quantity", node, leaves, whole);
      case "textMap":
        return mapOf("text", node, leaves);
      case "numberMap":
        return mapOf("amount", node, leaves);
      case "probability":
        return node.is === "map" ? mapOf("chance", node, leaves) : leaf("chance", node, leaves);
      case "choice":
        return choice(field.of, node);
      case "group":
        return node.is === "map" ? map(node, field.fields) : wrong(node, say`a map of fields`);
      case "items":
        return itemsOf(field, node);
      case "named":
        return namedOf(field, node);
      case "json":
        return plainOf(node) as Json;
      default: {
        const read = leaf(field.type, node, leaves);
        const long = typeof read === "string" ? tooLong(read, field.most) : null;
        if (long) tell(long, node.start, node.end);
        return long ? null : read;
      }
    }
  };

  const unknownField = (entry: Entry, fields: Fields, node: MapNode): void => {
    if (found.isFull()) return tell(entry.key, entry.keyStart, entry.keyEnd);
    const { names, nearTo, meantBy } = likenessIn(fields);
    const near = nearTo(entry.key);
    const meant = meantBy(entry.key);
    const field = meant === null ? undefined : fields[meant];
    const free = meant !== null && valueAt(node, meant) === null;
    const fix =
      field !== undefined && free && reads(field, entry.value, node)
        ? {
            label: say`Write ${meant}`,
            edits: [{ file, start: entry.keyStart, end: entry.keyEnd, text: meant }],
          }
        : null;
    tell(
      say`Unknown field \`${entry.key}\`, expected ${nearOrAny(near, names)}`,
      entry.keyStart,
      entry.keyEnd,
      "unknown-field",
      fix,
    );
  };

  /** Whether a value is what a field takes; nothing is told. */
  const reads = (field: Field, node: Node, map: MapNode): boolean => {
    const [before, outer] = [told, isTrial];
    isTrial = true;
    value(field, node, leavesFor(map), true);
    isTrial = outer;
    const isGood = told === before;
    told = before;
    return isGood;
  };

  const map = (node: MapNode, fields: Fields, open: Open = {}): Record<string, unknown> | null => {
    const leaves = leavesFor(node);
    const [names, values]: [string[], unknown[]] = [[], []];
    let whole = true;
    for (const entry of node.entries) {
      const field = Object.hasOwn(fields, entry.key) ? fields[entry.key] : undefined;
      if (!field) {
        if (!entry.key.startsWith("x-") && !open.also?.includes(entry.key)) unknownField(entry, fields, node);
        continue;
      }
      if (isEmpty(entry.value)) continue;
      const costly = open.whole?.includes(entry.key) ?? false;
      const read = value(field, entry.value, leaves, costly);
      const nothingLeft = Array.isArray(read) && read.length === 0 && entry.value.is === "list";
      if (nothingLeft && field.required && entry.value.is === "list" && entry.value.items.length === 0) {
        tell(
          say`Unexpected empty list in \`${entry.key}\`, expected at least one entry`,
          entry.value.start,
          entry.value.end,
        );
      }
      const isLost = read === null || (nothingLeft && field.required === true);
      if (isLost && (field.required || costly)) whole = false;
      const kept = isLost ? field.inDoubt : read;
      if (kept === undefined) continue;
      names.push(entry.key);
      values.push(kept);
    }
    const missing = requiredIn(fields).filter((name) => !hasValue(node, name));
    if (missing.length > 0) {
      const those = row(missing.map(coded), "comma");
      tell(say`Missing ${those}, expected in every such record`, ...beginning(node));
    }
    return whole && missing.length === 0 ? bareFields(names, values) : null;
  };

  return {
    map,
    get findings() {
      return found.all();
    },
    told: () => told,
    concerning: (id) => (about = id === null ? [] : [id]),
    tell: (message, node) => tell(message, ...beginning(node)),
  };
}

function hasValue(node: MapNode, name: string): boolean {
  const value = valueAt(node, name);
  return value !== null && !isEmpty(value);
}

/** The map a bare value stands for. */
function standingFor(node: Node, key: string): MapNode {
  const { start, end } = node;
  return { is: "map", start, end, entries: [{ key, keyStart: start, keyEnd: start, value: node }] };
}

/** Where something begins; an empty file has nothing there. */
function beginning(node: Node): readonly [start: number, end: number] {
  return [node.start, Math.min(node.start + 1, node.end)];
}
