import { finding } from "../base/finding.ts";
import type { Finding, Id } from "../base/finding.ts";
import type { QuantityContext } from "../base/quantity/quantity-text.ts";
import { coded, say } from "../base/text/said/said.ts";
import type { Said } from "../base/text/said/said.ts";
import { mendIn } from "./grammar/quoting.ts";
import { collector } from "./decode/collector.ts";
import { decoderFor } from "./decode/decode.ts";
import { eitherOf, likenessAmong, nearOrAny, shapeWords } from "./decode/named.ts";
import type { Decoder } from "./decode/decode.ts";
import type { Fields, ListName } from "./grammar/field.ts";
import { everywhere, kindOf, listNames } from "./grammar/kinds.ts";
import type { Kind } from "./grammar/kinds.ts";
import { placed } from "./record.ts";
import type { AnyRecord, FileRecords, Spoilt } from "./record.ts";
import type { SourceFile } from "./source-file.ts";
import { isEmpty, valueAt } from "./yaml/tree.ts";
import type { Entry, MapNode, Node } from "./yaml/tree.ts";
import { placesBefore } from "./yaml/kept.ts";
import type { Cut } from "./yaml/kept.ts";
import { large, moved, piecesOf, readPiece } from "./yaml/pieces.ts";
import { plainTree } from "./yaml/plain/scan.ts";
import { readAnyYaml } from "./yaml/text.ts";
import type { YamlText } from "./yaml/text.ts";
import { listNamed, treesIn, withSource } from "./yaml/trees.ts";
import type { Trees } from "./yaml/trees.ts";

/** Reads a file of records: a map of lists, each named after its kind. */
export function readRecords(file: SourceFile, context: QuantityContext): FileRecords {
  return (file.text.length < large ? null : readInPieces(file, context)) ?? readWhole(file, context);
}

/** An item as it was read, and the record as it last stood in its file. */
interface ItemRead {
  readonly tree: MapNode;
  readonly record: AnyRecord;
}

/** A file as it was read last, item by item; null for an item of which there was something to tell. */
interface FileRead extends Cut {
  /** The source at its head, which its items have besides. */
  readonly head: string;
  readonly items: readonly (ItemRead | null)[];
}

/** An edit of a large file changes an item or two: the others are not read again. */
const filesRead = new WeakMap<QuantityContext, Map<string, FileRead>>();

/** Reads a file item by item, as `readWhole` does; null where items have something to tell, or cannot be read by themselves. */
export function readInPieces({ path, text }: SourceFile, context: QuantityContext): FileRecords | null {
  const found = piecesOf(text);
  if (!found) return null;
  const { source, pieces } = found;
  const files = filesRead.get(context) ?? new Map<string, FileRead>();
  filesRead.set(context, files);
  const head = source ? `${text.slice(source.value.start, source.value.end)} ${source.keyStart}` : "";
  const last = files.get(path);
  const before = last?.head === head ? last : null;
  const places = before && placesBefore(before, { text, pieces });
  const decoder = decoderFor(path, context);
  const items: (ItemRead | null)[] = [];
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  for (const [at, piece] of pieces.entries()) {
    const place = places?.[at] ?? -1;
    const known = before?.items[place];
    if (known) {
      const isInPlace = before?.pieces[place]?.start === piece.start;
      const item = isInPlace ? known : { ...known, record: movedOn(known, piece.start, source) };
      items.push(item);
      records.push(item.record);
      continue;
    }
    const tree = readPiece(path, text, piece);
    if (!tree) return null;
    const told = decoder.told();
    const read = readRecord(piece.list, moved(tree, piece.start), source, path, decoder);
    const isRead = "list" in read;
    if (isRead) records.push(read);
    else spoilt.push(read);
    items.push(isRead && decoder.told() === told ? { tree, record: read } : null);
  }
  files.set(path, { text, pieces, head, items });
  return { records, spoilt, findings: decoder.findings };
}

function movedOn({ tree, record }: ItemRead, start: number, source: Entry | null): AnyRecord {
  let node: MapNode | null = null;
  return placed(
    record,
    () => {
      node ??= withSource(moved(tree, start), source, "from" in kindOf(record.list).fields);
      return node;
    },
    null,
  );
}

/** Reads a file of records as one text. */
export function readWhole(file: SourceFile, context: QuantityContext): FileRecords {
  const root = plainTree(file.text);
  if (!root) return readInFull(file, context);
  return recordsOf(file, { root, findings: [], split: [] }, context, treesIn(file));
}

/** The same by the reader of all of YAML, whatever the text is. */
export function readInFull(file: SourceFile, context: QuantityContext): FileRecords {
  return recordsOf(file, readAnyYaml(file.path, file.text, mendIn(context)), context, null);
}

function recordsOf(
  file: SourceFile,
  yaml: YamlText,
  context: QuantityContext,
  trees: Trees | null,
): FileRecords {
  if (!yaml.root) return { records: [], spoilt: idsIn(file.text), findings: yaml.findings };
  const decoder = decoderFor(file.path, context);
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  const found = collector();
  const owners = new Map<number, Id>();
  const apart = (node: Node): boolean => {
    if (yaml.split.length === 0) return false;
    const inside = yaml.split.filter(({ start }) => start >= node.start && start < node.end);
    const id = idOf(node);
    for (const { start } of inside) if (id !== null) owners.set(start, id);
    return inside.length > 0;
  };
  const source = yaml.root.entries.find((entry) => entry.key === "source" && !apart(entry.value)) ?? null;
  for (const entry of yaml.root.entries) {
    if (entry.key === "source" || entry.key.startsWith("x-")) continue;
    const list = listNamed(entry.key);
    if (!list) found.keep(unknownList(file.path, entry, yaml.root, found.isFull()));
    else if (entry.value.is === "list") {
      for (const node of entry.value.items) {
        if (apart(node))
          spoilt.push({
            id: idOf(node) ?? "",
            ...(node.is === "map" ? { written: { list, file: file.path, node } } : {}),
          });
        else if (node.is === "map") keep(readRecord(list, node, source, file.path, decoder));
        else found.keep(notARecord(file.path, node));
      }
    } else if (!isEmpty(entry.value)) found.keep(notARecord(file.path, entry.value));
  }
  function keep(read: AnyRecord | Spoilt): void {
    if (!("list" in read)) spoilt.push(read);
    else records.push(trees ? placed(read, trees, records.length + spoilt.length) : read);
  }
  const split = yaml.findings.map((one) => {
    const owner = one.rule === "split-value" ? owners.get(one.at?.start ?? -1) : undefined;
    return owner === undefined ? one : { ...one, about: [owner] };
  });
  // A list that grew has room for more than it came to hold.
  return { records: records.slice(), spoilt, findings: [...split, ...found.all(), ...decoder.findings] };
}

/** The id that a record is written with. */
function idOf(node: Node): Id | null {
  const written = node.is === "map" ? valueAt(node, "id") : null;
  return written?.is === "text" && written.text !== "" ? written.text : null;
}

/** One record from its tree; what is spoilt keeps its id, so that references to it are not blamed again. */
export function readRecord(
  list: ListName,
  written: MapNode,
  source: Entry | null,
  file: string,
  decoder: Decoder,
): AnyRecord | Spoilt {
  const kind = kindOf(list);
  const node = withSource(written, source, "from" in kind.fields);
  const id = idOf(node);
  decoder.concerning("id" in kind.fields ? id : null);
  const read = decoder.map(node, fieldsOf(list), costly);
  const values = read && meetsNeeds(kind, node, read, decoder) ? read : null;
  if (values === null) return { id: id ?? "", written: { list, file, node } };
  // The decoder gave each field the meaning that the grammar's table has for it.
  const own = values["id"] ?? null;
  return { list, id: own, named: own !== null, values, file, node } as unknown as AnyRecord;
}

const fieldsByList: ReadonlyMap<ListName, Fields> = new Map(
  listNames.map((list) => [list, { ...kindOf(list).fields, ...everywhere }]),
);

/** The fields that records of a list may have. */
export function fieldsOf(list: ListName): Fields {
  return fieldsByList.get(list) ?? everywhere;
}

/** Of these lists a bad entry costs the record. */
const costly = { whole: ["because"] };

/** Checks the sets of fields of which one must be given. */
function meetsNeeds(kind: Kind, node: MapNode, values: Record<string, unknown>, decoder: Decoder): boolean {
  if (!kind.needs) return true;
  const { oneOf, exactly } = kind.needs;
  const given = oneOf.filter((set) => set in values || set.split("+").every((name) => name in values));
  if (given.length === 1 || (given.length > 1 && !exactly)) return true;
  const written = oneOf.some((set) => set.split("+").some((name) => valueAt(node, name) !== null));
  const choices = eitherOf(oneOf.map((set) => allOf(set.split("+"))));
  if (given.length > 1) decoder.tell(say`Unexpected ${choices} together, expected one of them`, node);
  else if (!written) decoder.tell(say`Missing ${choices}, expected one of them`, node);
  return false;
}

function allOf(names: readonly string[]): Said {
  const [one = say``, ...others] = names.map(coded);
  return others.reduce((before, other) => say`${before} and ${other}`, one);
}

const lists = likenessAmong(listNames);

function unknownList(file: string, entry: Entry, root: MapNode, isCounted: boolean): Finding {
  const at = { file, start: entry.keyStart, end: entry.keyEnd };
  if (isCounted) return finding("unknown-field", entry.key, at);
  const near = lists.nearTo(entry.key);
  const only = lists.meantBy(entry.key);
  const free = only !== null && valueAt(root, only) === null;
  const fix = free ? { label: say`Write ${only}`, edits: [{ ...at, text: only }] } : null;
  return finding(
    "unknown-field",
    say`Unknown list \`${entry.key}\`, expected ${nearOrAny(near, listNames)}`,
    at,
    { fix },
  );
}

function notARecord(file: string, node: Node): Finding {
  const at = { file, start: node.start, end: node.end };
  return finding("bad-value", say`Unexpected ${shapeWords[node.is]}, expected a list of records`, at);
}

/** Ids that an unreadable file seems to hold: references to them are the file's fault, not theirs. */
export function idsIn(text: string): readonly Spoilt[] {
  return [...text.matchAll(/^[ \t-]*(?:\{ *)?id: *"?([a-z0-9][a-z0-9/-]*)/gm)].map((match) => ({
    id: match[1] ?? "",
  }));
}
