import type { FileChange } from "../../../../../base/text/edit.ts";
import { changeTo, edited } from "../../../../../base/text/edit.ts";
import { byText } from "../../../../../base/order.ts";
import type { Text } from "../../../../../base/text/said/said.ts";
import { changing } from "../../../../../base/text/texts.ts";
import type { Changing, Texts } from "../../../../../base/text/texts.ts";
import { placeOf } from "../../../../../link/edit/place.ts";
import { prepared } from "../../../../../link/edit/prepare.ts";
import { ownWritten } from "../../../../../read/edit/head.ts";
import { changeText } from "../../../../../read/edit/text-edits.ts";
import type { WrittenMap } from "../../../../../read/edit/written.ts";
import { portable } from "../../../../../read/source-file.ts";
import type { Asked } from "../asked.ts";
import type { TableOutcome } from "../outcome.ts";
import { tableText } from "./as-table.ts";

/** The changes of files that bring a table in, and the files that get records of it; or why it cannot be done. */
export type TableChanges =
  | {
      readonly changes: readonly FileChange[];
      readonly files: readonly { readonly file: string; readonly isNew: boolean; readonly records: number }[];
    }
  | { readonly problem: Text };

/** What bringing a table in does to the files of a corpus: artefacts that are merged are changed, what is new is added. */
export function tableChanges(
  asked: Asked,
  outcome: TableOutcome,
  files: ReadonlyMap<string, string>,
): TableChanges {
  const texts = changing(files);
  const { graph } = asked;
  const merging = outcome.twins.filter(({ choice }) => choice.do === "merge");
  const actions = merging.map(
    ({ record, merged }) =>
      ({ do: "change", id: record.id, seen: ownWritten(record), values: merged }) as const,
  );
  if (actions.length > 0) {
    const made = prepared({ graph, files }, { do: "together", actions });
    if ("problem" in made) return made;
    if (!("changes" in made))
      throw new Error("unexpected clash of a change with the record that it was made from");
    for (const { file, edits } of made.changes) texts.set(file, edited(texts.get(file) ?? "", edits));
  }
  const put = asked.as === "table" ? tableIn(asked, outcome, texts) : recordsIn(asked, outcome, texts);
  if ("problem" in put) return put;
  return {
    changes: texts
      .changed()
      .toSorted(([a], [b]) => byText(a, b))
      .map(([file, text]) => changeTo(file, files.get(file) ?? null, text)),
    files: put.files.map((one) => ({ ...one, isNew: !files.has(one.file) })),
  };
}

type Put =
  | { readonly files: readonly { readonly file: string; readonly records: number }[] }
  | { readonly problem: Text };

/** New records go where a person would put them, all of one file at once. */
function recordsIn({ graph, list }: Asked, { fresh }: TableOutcome, texts: Changing): Put {
  const before = texts.now();
  const places = new Map<string, ReturnType<typeof placeOf>>();
  const byFile = new Map<string, { readonly head: string; readonly records: WrittenMap[] }>();
  for (const { values } of fresh) {
    // Records that are about one thing and from one source go to one place.
    const key = JSON.stringify([values["from"], values["of"], values["part-of"]]);
    const place = places.get(key) ?? placeOf(graph, before, list, values);
    places.set(key, place);
    const headed = values["from"] !== undefined && place.record["from"] === undefined;
    const { from: _, ...rest } = values;
    const group = byFile.get(place.file) ?? { head: place.head, records: [] };
    group.records.push(headed ? rest : values);
    byFile.set(place.file, group);
  }
  for (const [file, { head, records }] of byFile) {
    const trouble = changeText(texts, file, { is: "add", list, records }, head);
    if (trouble) return trouble;
  }
  return { files: [...byFile].map(([file, { records }]) => ({ file, records: records.length })) };
}

/** A table goes into a file of its own, which `corpus.yaml` then names. */
function tableIn(asked: Asked, { fresh }: TableOutcome, texts: Changing): Put {
  if (fresh.length === 0) return { files: [] };
  const { settings } = asked.graph;
  const file = freeName(asked.coming.file.path, texts.now());
  texts.set(file, tableText(asked, fresh));
  const named = asked.list === "measurements" ? settings.measurementTables : settings.artefactTables;
  const path = [asked.list === "measurements" ? "measurement-tables" : "artefact-tables"];
  const trouble = changeText(texts, settings.file, { is: "setting", path, value: [...named, file] });
  return trouble ?? { files: [{ file, records: fresh.length }] };
}

/** The name of the file in letters that every disk takes, ending in `.csv`, and not taken. */
function freeName(path: string, texts: Texts): string {
  const own = path
    .replace(/^.*[/\\]/u, "")
    .replace(/\.[a-z]+$/iu, "")
    .normalize("NFC")
    .replace(/[^\p{L}\p{N}_-]+/gu, "-")
    .replace(/^-+|-+$/gu, "");
  for (let n = 1; ; n++) {
    const name = `${own === "" ? "table" : portable(own)}${n === 1 ? "" : `-${n}`}.csv`;
    if (![...texts.keys()].some((one) => one.toLowerCase() === name.toLowerCase())) return name;
  }
}
