import type { Id } from "../../../../base/finding.ts";
import { coded, row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { artefactCalled } from "../../grid/columns/artefact.ts";
import { numberKey } from "../../grid/columns/number.ts";
import { withheldIn } from "../../../withhold.ts";

/** What a cell refers to as a record writes it, or why that is not known. */
export type Named = { readonly text: string } | { readonly problem: Text };

/** The artefact that a cell names by its id, its name or a number. */
export function artefactIn(graph: Graph, text: string, register: string | null): Named {
  const found = artefactCalled(graph, text, register);
  if (found.is === "found") return { text: found.id };
  if (found.is === "several") {
    const all = row(found.ids.slice(0, 5).map(coded), "comma");
    return { problem: say`Several artefacts are called ${coded(text)}, expected one: ${all}` };
  }
  if (found.near.length > 0)
    return {
      problem: say`Unknown artefact ${coded(text)}, expected ${row(found.near.map(coded), "or")}`,
    };
  return {
    problem: say`Unknown artefact ${coded(text)}, expected the id, the name or a number of one`,
  };
}

/** The scholars that a cell names, by id, name or another spelling; a semicolon parts several. */
export function scholarsIn(graph: Graph, text: string): readonly string[] {
  const withheld = withheldIn(graph);
  return text.split(";").flatMap((part) => {
    const said = part.trim();
    if (said === "" || graph.records.has(said)) return said === "" ? [] : [said];
    const key = numberKey(said);
    const found = graph
      .list("scholars")
      .filter(
        ({ id, values }) =>
          !withheld(id) &&
          [values.name, ...(values["known-as"] ?? [])].some((name) => numberKey(name) === key),
      );
    const [only] = found;
    return [found.length === 1 && only ? only.id : said];
  });
}

/** A citation as records write it: `vane-1968 p. 12` as it is, `Vane 1968, p. 12` by what the source is called. */
export function citationIn(graph: Graph, text: string): string {
  const said = text.trim();
  const key = said.split(/\s/u)[0] ?? "";
  if (graph.sources.has(key) || graph.records.has(key)) return said;
  const withheld = withheldIn(graph);
  const called = [...graph.sources.values()].filter((one) => !withheld(one.key) && isCalled(said, one.label));
  const [only] = called;
  if (!only || called.length > 1) return said;
  const locator = said.slice(only.label.length).replace(/^[\s,:;]+/u, "");
  return `${only.key} ${locator}`.trim();
}

/** Whether a text begins with what a source is called, and goes on with a locator or nothing. */
function isCalled(text: string, label: string): boolean {
  return (
    text.toLowerCase().startsWith(label.toLowerCase()) && !/^[\p{L}\p{N}]/u.test(text.slice(label.length))
  );
}

/** An artefact of the corpus that has a number in a register; null where none or several have it. */
export function numberedAs(graph: Graph, register: string, number: string): Id | null {
  const found = artefactCalled(graph, number, register);
  if (found.is !== "found") return null;
  const record = graph.records.get(found.id);
  const own = record?.list === "artefacts" ? record.values.numbers?.get(register) : undefined;
  return own !== undefined && numberKey(own) === numberKey(number) ? found.id : null;
}
