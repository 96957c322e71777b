import type { Id } from "../../../base/finding.ts";
import { byYear } from "../../../base/order.ts";
import { yearWords } from "../../../base/date/year-words.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { ownU } from "../../../derive/prepare/select.ts";
import type { Graph } from "../../../link/graph.ts";
import { authorOrCorpus, labelText } from "../../../link/names/label.ts";
import { siUnitFor, siWords } from "../../artefacts/si-words.ts";
import { withheldIn } from "../../withhold.ts";
import { isSeveral, locator } from "./draft.ts";

/** A measurement that is recorded already, as a row of the grid has it. */
export interface ThereRow {
  readonly id: Id;
  readonly of: Id;
  readonly name: Text;
  /** What stands in each column. */
  readonly cells: Readonly<Record<string, string>>;
  readonly si: string;
  readonly who: Text;
  /** When it was measured or said; null where nobody says. */
  readonly year: Text | null;
}

/** The measurements that are recorded of some things, dimension by dimension, each in the order of the years. */
export function recordedOf(graph: Graph, things: readonly Id[]): readonly ThereRow[] {
  const withheld = withheldIn(graph);
  const wanted = new Set(things.filter((id) => !withheld(id)));
  const met = graph.list("measurements").filter(({ id, values }) => wanted.has(values.of) && !withheld(id));
  const yearOf = (id: Id, own: number | undefined): number | null => own ?? graph.provenance(id).year;
  const placeOf = new Map([...wanted].map((id, place) => [id, place]));
  const names = [...new Set(met.map(({ values }) => graph.dimensionName(values.dimension)))];
  return met
    .toSorted(
      (a, b) =>
        (placeOf.get(a.values.of) ?? 0) - (placeOf.get(b.values.of) ?? 0) ||
        names.indexOf(graph.dimensionName(a.values.dimension)) -
          names.indexOf(graph.dimensionName(b.values.dimension)) ||
        byYear("last")(yearOf(a.id, a.values.year), yearOf(b.id, b.values.year)),
    )
    .map((record) => {
      const { id, values, node } = record;
      const year = yearOf(id, values.year);
      const { kind, value } = values.value;
      return {
        id,
        of: values.of,
        name: labelText(graph, values.of),
        cells: cellsOf(node.entries, withheld),
        si: siWords({ ...values.value, u: ownU(record) }, siUnitFor(kind, [value])),
        who: authorOrCorpus(graph, id),
        year: year === null ? null : yearWords(year),
      };
    });
}

/** What a record says by column, as it would be typed; the place in the source stands in a column of its own. */
function cellsOf(
  entries: readonly { readonly key: string; readonly value: { readonly is: string } }[],
  withheld: (id: Id) => boolean,
): Readonly<Record<string, string>> {
  const cells: Record<string, string> = {};
  for (const { key, value } of entries) {
    const texts = textsOf(value).filter((text) => !withheld(text.split(/\s/u)[0] ?? ""));
    if (texts.length === 0) continue;
    cells[key] = texts.join(isSeveral(key) ? "; " : " ");
    const [only = ""] = texts;
    const place = /\s/u.exec(only)?.index;
    if (key === "from" && texts.length === 1 && place !== undefined) {
      cells[key] = only.slice(0, place);
      cells[locator] = only.slice(place).trim();
    }
  }
  return cells;
}

function textsOf(value: { readonly is: string }): readonly string[] {
  const node = value as {
    readonly is: string;
    readonly text?: string;
    readonly items?: readonly { readonly is: string }[];
  };
  if (node.is === "text") return [node.text ?? ""].filter((one) => one !== "");
  return node.is === "list" ? (node.items ?? []).flatMap(textsOf) : [];
}
