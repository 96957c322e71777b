import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { decoderFor } from "../../../../read/decode/decode.ts";
import { readRecord } from "../../../../read/records.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { alikeIn, comparedField } from "../offered/alike.ts";
import type { Alike } from "../offered/alike.ts";
import { headFrom } from "../../../../read/edit/head.ts";
import { shownOf } from "../filled/asked.ts";
import { recordOf } from "../filled/found.ts";
import type { FormAsked } from "../filled/asked.ts";
import { fieldsIn } from "../layout.ts";
import { labelsIn } from "../offered/labels.ts";
import type { Choice } from "../offered/choices.ts";
import { placed } from "./placed.ts";
import { sayingOf } from "./saying.ts";
import { tiedFindings } from "./tied.ts";
import { troublesOf } from "./troubles.ts";
import type { Trouble } from "./troubles.ts";
import { meaningsIn } from "./understood.ts";
import type { Meaning } from "./understood.ts";

/** What there is to say about a form as it is filled in; nothing of it that is withheld is in it. */
export interface Checked {
  /** What it says, as a form shows it, with what is proposed where nothing was typed. */
  readonly values: WrittenMap;
  readonly troubles: readonly Trouble[];
  readonly meanings: readonly Meaning[];
  readonly alike: readonly Alike[];
  /** The id that a new record gets where none is chosen; null where it needs none. */
  readonly proposed: Id | null;
  /** What the records and sources are called that are named in it. */
  readonly names: readonly Choice[];
}

/** The file that a form's record is read as; no file of a corpus has such a name. */
const file = "\u0000form";

/** Reads a form as a file would be read, and ties it to the corpus as it would be tied. */
export function checkedForm(graph: Graph, asked: FormAsked): Checked {
  const { list, id } = asked;
  const { values, seen, misread, proposed, given } = sayingOf(graph, asked);
  const found = troublesIn(graph, asked, values);
  const before = seen && found.length > 0 ? troublesIn(graph, asked, seen) : [];
  const keyOf = (one: Trouble): string => JSON.stringify([one.path[0], inEnglish(one.message)]);
  const old = new Set(before.map(keyOf));
  const shown = shownOf(graph, asked, values);
  return {
    values: shown,
    troubles: [
      ...misread.map((one) => ({ ...one, fixes: [], fresh: true })),
      ...found.map((one) => ({ ...one, fresh: !old.has(keyOf(one)) })),
      // What cannot be read is not missing besides.
    ].filter((one, _, all) => !isMissing(one) || all.filter((it) => samePath(it, one)).length === 1),
    meanings: [...given, ...meaningsIn(fieldsIn(list), shown, graph.settings.quantities)],
    alike: alikeTo(graph, asked, values),
    proposed: id === null ? proposed : null,
    names: labelsIn(graph, list, asked.entered),
  };
}

/** Records that nearly say what was typed; what the record said already was nobody's doubt just now. */
function alikeTo(graph: Graph, { list, id, seen }: FormAsked, values: WrittenMap): readonly Alike[] {
  const name = comparedField[list];
  const text = name === undefined ? undefined : values[name];
  return typeof text === "string" && name !== undefined && text !== seen?.[name]
    ? alikeIn(graph, list, text, id)
    : [];
}

function isMissing({ message }: Trouble): boolean {
  return inEnglish(message).startsWith("Missing ");
}

function samePath(a: Trouble, b: Trouble): boolean {
  return JSON.stringify(a.path) === JSON.stringify(b.path);
}

function troublesIn(graph: Graph, asked: FormAsked, values: WrittenMap): readonly Trouble[] {
  const unprintable = unprintableIn(values, []);
  if (unprintable.length > 0) return unprintable;
  const record = recordOf(graph, asked);
  const head = record && values["from"] === undefined ? headFrom(record) : null;
  const whole = placed(head === null ? values : { ...values, from: head });
  const decoder = decoderFor(file, graph.settings.quantities, (node, text) => [
    { file, start: node.start, end: node.end, text },
  ]);
  const read = readRecord(asked.list, whole.node, null, file, decoder);
  const linked = "list" in read ? tiedFindings(graph, read, record?.id ?? null) : [];
  const findings = [...decoder.findings, ...linked].filter((one) => one.at?.file === file);
  return troublesOf(graph, findings, whole, fieldsIn(asked.list), values);
}

/** Signs that no file may have: control characters, and halves of signs that are no text at all. */
const unprintableSign = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|\p{Cs}/u;

function unprintableIn(written: Written, path: readonly Step[]): readonly Trouble[] {
  if (typeof written !== "string") {
    const inside: readonly (readonly [Step, Written])[] = isList(written)
      ? written.map((one, place) => [place, one] as const)
      : Object.entries(written);
    return inside.flatMap(([step, one]) => unprintableIn(one, [...path, step]));
  }
  const found = unprintableSign.exec(written);
  if (!found) return [];
  const code = found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
  const message = say`Unexpected control character ${`U+${code}`}, expected printable text`;
  const without = written.replace(new RegExp(unprintableSign, "gu"), "");
  return [{ path, message, fixes: [without], fresh: true }];
}
