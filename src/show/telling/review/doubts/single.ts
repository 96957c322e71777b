import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { claimInside, listed, paragraph } from "../pieces/inlines.ts";

/** Claims that answer a question and stand, and would not without one artefact or one source. */
export function singleSection(sight: Sight): readonly Block[] {
  const { model, groups } = sight;
  const answers = [...new Set(groups.flatMap((group) => group.answers))];
  const items = answers.flatMap((claim): readonly Inlines[] => {
    const only = onlyIn(sight, model.restsOn.get(claim) ?? []);
    return only.length === 0
      ? []
      : [
          [
            say`The claim `,
            ...claimInside(sight, claim),
            say` would not stand without `,
            ...listed(only, "or"),
            ".",
          ],
        ];
  });
  if (items.length === 0) return [];
  return [
    ...paragraph([
      [say`What rests on one artefact or on one source is no worse argued for that, but it is lost with it.`],
    ]),
    { is: "list", ordered: false, items },
  ];
}

/** The one artefact and the one source that a claim rests on, where it is one. */
function onlyIn({ graph, withheld }: Sight, losses: readonly Id[]): readonly Inlines[] {
  const things = losses.filter((id) => graph.records.get(id)?.list === "artefacts");
  const sources = losses.filter((id) => graph.sources.has(id));
  const [thing] = things.length === 1 ? things : [];
  const [source] = sources.length === 1 ? sources : [];
  return [
    thing === undefined
      ? []
      : withheld(thing)
        ? [say`something that is withheld`]
        : [say`what is recorded of one artefact, ${labelText(graph, thing)}`],
    source === undefined
      ? []
      : withheld(source)
        ? [say`something that is withheld`]
        : [
            say`one source, `,
            { is: "citing" as const, manner: "sentence" as const, cites: [{ id: source }] },
          ],
  ].filter((one): boolean => one.length > 0);
}
