import type { Finding } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { valueTrouble } from "../../../../link/dimension.ts";
import type { AnyLinked, Graph } from "../../../../link/graph.ts";
import { nameRecords } from "../../../../link/names/name.ts";
import { checkReferences } from "../../../../link/references/check.ts";
import { decoderFor } from "../../../../read/decode/decode.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import { readRecord } from "../../../../read/records.ts";
import type { AnyRecord } from "../../../../read/record.ts";
import { shownFindings } from "../../../withhold.ts";
import { placed } from "../../forms/checked/placed.ts";
import type { TableList } from "../../grid/columns/meaning.ts";

/** The file that rows are read as; no file of a corpus has such a name. */
const file = "\u0000table";

/** What is wrong with each of some new records of one list: read as a file would be, and tied to the corpus and to each other. */
export function troublesOf(
  graph: Graph,
  list: TableList,
  records: readonly WrittenMap[],
): readonly (readonly Text[])[] {
  const read = records.map((values) => {
    const decoder = decoderFor(file, graph.settings.quantities);
    const one = readRecord(list, placed(values).node, null, file, decoder);
    return { record: "list" in one ? one : null, findings: [...decoder.findings] };
  });
  const good = read.map(({ record }) => record).filter((one): one is AnyRecord => one !== null);
  const names = nameRecords(good, graph.sources, graph.spoilt ?? []);
  const linked = new Map([...names.records.values()].map((one) => [one.node, one]));
  const all = new Map<string, AnyLinked>(
    [...graph.records.values(), ...graph.leftOut, ...linked.values()].map((one) => [one.id, one]),
  );
  const known = {
    names: { ...names, records: all },
    sources: graph.sources,
    lost: new Set(graph.leftOut.map((one) => one.id)),
  };
  const kinds = new Map<string, AnyLinked>();
  return read.map(({ record, findings }, place) => {
    const control = controlSign(records[place] ?? {});
    if (control !== null) return [control];
    const one = record && linked.get(record.node);
    const tied: Finding[] = [];
    if (one) {
      checkReferences(one, known, tied);
      tied.push(...valueTroubles(graph, one, kinds));
    }
    return [...findings, ...tied].map((it) => shownFindings(graph, [it])[0]?.message ?? it.message);
  });
}

/** What is wrong with a value of its dimension; a dimension that the corpus does not know is of the kind of its first figure. */
function valueTroubles(graph: Graph, one: AnyLinked, kinds: Map<string, AnyLinked>): readonly Finding[] {
  if (one.list !== "measurements") return [];
  const name = graph.dimensionName(one.values.dimension);
  const first = kinds.get(name) ?? one;
  kinds.set(name, first);
  const kind =
    graph.dimensionKind(name) ?? (first.list === "measurements" ? first.values.value.kind : undefined);
  const anySign = graph.settings.dimensions.some((it) => it.anySign && it.name === name);
  return [valueTrouble(one, name, kind, anySign) ?? []].flat();
}

/** Signs that no file may have. */
function controlSign(values: WrittenMap): Text | null {
  const found = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|\p{Cs}/u.exec(
    Object.values(values)
      .map((one) => (typeof one === "string" ? one : Object.values(one).join(" ")))
      .join(" "),
  );
  if (!found) return null;
  const code = found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
  return say`Unexpected control character ${`U+${code}`}, expected printable text`;
}
