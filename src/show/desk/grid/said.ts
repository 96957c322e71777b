import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";
import { kindOf } from "../../../read/grammar/kinds.ts";
import { everywhere } from "../../../read/grammar/kinds.ts";
import type { Written, WrittenMap } from "../../../read/edit/written.ts";
import { artefactCalled } from "./columns/artefact.ts";
import type { ArtefactCalled } from "./columns/artefact.ts";
import { isOwnColumn, isSeveral, locator, saidIn } from "./draft.ts";
import type { GridDraft, GridRow } from "./draft.ts";
import { commonOf, figureWith } from "./figure.ts";
import type { Common } from "./figure.ts";

/** What a row of the grid would write into a file. */
export interface RowSaid {
  readonly values: WrittenMap;
  /** The thing it is of; null where none is named. */
  readonly of: ArtefactCalled | { readonly is: "fresh"; readonly name: string } | null;
}

const fields = { ...kindOf("measurements").fields, ...everywhere };

/** A row as a record would be written: the thing and the source by their ids, a bare figure with the unit of its column. */
export function saidBy(graph: Graph, draft: GridDraft, row: GridRow): RowSaid {
  const values: Record<string, Written> = {};
  const of = calledIn(graph, draft, saidIn(draft, row, "of"));
  const names = [
    ...Object.keys(fields),
    ...Object.keys({ ...draft.every, ...row.cells }).filter(isOwnColumn),
  ];
  for (const name of names) {
    const text = name === "of" && of?.is === "found" ? of.id : saidIn(draft, row, name);
    if (text !== "") values[name] = isSeveral(name) ? several(text) : text;
  }
  if (values["value"] !== undefined) values["value"] = figureIn(graph, draft, row);
  const from = citedAs(graph, values["from"], saidIn(draft, row, locator));
  if (from !== null) values["from"] = from;
  if (typeof values["via"] === "string") values["via"] = keyed(graph, values["via"]);
  return { values, of };
}

function calledIn(graph: Graph, draft: GridDraft, text: string): RowSaid["of"] {
  if (text === "") return null;
  // What is withheld is found by its id alone, which whoever typed it knows.
  if (graph.records.get(text)?.list === "artefacts") return { is: "found", id: text };
  const called = artefactCalled(graph, text);
  return called.is !== "found" && draft.fresh.includes(text) ? { is: "fresh", name: text } : called;
}

function several(text: string): Written {
  const all = text.split(";").flatMap((one) => (one.trim() === "" ? [] : [one.trim()]));
  const [only = text] = all;
  return all.length <= 1 ? only : all;
}

/** The figure of a row with what its column adds; a unit that cannot be read adds nothing. */
export function figureIn(graph: Graph, draft: GridDraft, row: GridRow): string {
  const own = saidIn(draft, row, "value");
  const context = graph.settings.quantities;
  const kind = graph.dimensionKind(graph.dimensionName(saidIn(draft, row, "dimension")));
  const common = commonIn(graph, draft);
  return common === null ? own : figureWith(own, common, context, kind);
}

function commonIn(graph: Graph, draft: GridDraft): Common | null {
  const text = draft.every["value"] ?? "";
  if (text.trim() === "") return null;
  const common = commonOf(text, graph.settings.quantities);
  return "code" in common ? null : common;
}

/** A citation with the place in the source behind the first key; null where no source is named. */
function citedAs(graph: Graph, from: Written | undefined, at: string): Written | null {
  if (from === undefined) return null;
  const all = (typeof from === "string" ? [from] : (from as readonly string[])).map((one) =>
    keyed(graph, one),
  );
  const [first = "", ...others] = all;
  const said = at === "" ? first : `${first}${/\s/u.test(first) ? "," : ""} ${at}`;
  return others.length === 0 ? said : [said, ...others];
}

/** A source by its key; one that is named as it is cited (`Vane 1968, p. 12`) by the key of the one that is cited so. */
function keyed(graph: Graph, text: string): string {
  const [key = ""] = text.split(/\s/u);
  if (graph.sources.has(key) || graph.records.has(key)) return text;
  const withheld = withheldIn(graph);
  const fitting = [...graph.sources.values()].filter(
    ({ key: id, label }) => !withheld(id) && label.length > 3 && beginsWith(text, label),
  );
  const longest = fitting.filter(({ label }) => fitting.every((one) => one.label.length <= label.length));
  const [only] = longest;
  if (only === undefined || longest.length > 1) return text;
  const rest = text.slice(only.label.length).replace(/^[\s,:]+/u, "");
  return rest === "" ? only.key : `${only.key} ${rest}`;
}

function beginsWith(text: string, label: string): boolean {
  const next = text.charAt(label.length);
  return text.slice(0, label.length).toLowerCase() === label.toLowerCase() && !/[\p{L}\p{N}]/u.test(next);
}

/** The artefacts that a grid names, the withheld ones left out; in the order in which they are met. */
export function thingsIn(graph: Graph, draft: GridDraft): readonly Id[] {
  const withheld = withheldIn(graph);
  const texts = new Set([
    ...draft.rows.map((row) => saidIn(draft, row, "of")),
    (draft.every["of"] ?? "").trim(),
  ]);
  const found = [...texts].flatMap((text) => {
    const called = calledIn(graph, draft, text);
    return called?.is === "found" && !withheld(called.id) ? [called.id] : [];
  });
  return [...new Set(found)];
}
