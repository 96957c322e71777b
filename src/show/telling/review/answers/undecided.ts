import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Block } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { paragraph } from "../pieces/inlines.ts";
import { doubted } from "./premise.ts";
import { resultOf } from "./result.ts";

/** Numbers that were asked about a claim and came out neither way: who tells only those that did, tells a part. */
export function undecidedBlocks(sight: Sight, claim: Id): readonly Block[] {
  const { graph, model, shown } = sight;
  return graph.list("derivations").flatMap(({ id, values }): readonly Block[] => {
    const derived = model.derivations.byId.get(id);
    if (!shown(id) || derived?.status !== "computed") return [];
    const asked = (values["bears-on"] ?? []).flatMap((entry, place) =>
      entry.claim === claim ? [derived.bearings[place]?.bearing] : [],
    );
    if (asked.length === 0 || asked.some((one) => one !== "inconclusive")) return [];
    return paragraph([
      [
        say`A computed result speaks neither for it nor against it: `,
        ...resultOf(sight, id),
        ...doubted(sight, id),
        ".",
      ],
    ]);
  });
}
