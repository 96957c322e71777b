import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { familyText, labelText } from "../../../../link/names/label.ts";
import { claimText } from "../../../pages/question.ts";
import type { StanceName } from "../../../scholars/taken.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { claimInside, inside, listed, words } from "../pieces/inlines.ts";

/** Introduces a list of positions, after who takes them or the work they are in. */
export const tookThese: Said = say` took these positions:`;

/** What a scholar does with a claim, in a year gone by or at present; `stanceOn` tells the claim after it. */
export function stanceVerb(stance: StanceName, when: "then" | "now", several: boolean): Said {
  const now = when === "now";
  switch (stance) {
    case "holds":
      return !now ? say`held ` : several ? say`hold ` : say`holds `;
    case "rejects":
      return !now ? say`rejected ` : several ? say`reject ` : say`rejects `;
    case "doubts":
      return !now ? say`doubted ` : several ? say`doubt ` : say`doubts `;
    case "leaves-open":
      return !now ? say`left open ` : several ? say`leave open ` : say`leaves open `;
  }
}

/** The claim that a stance is on: `that …`, `the claim that …`, `whether …`. */
export function stanceOn(sight: Sight, stance: StanceName, claim: Id): Inlines {
  switch (stance) {
    case "holds":
      return claimInside(sight, claim);
    case "rejects":
      return [say`the claim `, ...claimInside(sight, claim)];
    case "doubts":
    case "leaves-open":
      return [say`whether `, inside(sight, claimText(sight.graph, claim))];
  }
}

/** A scholar's family name. */
export function familyOf({ graph }: Sight, scholar: Id): Inlines {
  const name = familyText(labelText(graph, scholar));
  return [typeof name === "string" ? words(name, null) : name];
}

/** Several scholars by their family names; nothing of those withheld. */
export function familiesOf(sight: Sight, scholars: readonly Id[]): Inlines {
  return listed(scholars.filter((one) => !sight.withheld(one)).map((one) => familyOf(sight, one)));
}
