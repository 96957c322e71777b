import type { Text } from "../../../../base/text/said/said.ts";
import type { WrittenMap, Written } from "../../../../read/edit/written.ts";
import { everywhere, kindOf } from "../../../../read/grammar/kinds.ts";
import type { Field, Fields } from "../../../../read/grammar/field.ts";
import type { Asked } from "./asked.ts";
import { pointed } from "./figure.ts";
import { artefactIn, citationIn, scholarsIn } from "./named.ts";

/** What a row comes to: one record, or of a wide table one for each figure in it. */
export interface RowDraft {
  /** Counted from 0. */
  readonly row: number;
  /** The column of its figure, where a row has several. */
  readonly column: number | null;
  /** The record as it would be typed into a file, the point for its decimal sign. */
  readonly values: WrittenMap;
  readonly troubles: readonly Text[];
}

/** A cell's text, trimmed; empty where the row ends before it. */
export function cellAt(asked: Asked, row: number, column: number): string {
  return asked.coming.rows[row]?.cells[column]?.text.trim() ?? "";
}

/** The fields that a row says beside its figures, and those that all rows get. */
export function fieldsAt(
  asked: Asked,
  row: number,
  isOther: (field: string) => boolean,
): { readonly values: Record<string, Written>; readonly troubles: readonly Text[] } {
  const values: Record<string, Written> = {};
  const troubles: Text[] = [];
  const put = (name: string, text: string, register: string | null): void => {
    const read = fieldIn(asked, name, text, register);
    if (read.problem !== null) troubles.push(read.problem);
    values[name] = read.value;
  };
  asked.columns.forEach(({ meaning }, column) => {
    const text = cellAt(asked, row, column);
    if (meaning.is !== "field" || text === "" || isOther(meaning.field)) return;
    put(meaning.field, text, meaning.register ?? null);
  });
  for (const [name, text] of Object.entries(asked.all))
    if (values[name] === undefined && text.trim() !== "" && !isOther(name)) put(name, text.trim(), null);
  return { values, troubles };
}

interface Read {
  readonly value: Written;
  readonly problem: Text | null;
}

/** The value of a field as a record has it: things and people by their ids, numbers with a point. */
function fieldIn({ graph, list, decimal }: Asked, name: string, text: string, register: string | null): Read {
  const fields: Fields = { ...kindOf(list).fields, ...everywhere };
  const field: Field | undefined = Object.hasOwn(fields, name) ? fields[name] : undefined;
  const good = (value: Written): Read => ({ value, problem: null });
  if (!field) return good(text);
  switch (field.type) {
    case "ref":
      if (field.to.join() !== "artefacts" || name === "part-of") return good(text);
      return told(text, artefactIn(graph, text, register));
    case "refs":
      return good(oneOrMore(field.to.includes("scholars") ? scholarsIn(graph, text) : parts(text)));
    case "citations":
      return good(oneOrMore(parts(text).map((one) => citationIn(graph, one))));
    case "citation":
      return good(citationIn(graph, text));
    case "quantity":
    case "number":
    case "amount":
      return told(text, pointed(text, decimal, graph.settings.quantities));
    case "quantities":
    case "texts": {
      const all = parts(text);
      if (field.type === "texts") return good(oneOrMore(all));
      const read = all.map((one) => pointed(one, decimal, graph.settings.quantities));
      const wrong = read.find((one) => "problem" in one);
      return {
        value: read.map((one, place) => ("text" in one ? one.text : (all[place] ?? ""))),
        problem: wrong && "problem" in wrong ? wrong.problem : null,
      };
    }
    default:
      return good(text);
  }
}

function told(text: string, read: { readonly text: string } | { readonly problem: Text }): Read {
  return "text" in read ? { value: read.text, problem: null } : { value: text, problem: read.problem };
}

const parts = (text: string): readonly string[] =>
  text
    .split(";")
    .map((one) => one.trim())
    .filter((one) => one !== "");

function oneOrMore(all: readonly string[]): Written {
  const [only = ""] = all;
  return all.length === 1 ? only : all;
}
