import { formatIn, formatWithU, writtenUnit } from "../../../base/quantity/quantity-print.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { Hole, Row, Said, Text } from "../../../base/text/said/said.ts";
import { authorLabel, labelText } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import { sumWords } from "../../../link/ties/tie.ts";
import { withheldIn } from "../../../link/withheld.ts";
import { apart } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { chained, few } from "../../../base/text/said/rows.ts";
import { byCause, tell, whose } from "../tell.ts";
import { comparedIn } from "./ties/compared.ts";
import type { Compared, FromOthers, Given } from "./ties/compared.ts";
import { partsByWhole, takingOf, tiesOf } from "./ties/tied.ts";

export const dimensionsDisagree: Rule = {
  id: "dimensions-disagree",
  level: "warning",
  title: say`A dimension differs from what it should equal by the other dimensions of the thing.`,
  doc: say`The settings say that the one equals a sum of the others (\`equals\`), and the measurements differ by more than twice the combined standard uncertainty, with the corpus's reproducibility added to each. Each dimension enters as a derivation would take it; errors with one cause are added up before they are compared, so that what both sides share cancels. A preserved dimension is only a lower bound. Look for a slip of the pen, a mixed-up unit, other landmarks, or a thing that has not the shape that the sum asks for: π times the diameter is the way around a circle alone. A sum of parts is compared only where every recorded part has the dimension, and it takes for granted that no part is lost or left unrecorded and that nothing overlaps.`,
  find: ({ graph, judgement }) => {
    if (graph.ties.length === 0) return { findings: [] };
    const withheld = withheldIn(graph);
    const taking = takingOf(graph, (id) => judgement.counts(id) && !withheld(id));
    const parts = partsByWhole(graph);
    const compared = graph
      .list("artefacts")
      .flatMap(({ id }) => (withheld(id) ? [] : tiesOf(graph, id, parts.get(id) ?? [])))
      .flatMap((tied) => comparedIn(graph, tied, taking) ?? [])
      .filter(({ disagrees }) => disagrees);
    const side = apart(graph, "dimensions-disagree");
    const causeOf = ({ tied, whole, others }: Compared): string =>
      [
        tied.tie.dimension,
        tied.tie.written,
        inEnglish(say`${authorsOf(graph, whole)}`),
        ...new Set(others.map((one) => inEnglish(say`${authorsOf(graph, one)}`))),
        side(whole.ids[0] ?? ""),
      ].join("\n");
    const findings = byCause(compared, causeOf).map((group) => {
      const [{ tied }] = group;
      const all = few(
        group.map((one) => disagreement(graph, one)),
        (shown, others) => say`${shown} and ${count(others)} more differ likewise`,
      );
      const message = say`The ${tied.tie.dimension} of ${all}, expected dimensions that agree within their uncertainties.`;
      const about = group.flatMap(({ whole, others }) => [whole, ...others].flatMap(({ ids }) => ids));
      return tell(graph, "dimensions-disagree", "warning", [...new Set(about)], message, { path: ["value"] });
    });
    return { findings };
  },
};

/** One thing with what is measured of it, and what the others make of it, in the unit it was measured in. */
function disagreement(graph: Graph, { tied, whole, others, expected, by }: Compared): Said {
  const written = writtenUnit(whole.measured.quantity);
  const unit = { name: written.unit, size: written.size };
  const thing = labelText(graph, whole.thing);
  const given = say`${thing} is given as ${statedWords(whole)} (${authorsOf(graph, whole)})`;
  const sum = sumWords(tied.tie);
  const comes = say`${given}, where ${sum} comes to ${expectedWords(expected, unit)}`;
  const difference = formatIn(Math.abs(by), unit, 2);
  const from = fromWords(graph, whole, others);
  return by > 0 ? say`${comes}, ${difference} less (${from})` : say`${comes}, ${difference} more (${from})`;
}

/** What the others are, each with what is taken of it and whose that is. */
function fromWords(graph: Graph, whole: Given, others: readonly Given[]): Hole {
  const all = others.map((one) => {
    const what = one.thing === whole.thing ? one.dimension : labelText(graph, one.thing);
    return say`${what} ${statedWords(one)}, ${authorsOf(graph, one)}`;
  });
  const shown = all.length > 4 ? all.slice(0, 3) : all;
  const listed = chained(shown, (before, next) => say`${before}; ${next}`);
  return shown.length === all.length ? listed : say`${listed}; ${count(all.length - shown.length)} more`;
}

function expectedWords(
  { value, u, open }: FromOthers,
  unit: { readonly name: string; readonly size: number },
): Text {
  if (open === "more") return say`at least ${formatIn(value, unit)}`;
  if (open === "less") return say`at most ${formatIn(value, unit)}`;
  const figures = formatWithU(value / unit.size, u / unit.size);
  if (unit.name === "1") return figures;
  return `${figures}${/^[°′″]/u.test(unit.name) ? "" : " "}${unit.name}`;
}

/** What is taken of a dimension, as written. */
function statedWords({ measured: { quantity, state } }: Given): Text {
  return state === "preserved" && quantity.form === "at-least"
    ? say`at least ${quantity.text}`
    : quantity.text;
}

function authorsOf(graph: Graph, { ids }: Given): Row {
  return row([...new Map(ids.map((id) => [authorLabel(graph, id), whose(graph, id)])).values()]);
}
