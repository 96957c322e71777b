import { isAlias, isMap, isScalar, isSeq } from "yaml";
import type { Alias, Document, Node as YamlNode, Pair, Scalar, YAMLMap, YAMLSeq } from "yaml";
import { finding } from "../../base/finding.ts";
import type { Finding, Fix } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { quoted, withoutComment } from "./split.ts";
import { standing } from "./stood.ts";
import type { Entry, Node } from "./tree.ts";

const mostAliases = 100;

/** What a walk is made in: the file, and where it gathers what it finds. */
export interface Walked {
  readonly file: string;
  readonly text: string;
  readonly yaml: Document;
  readonly findings: Finding[];
  /** Where values stand that were taken apart. */
  readonly split: { readonly start: number; readonly end: number }[];
  readonly mend: Mend;
}

/** What to write for a value that was taken apart, given its field; null where no writing is certain. */
export type Mend = (key: string, whole: string) => string | null;

type Walk = (node: YamlNode) => Node;

/** Makes trees of texts from the nodes of a document that was read without an error. */
export function walkOf({ file, text, yaml, findings, split, mend }: Walked): Walk {
  let aliases = 0;
  const seen = new Map<YamlNode, Node>();
  const open = new Set<YamlNode>();
  const mayStand = standing();
  const tell = (rule: string, message: Text, start: number, end: number, fix: Fix | null = null): void => {
    findings.push(finding(rule, message, { file, start, end }, { fix }));
  };

  const walk: Walk = (node) => {
    const known = seen.get(node);
    if (known) return known;
    const [start, end] = rangeOf(node);
    if (
      !isAlias(node) &&
      node.tag !== undefined &&
      text.charCodeAt(start - 1) !== 33 &&
      hasTag(text, start)
    ) {
      tell("bad-value", say`Unexpected tag, expected a plain value`, tagStart(text, start), start);
    }
    open.add(node);
    const result = isAlias(node)
      ? aliased(node, start, end)
      : isScalar(node)
        ? scalar(node, start, end)
        : isSeq(node)
          ? list(node, start, end)
          : isMap(node)
            ? map(node, start, end)
            : { is: "text" as const, text: "", plain: true, start, end };
    open.delete(node);
    seen.set(node, result);
    return result;
  };

  const aliased = (node: Alias, start: number, end: number): Node => {
    const nothing: Node = { is: "text", text: "", plain: true, start, end };
    if (++aliases > mostAliases) {
      if (aliases === mostAliases + 1) {
        tell("bad-value", say`Unexpected alias, expected at most 100 aliases in a file`, start, end);
      }
      return nothing;
    }
    const target = node.resolve(yaml);
    if (!target || open.has(target)) {
      tell("bad-value", say`Unknown alias \`${node.source}\`, expected an anchor above it`, start, end);
      return nothing;
    }
    const stood = walk(target);
    if (mayStand(stood)) return stood;
    const message = say`Unexpected alias \`${node.source}\` of a value that comes to too much, expected it written where it stands`;
    tell("bad-value", message, start, end);
    return nothing;
  };

  const scalar = (node: Scalar, start: number, end: number): Node => {
    const plain = node.type === "PLAIN";
    const value = typeof node.value === "string" ? node.value : String(node.value ?? "");
    const cut = plain && value !== "" && /^[ \t]+#[\p{L}\p{N}]/u.test(text.slice(end, end + 300));
    if (cut) {
      const message = say`Unexpected comment inside a value, expected quotes round a text that holds #`;
      const next = text.indexOf("\n", end);
      const whole = withoutComment(text.slice(start, next < 0 ? text.length : next).trimEnd());
      apart(message, start, end, { start, end: start + whole.length, text: quoted(whole) });
    }
    // The line end after a text under its key is not the text's own: what is put in its place leaves it.
    const block = node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED";
    const last = block ? start + text.slice(start, end).trimEnd().length : end;
    return { is: "text", text: value, plain, start, end: last };
  };

  /** Tells a value that was taken apart, and remembers where, since the record is then not read by half. */
  const apart = (
    message: Text,
    start: number,
    end: number,
    edit: { readonly start: number; readonly end: number; readonly text: string } | null,
  ): void => {
    split.push(edit ?? { start, end });
    const label = edit?.text.startsWith('"') ? say`Put the value in quotes` : say`Write ${edit?.text ?? ""}`;
    const fix = edit === null ? null : { label, edits: [{ file, ...edit }] };
    tell("split-value", message, start, end, fix);
  };

  const list = (node: YAMLSeq, start: number, end: number): Node => ({
    is: "list",
    items: (node.items as readonly YamlNode[]).map(walk),
    start,
    end,
  });

  const map = (node: YAMLMap, start: number, end: number): Node => {
    const entries: Entry[] = [];
    const keys = new Set<string>();
    const pairs = node.items as readonly Pair<YamlNode, YamlNode | null>[];
    pairs.forEach((pair, place) => {
      const [keyStart, keyEnd] = rangeOf(pair.key);
      if (!isScalar(pair.key)) {
        tell("bad-value", say`Unexpected list, map or alias as a key, expected a word`, keyStart, keyEnd);
        return;
      }
      const key = String(pair.key.value ?? "");
      if (key === "<<") {
        tell("bad-value", say`Unexpected merge key \`<<\`, expected the fields themselves`, keyStart, keyEnd);
        return;
      }
      if (node.flow && !pair.value) {
        if (!isLone(pairs[place - 1])) splitBy(pairs, place);
        return;
      }
      if (keys.has(key)) {
        tell(
          "duplicate-key",
          say`Duplicate key \`${key}\`, expected it once; the first is kept`,
          keyStart,
          keyEnd,
        );
        return;
      }
      keys.add(key);
      const value: Node = pair.value
        ? walk(pair.value)
        : { is: "text", text: "", plain: true, start: keyEnd, end: keyEnd };
      entries.push({ key, keyStart, keyEnd, value });
    });
    return {
      is: "map",
      entries,
      start,
      end,
      parting: node.flow ? ", " : partingAt(entries[0]?.keyStart ?? start),
    };
  };

  const partingAt = (start: number): string => {
    const line = start === 0 ? 0 : text.lastIndexOf("\n", start - 1) + 1;
    const next = text.indexOf("\n", start);
    const lineEnd = text[(next < 0 ? line : next + 1) - 2] === "\r" ? "\r\n" : "\n";
    return `${lineEnd}${" ".repeat(start - line)}`;
  };

  /** In a flow map a comma ends a value: `{ value: 18,2 cm }` leaves a key without a value, `{ at: p. 1, 2, 3 }` two. */
  const splitBy = (pairs: readonly Pair<YamlNode, YamlNode | null>[], place: number): void => {
    const before = pairs[place - 1];
    const after = pairs.findIndex((pair, at) => at > place && !isLone(pair));
    const [keyStart] = rangeOf(pairs[place]?.key);
    const [, end] = rangeOf(pairs[after < 0 ? pairs.length - 1 : after - 1]?.key);
    if (!before?.value) {
      tell(
        "bad-value",
        say`Unexpected \`${text.slice(keyStart, end)}\` alone, expected a value`,
        keyStart,
        end,
      );
      return;
    }
    const [start] = rangeOf(before.value);
    const whole = text.slice(start, end);
    const plain = isScalar(before.value) && before.value.type === "PLAIN" && isScalar(before.key);
    // Quotes round a comment would make it part of the value.
    const certain = plain && !/(?:^|\s)#/u.test(whole);
    const put = certain && isScalar(before.key) ? mend(String(before.key.value), whole) : null;
    // Of a number the decimal sign is mended at once: quotes alone would not make it one.
    const number = put !== null && !put.startsWith('"');
    const expected = number
      ? say`the point as the decimal sign: \`${put}\``
      : put === null
        ? say`the value without one, or in quotes`
        : say`quotes round a value that holds a comma`;
    const message = say`Unexpected comma inside \`${whole}\`, expected ${expected}`;
    apart(message, start, end, put === null ? null : { start, end, text: put });
  };

  return walk;
}

/** A key of a flow map without a value. */
function isLone(pair: Pair<YamlNode, YamlNode | null> | undefined): boolean {
  return pair !== undefined && !pair.value;
}

function rangeOf(node: YamlNode | null | undefined): readonly [number, number] {
  const range = node?.range;
  return range ? [range[0], range[1]] : [0, 0];
}

function hasTag(text: string, start: number): boolean {
  return text.slice(tagStart(text, start), start).startsWith("!");
}

/** Where the word before a value begins, spaces between passed over. */
function tagStart(text: string, start: number): number {
  let at = start;
  while (at > 0 && /\s/.test(text[at - 1] ?? "")) at--;
  while (at > 0 && !/\s/.test(text[at - 1] ?? "")) at--;
  return at;
}
