import type { Id } from "../../../../base/finding.ts";
import { byText } from "../../../../base/order.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import { evaluationOf } from "../../../../judge/explain/evaluation.ts";
import { labelOfThing } from "../../../artefacts/tree.ts";
import type { Block } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { heading, line, paragraph, words } from "../pieces/inlines.ts";
import { pictureBlocks } from "./pictures.ts";
import { rowsFor } from "./rows.ts";
import { inSeries } from "./series.ts";
import type { Evidence } from "./state.ts";

/** The evidence that arguments and numbers lean on, a table for each artefact with its parts. */
export function evidenceSection(sight: Sight): readonly Block[] {
  const leanedOn = evidenceIn(sight);
  const { graph, withheld } = sight;
  const wholes = graph.list("artefacts").filter(({ id }) => !withheld(id) && !hasWhole(sight, id));
  const told = wholes.flatMap((record): readonly Block[] => {
    const things = inOrder(graph.withParts(record.id).filter((id) => !withheld(id)));
    const own = leanedOn.filter((one) => homeOf(sight, one) === record.id);
    const pictures = pictureBlocks(sight, things);
    if (own.length + (own.length > 0 ? 0 : pictures.length) === 0) return [];
    const name = labelOfThing(graph, record);
    const title = typeof name === "string" ? words(upper(name), sight.language) : name;
    return [
      heading(2, [title]),
      ...(own.length === 0
        ? []
        : [
            {
              is: "table" as const,
              caption: [say`Evidence: `, title],
              head: [
                say`Of`,
                say`What`,
                say`As recorded`,
                say`State`,
                say`Basis`,
                say`Year`,
                say`Source`,
              ].map(line),
              rows: rowsFor(sight, things, own),
              figures: [],
            },
          ]),
      ...pictures,
    ];
  });
  if (leanedOn.length === 0) return [];
  const folded = inSeries(sight, leanedOn).some((one) => "readings" in one);
  return [
    ...paragraph([[intro(leanedOn.length)], folded ? [foldedSaid] : [], besides(sight, leanedOn.length)]),
    ...told,
  ];
}

/** A whole, then its numbered parts by their numbers, then what else is part of it. */
function inOrder(things: readonly Id[]): readonly Id[] {
  const [whole = "", ...parts] = things;
  const numbered = parts.filter((id) => id.startsWith(`${whole}/`));
  return [whole, ...numbered.toSorted(byText), ...parts.filter((id) => !numbered.includes(id))];
}

function intro(n: number): ReturnType<typeof say> {
  return say`The tables list the evidence that an argument or a computation leans on: ${count(n)} observations and measurements, as they were recorded.`;
}

const foldedSaid = say`Many readings of one dimension in one place of a source are told in one line, with the least and the greatest of them; the table of measurements has each.`;

/** How much more is recorded that nothing leans on. */
function besides({ graph, shown }: Sight, told: number): readonly [] | readonly [ReturnType<typeof say>] {
  const all = [...graph.list("observations"), ...graph.list("measurements")].filter(({ id }) => shown(id));
  const more = all.length - told;
  if (more <= 0) return [];
  return [
    more === 1
      ? say`One more is recorded on which nothing leans.`
      : say`A further ${count(more)} are recorded on which nothing leans.`,
  ];
}

/** Observations and measurements that an argument or a computation of the review leans on. */
function evidenceIn({ graph, model, shown }: Sight): readonly Evidence[] {
  const { compiled } = evaluationOf(model.judgement);
  const used = new Set<Id>(compiled.arguments.flatMap((one) => [...one.because, ...one.against]));
  for (const [id, derived] of model.derivations.byId)
    if (shown(id)) for (const one of [...derived.used, ...derived.merged.flat()]) used.add(one);
  const isTold = ({ id }: Evidence): boolean => shown(id) && used.has(id);
  return [...graph.list("observations").filter(isTold), ...graph.list("measurements").filter(isTold)];
}

/** The whole under which something is told: that of the first thing it is of which may be shown. */
function homeOf(sight: Sight, { values }: Evidence): Id | null {
  const of = typeof values.of === "string" ? [values.of] : values.of;
  const first = of.find((id) => !sight.withheld(id));
  return first === undefined ? null : wholeOf(sight, first);
}

function wholeOf(sight: Sight, thing: Id): Id {
  let at = thing;
  for (let above = next(sight, at); above !== null; above = next(sight, at)) at = above;
  return at;
}

function next({ graph, withheld }: Sight, thing: Id): Id | null {
  const whole = graph.wholeOf.get(thing);
  return whole === undefined || withheld(whole) || !graph.records.has(whole) ? null : whole;
}

const hasWhole = (sight: Sight, thing: Id): boolean => next(sight, thing) !== null;

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
