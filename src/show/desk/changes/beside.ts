import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import { words } from "../../pages/pieces.ts";
import { sheetOf } from "../../pages/sheet.ts";
import { fieldChanges } from "./fields.ts";
import type { FieldChange } from "./fields.ts";
import type { Hidden } from "./hidden.ts";
import type { Compared, RecordChange } from "./told.ts";
import { fieldsOf } from "./written.ts";
import type { RecordWritten } from "./written.ts";

/** Entries of the bibliographies that are others than they were. */
export function sourceChanges(before: Compared, after: Compared, hidden: Hidden): readonly RecordChange[] {
  const keys = new Set([...before.graph.sources.keys(), ...after.graph.sources.keys()]);
  return [...keys].flatMap((key): readonly RecordChange[] => {
    const [was, is] = [before.graph.sources.get(key), after.graph.sources.get(key)];
    const file = is?.span.file ?? was?.span.file ?? "";
    if (hidden.names(key) || JSON.stringify(was?.csl) === JSON.stringify(is?.csl)) return [];
    const lines = (model: Compared): ReadonlyMap<string, FieldChange["before"]> => {
      const sheet = sheetOf(model, [], model.files, key);
      const title = [{ label: null, pieces: [words(sheet?.title ?? "")] }];
      return new Map(
        sheet ? [["title", title], ...sheet.fields.map((one) => [one.name, one.lines] as const)] : [],
      );
    };
    const [one, two] = [lines(before), lines(after)];
    const fields = [...new Set([...one.keys(), ...two.keys()])].flatMap((name): readonly FieldChange[] => {
      const [before_, after_] = [one.get(name) ?? [], two.get(name) ?? []];
      return JSON.stringify(before_) === JSON.stringify(after_)
        ? []
        : [{ name, before: before_, after: after_ }];
    });
    const how = was ? (is ? "changed" : "taken") : "added";
    const text = labelOf((is ? after : before).graph, key);
    return [{ id: is ? key : null, kind: "source", text, how, from: null, file, fields }];
  });
}

/** What `corpus.yaml` says otherwise; of what is withheld nothing. */
export function settingsChanges(old: Graph, now: Graph, hidden: Hidden): readonly RecordChange[] {
  const one = (graph: Graph): RecordWritten => {
    const { withhold: _, ...fields } = fieldsOf(graph.settings.node);
    const { file } = graph.settings;
    return { id: "", named: false, list: null, fields, file, start: 0, known: null };
  };
  const fields = fieldChanges(
    { graph: old, record: one(old), hidden },
    { graph: now, record: one(now), hidden },
  );
  const { file } = now.settings;
  return fields.length === 0
    ? []
    : [{ id: null, kind: "settings", text: now.settings.title, how: "changed", from: null, file, fields }];
}
