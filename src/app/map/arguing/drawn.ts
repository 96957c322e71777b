import type { Id } from "../../../base/finding.ts";
import { against, leadingTo, nothingInHand, withPremise } from "../../../show/map/arguing/draft.ts";
import type { ArgumentDraft } from "../../../show/map/arguing/draft.ts";
import { rolesOf } from "../../../show/map/arguing/roles.ts";
import type { PlacedBox } from "../../../show/map/scene.ts";
import { askArguing } from "./asking.ts";
import { aboutBox } from "./boxes.ts";
import { inHand, takeInHand } from "./hand.ts";
import type { Pulled } from "./marks.ts";
import { takeArgument } from "./ways.ts";

/** Takes a line that was drawn from box to box into the argument in hand, or begins one with it. */
export function takeLine(from: PlacedBox, by: Pulled["by"], to: PlacedBox): void {
  const [lower, upper] = [aboutBox(from), aboutBox(to)];
  if (!lower || !upper) return;
  if (by === "side") {
    if (!rolesOf(upper.list).attacked) return;
    const attack = (because: readonly Id[]): void =>
      joinTo({ ...against(nothingInHand, upper.id, upper.list === "claims"), because });
    if (rolesOf(lower.list).premise) attack([lower.id]);
    else void askArguing("take", lower.id).then((one) => attack(one?.because ?? []));
  } else if (upper.list === "arguments") {
    const add = (draft: ArgumentDraft): ArgumentDraft =>
      draft.because.includes(lower.id) ? draft : withPremise(draft, lower.id);
    const hand = inHand();
    if (hand?.draft.of === upper.id) takeInHand(add(hand.draft), hand.name);
    else void takeArgument(upper.id, add);
  } else if (rolesOf(upper.list).conclusion) {
    joinTo({ ...leadingTo(nothingInHand, upper.id), because: [lower.id] });
  }
}

/** What was drawn goes with the argument in hand where that leads to the same, or to nothing yet; else it is another one. */
function joinTo(drawn: ArgumentDraft): void {
  const hand = inHand();
  const same =
    hand !== null &&
    (hand.draft.aim.to === "nothing" || JSON.stringify(hand.draft.aim) === JSON.stringify(drawn.aim));
  if (!hand || !same) return takeInHand(drawn);
  const because = [...new Set([...hand.draft.because, ...drawn.because])];
  takeInHand({ ...hand.draft, aim: drawn.aim, because }, hand.name);
}
