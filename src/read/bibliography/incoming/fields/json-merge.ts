import { cslItem } from "../../csl.ts";
import { jsonAt } from "../../json.ts";
import type { Arrived, Entry } from "../arrived.ts";
import type { MergeField } from "./field.ts";
import type { Held } from "../shelf.ts";
import { jsonHand } from "./json.ts";

/** Keys about the item in its own file, which say nothing of the work. */
const own: ReadonlySet<string> = new Set(["id", "citation-key", "type"]);

/** The keys of CSL-JSON that the corpus's item lacks or that differ. */
export function jsonFields({ source, holding }: Held, arrived: Arrived, entry: Entry): readonly MergeField[] {
  const { start, end } = source.span;
  const has = new Map(jsonHand.fields(holding.text, start, end).map((one) => [one.name, one]));
  return jsonHand
    .fields(arrived.file.text, entry.start, entry.end)
    .flatMap((field): readonly MergeField[] => {
      const { name, text } = field;
      if (own.has(name) || name.startsWith("_") || text === "" || text === "null" || text === "[]") return [];
      const here = has.get(name);
      const fresh = { name, text, bare: field.is === "bare" };
      if (!here || here.text === "") return [{ name, here: null, theirs: text, write: [fresh], drop: [] }];
      const [a, b] = [here, field].map((one) =>
        readAlone(name, one.is === "bare" ? one.text : JSON.stringify(one.text)),
      );
      return a === b ? [] : [{ name, here: here.text, theirs: text, write: [fresh], drop: [name] }];
    });
}

/** A value as it is read, in one text. */
function readAlone(name: string, json: string): string {
  const read = jsonAt(json, 0);
  if ("message" in read) return json;
  const { csl } = cslItem(Object.fromEntries([[name, read.value]]), "x");
  return JSON.stringify(csl).normalize("NFC");
}
