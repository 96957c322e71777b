import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import { reasonOf } from "../../../../judge/explain/reason.ts";
import { answeredWords, reasonSaid } from "../../../../judge/explain/sentence.ts";
import { speakerOf } from "../../../../link/names/spoken.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { standingIn } from "../dispute/standings.ts";
import { subjectOf } from "../pieces/cites.ts";
import type { Subject } from "../pieces/cites.ts";
import { begun, claimInside, sentences, standingVerb } from "../pieces/inlines.ts";
import { premiseOf } from "./premise.ts";

/** How a claim stands and why, in a sentence or two that begin with what it is called. */
export function standingSentences(sight: Sight, claim: Id, name: Inlines): Inlines {
  const { graph, model, withheld } = sight;
  const reason = reasonOf(graph, model.derivations, model.judgement, claim);
  const stands = [...name, ...standingVerb(standingIn(sight, claim))];
  const because = (of: Inlines): Inlines => sentences([[...stands, "."], of]);
  const hidden = "rival" in reason && reason.rival !== null && withheld(reason.rival);
  if (hidden) return because([reasonSaid(graph, reason)]);
  switch (reason.why) {
    case "argued":
      return [...stands, say`; ${answeredWords(reason.answered)}.`];
    case "contested":
      return because(contested(sight, reason.by, reason.against, reason.rival));
    case "beaten":
      if (reason.target !== null) break;
      return because(beaten(sight, reason.by, reason.rival));
    case "leans-on-open":
    case "leans-on-fallen":
    case "leans-on-unsupported": {
      const premise = withheld(reason.premise) ? [] : premiseOf(sight, reason.premise, []);
      if (premise.length === 0) break;
      return because([say`What argues for it leans on `, ...premise, "."]);
    }
  }
  return because([reasonSaid(graph, reason)]);
}

function contested(sight: Sight, by: Id, against: Id, rival: Id | null): Inlines {
  const [one, other] = [arguing(sight, by), arguing(sight, against)];
  const meets: Inlines =
    rival === null
      ? [" ", other.several ? say`object` : say`objects`]
      : [say` for its rival, `, ...claimInside(sight, rival)];
  return [
    ...begun(one.of),
    " ",
    one.several ? say`argue for it` : say`argues for it`,
    ", ",
    ...other.of,
    ...meets,
    say`; neither beats the other.`,
  ];
}

function beaten(sight: Sight, by: Id, rival: Id | null): Inlines {
  const { of, several } = arguing(sight, by);
  if (rival === null)
    return [
      ...begun(of),
      " ",
      several ? say`argue against it` : say`argues against it`,
      say`, and nothing that works answers that.`,
    ];
  return [
    ...begun(of),
    " ",
    several ? say`argue` : say`argues`,
    say` for its rival, `,
    ...claimInside(sight, rival),
    say`, and that stands.`,
  ];
}

/** Whose an argument is; a number speaks for itself. */
function arguing(sight: Sight, argument: Id): Subject {
  const speaker = speakerOf(argument);
  if (sight.withheld(speaker)) return { of: [say`somebody withheld`], cites: [], several: false };
  return sight.graph.records.get(speaker)?.list === "derivations"
    ? { of: [say`a computed result`], cites: [], several: false }
    : subjectOf(sight, speaker);
}
