import type { Graph } from "../../../../link/graph.ts";
import { everywhere, kindOf } from "../../../../read/grammar/kinds.ts";
import { folded } from "../../../../link/dimension.ts";
import { withheldIn } from "../../../withhold.ts";
import { unitInHead } from "./unit-in-head.ts";

/** The lists that come in as tables. */
export type TableList = "artefacts" | "measurements";

/** What a column of a table holds. */
export type Meaning =
  /** A field of the record; of a value, the unit of figures that come bare; of a reference, the register by which it is named first. */
  | {
      readonly is: "field";
      readonly field: string;
      readonly unit?: string;
      readonly register?: string;
    }
  /** Figures of one dimension, one for each row, in a unit where they come bare. */
  | { readonly is: "dimension"; readonly dimension: string; readonly unit: string | null }
  /** What is ± of the figures of a dimension, or of the value where there is one. */
  | { readonly is: "uncertainty"; readonly dimension: string | null; readonly unit: string | null }
  /** The unit of the value. */
  | { readonly is: "unit" }
  /** An artefact's number in a register. */
  | { readonly is: "number"; readonly register: string }
  | { readonly is: "nothing" };

/** A column's meaning as it is written in an option of the command line; `meaningFrom` reads it. */
export function meaningText(meaning: Meaning): string {
  switch (meaning.is) {
    case "field": {
      const by = meaning.register === undefined ? "" : ` by ${meaning.register} number`;
      return `${meaning.field}${by}${unitText(meaning.unit ?? null)}`;
    }
    case "dimension":
      return `${meaning.dimension}${unitText(meaning.unit)}`;
    case "uncertainty": {
      const of = meaning.dimension === null ? "" : ` of ${meaning.dimension}`;
      return `uncertainty${of}${unitText(meaning.unit)}`;
    }
    case "unit":
      return "unit";
    case "number":
      return `${meaning.register} number`;
    case "nothing":
      return "nothing";
  }
}

const unitText = (unit: string | null): string => (unit === null ? "" : ` in ${unit}`);

/** The meaning that a text of an option states for a column of a list; null where it states none. */
export function meaningFrom(graph: Graph, text: string, list: TableList): Meaning | null {
  const said = text.trim().replace(/\s+/g, " ");
  if (said === "nothing") return { is: "nothing" };
  const { name, unit } = unitOf(graph, said);
  const fields = fieldsOf(list);
  const by = /^(.+) by (.+) number$/u.exec(name);
  if (by?.[1] !== undefined && by[2] !== undefined && fields.includes(by[1]) && unit === null)
    return { is: "field", field: by[1], register: by[2] };
  if (list === "artefacts") {
    const number = /^(.+) number$/u.exec(said);
    if (number?.[1] !== undefined) return { is: "number", register: number[1] };
    return fields.includes(said) || said.startsWith("x-") ? { is: "field", field: said } : null;
  }
  if (said === "unit") return { is: "unit" };
  if (name === "value") return { is: "field", field: "value", ...(unit === null ? {} : { unit }) };
  if (name === "uncertainty") return { is: "uncertainty", dimension: null, unit };
  const uncertain = /^uncertainty of (.+)$/u.exec(name)?.[1];
  if (uncertain !== undefined)
    return { is: "uncertainty", dimension: dimensionKnown(graph, uncertain) ?? uncertain, unit };
  if (fields.includes(said) || said.startsWith("x-")) return { is: "field", field: said };
  return name === "" ? null : { is: "dimension", dimension: dimensionKnown(graph, name) ?? name, unit };
}

function unitOf(graph: Graph, text: string): { readonly name: string; readonly unit: string | null } {
  const at = text.lastIndexOf(" in ");
  const unit = at < 0 ? "" : text.slice(at + 4);
  return at > 0 && graph.settings.quantities.units.find(unit)
    ? { name: text.slice(0, at), unit }
    : unitInHead(text, graph.settings.quantities.units);
}

/** The fields that a column of a list may be. A map or list has no place in a cell. */
export function fieldsOf(list: TableList): readonly string[] {
  const all = { ...kindOf(list).fields, ...everywhere };
  return Object.entries(all).flatMap(([name, { type }]) => (deep.has(type) ? [] : [name]));
}

const deep: ReadonlySet<string> = new Set(["textMap", "numberMap", "group", "items", "named", "json"]);

/** The corpus's name for a dimension that is declared or was measured, however it is spelled; null where there is none. */
export function dimensionKnown(graph: Graph, written: string): string | null {
  return dimensionsIn(graph).get(folded(written)) ?? null;
}

const known = new WeakMap<Graph, ReadonlyMap<string, string>>();

/** Every spelling of a dimension in the corpus, as it is compared, with the name that the corpus has for it. */
function dimensionsIn(graph: Graph): ReadonlyMap<string, string> {
  const before = known.get(graph);
  if (before) return before;
  const names = new Map<string, string>();
  for (const { name, also } of graph.settings.dimensions)
    for (const one of [name, ...also]) names.set(folded(one), name);
  const withheld = withheldIn(graph);
  for (const { id, values } of graph.list("measurements")) {
    if (withheld(id)) continue;
    const name = graph.dimensionName(values.dimension);
    names.set(folded(values.dimension), name);
  }
  known.set(graph, names);
  return names;
}

/** The names of all dimensions that the corpus declares or has measured. */
export function dimensionNames(graph: Graph): readonly string[] {
  return [...new Set(dimensionsIn(graph).values())];
}
