import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import { reasonOf } from "../../../../judge/explain/reason.ts";
import { reasonSaid } from "../../../../judge/explain/sentence.ts";
import { takenIn } from "../../../scholars/taken.ts";
import type { Taken } from "../../../scholars/taken.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { standingIn } from "../dispute/standings.ts";
import { familyOf, stanceVerb } from "../dispute/stances.ts";
import { asideFor } from "../pieces/cites.ts";
import { claimInside, listed, sentences } from "../pieces/inlines.ts";

/** Claims that somebody holds at present, or that answer a question, with nothing under them. */
export function unsupportedSection(sight: Sight): readonly Block[] {
  const { model, graph, groups } = sight;
  const answers = groups.flatMap((group) => group.answers);
  const claims = [...new Set([...answers, ...groups.flatMap(({ below }) => below)])];
  const held = takenIn(graph, model.judgement).filter(
    ({ stance, left }) => stance === "holds" && left === null,
  );
  const items = claims.flatMap((claim): readonly Inlines[] => {
    const holding = held.filter((one) => one.claim === claim);
    if (standingIn(sight, claim) !== "unsupported" || (holding.length === 0 && !answers.includes(claim)))
      return [];
    const why = reasonSaid(graph, reasonOf(graph, model.derivations, model.judgement, claim));
    return [sentences([saidBy(sight, claim, holding), [why]])];
  });
  return items.length === 0 ? [] : [{ is: "list", ordered: false, items }];
}

function saidBy(sight: Sight, claim: Id, holding: readonly Taken[]): Inlines {
  if (holding.length === 0)
    return [say`One answer has nothing under it, and nobody holds it: `, ...claimInside(sight, claim), "."];
  const who = listed(holding.map(({ scholar }) => familyOf(sight, scholar)));
  const position = holding[0]?.stances.at(-1)?.position ?? "";
  return [
    ...who,
    " ",
    stanceVerb("holds", "now", holding.length > 1),
    ...claimInside(sight, claim),
    ...asideFor(sight, position),
    ".",
  ];
}
