import { isAlias, isMap, isScalar, isSeq, parseDocument } from "yaml";
import type { Alias, Document, Node as YamlNode, Pair, Scalar, YAMLMap, YAMLSeq } from "yaml";
import { finding } from "../../base/finding.ts";
import type { Finding, Fix } from "../../base/finding.ts";
import { tooDeepAt } from "./nesting.ts";
import type { Entry, MapNode, Node } from "./tree.ts";

const mostAliases = 100;

/** What a YAML text gives: its map, and what could not be read. */
export interface YamlText {
  /** The file's one map; null when the text cannot be read. */
  readonly root: MapNode | null;
  readonly findings: readonly Finding[];
}

/** Reads one YAML 1.2 document whose scalars all stay text; what cannot be read is told with its place. */
export function readYaml(file: string, text: string): YamlText {
  const deep = tooDeepAt(text);
  if (deep !== null) {
    return unreadable(
      file,
      "Unexpected nesting of more than 64 levels, expected flatter records",
      deep,
      deep + 1,
    );
  }
  const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.exec(text);
  if (control) {
    const code = control[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
    const message = `Unexpected control character U+${code}, expected printable text`;
    return unreadable(file, message, control.index, control.index + 1);
  }
  const document = parseDocument(text, { schema: "failsafe", uniqueKeys: false, prettyErrors: false });
  const findings: Finding[] = document.errors.map((error) =>
    finding("unreadable-file", syntaxMessage(error.code, error.message), {
      file,
      start: error.pos[0],
      end: Math.max(error.pos[1], error.pos[0] + 1),
    }),
  );
  if (findings.length > 0) return { root: null, findings };
  if (!document.contents) return { root: { is: "map", entries: [], start: 0, end: 0 }, findings };
  const walk = walkOf(file, text, document, findings);
  const root = walk(document.contents);
  if (root.is !== "map") {
    return unreadable(
      file,
      "Unexpected list or text, expected a map of lists of records",
      root.start,
      root.end,
    );
  }
  return { root, findings };
}

function unreadable(file: string, message: string, start: number, end: number): YamlText {
  return { root: null, findings: [finding("unreadable-file", message, { file, start, end })] };
}

function syntaxMessage(code: string, message: string): string {
  switch (code) {
    case "TAB_AS_INDENT":
      return "Unexpected tab as indentation, expected spaces";
    case "MULTIPLE_DOCS":
      return "Unexpected second document, expected one document in a file";
    case "BLOCK_AS_IMPLICIT_KEY":
      return "Unexpected second colon in one line, expected quotes round a text that holds a colon";
    case "MISSING_CHAR":
      return `${message.replace(/"quote$/, "quote")}, expected it before the end`;
    default:
      return message;
  }
}

type Walk = (node: YamlNode) => Node;

function walkOf(file: string, text: string, document: Document, findings: Finding[]): Walk {
  let aliases = 0;
  const seen = new Map<YamlNode, Node>();
  const open = new Set<YamlNode>();
  const tell = (rule: string, message: string, start: number, end: number, fix: Fix | null = null): void => {
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
      tell("bad-value", "Unexpected tag, expected a plain value", tagStart(text, start), start);
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
        tell("bad-value", "Unexpected alias, expected at most 100 aliases in a file", start, end);
      }
      return nothing;
    }
    const target = node.resolve(document);
    if (!target || open.has(target)) {
      tell("bad-value", `Unknown alias \`${node.source}\`, expected an anchor above it`, start, end);
      return nothing;
    }
    return walk(target);
  };

  const scalar = (node: Scalar, start: number, end: number): Node => {
    const plain = node.type === "PLAIN";
    const value = typeof node.value === "string" ? node.value : String(node.value ?? "");
    const cut = plain && value !== "" ? /^[ \t]+#\S[^\r\n]*/.exec(text.slice(end, end + 300)) : null;
    if (cut && /^[ \t]+#\d/.test(cut[0])) {
      const whole = text.slice(start, end + cut[0].length).trimEnd();
      tell(
        "split-value",
        "Unexpected comment inside a value, expected quotes round a text that holds #",
        start,
        end,
        {
          label: "Put the whole line in quotes",
          edits: [{ file, start, end: start + whole.length, text: quoted(whole) }],
        },
      );
    }
    return { is: "text", text: value, plain, start, end };
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
        tell("bad-value", "Unexpected list, map or alias as a key, expected a word", keyStart, keyEnd);
        return;
      }
      const key = String(pair.key.value ?? "");
      if (key === "<<") {
        tell("bad-value", "Unexpected merge key `<<`, expected the fields themselves", keyStart, keyEnd);
        return;
      }
      if (node.flow && !pair.value) {
        splitAt(pairs[place - 1], keyStart, keyEnd);
        return;
      }
      if (keys.has(key)) {
        tell(
          "duplicate-key",
          `Duplicate key \`${key}\`, expected it once; the first is kept`,
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
    return { is: "map", entries, start, end };
  };

  /** In a flow map a comma ends a value: `{ value: 18,2 cm }` leaves a key without a value. */
  const splitAt = (before: Pair<YamlNode, YamlNode | null> | undefined, start: number, end: number): void => {
    const first = before?.value ? rangeOf(before.value)[0] : start;
    const whole = text.slice(first, end);
    tell(
      "split-value",
      `Unexpected comma inside \`${whole}\`, expected quotes round a value that holds a comma`,
      first,
      end,
      {
        label: "Put the value in quotes",
        edits: [{ file, start: first, end, text: quoted(whole) }],
      },
    );
  };

  return walk;
}

function rangeOf(node: YamlNode): readonly [number, number] {
  const range = node.range;
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

/** A text as a double-quoted YAML scalar. */
export function quoted(text: string): string {
  return `"${text.replace(/\\/g, "\\\\").replace(/"/g, '\\"')}"`;
}
