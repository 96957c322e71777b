import type { Rule } from "../rule.ts";
import { contradiction } from "./claims/contradiction.ts";
import { singleArtefact, singleSource } from "./claims/resting.ts";
import { silenceAsEvidence } from "./claims/silence.ts";
import { verdictDependsOnStrength } from "./claims/strength.ts";
import { circularSupport, silenceOnly, unsupportedClaim } from "./claims/support.ts";
import { unansweredArgument } from "./claims/unanswered.ts";
import { beatenInput } from "./derivations/beaten.ts";
import { verdictDependsOnDisputedMeasurement } from "./derivations/disputed.ts";
import {
  failedDerivation,
  inconclusiveDerivation,
  refusedDerivation,
  repeatsMerged,
  supportsByLargeP,
  unitFromTheseData,
} from "./derivations/results.ts";
import { errors } from "./errors.ts";
import { alteredBeforeObserved, measuredAfterLoss } from "./history/after.ts";
import { anachronism } from "./history/anachronism.ts";
import { conflictingMeasurements, conflictingObservations } from "./measurements/conflicting.ts";
import { copiedNumber, secondHand } from "./measurements/copies.ts";
import { undatedRecord } from "./measurements/undated.ts";
import { unitSlip } from "./measurements/unit-slip.ts";
import { changedPosition, selfContradiction } from "./scholars/positions.ts";
import { nearName } from "./sources/near-name.ts";
import { uncitedSource, unitHidden, unlistedAuthor } from "./sources/tidiness.ts";
import { unstableReference } from "./sources/unstable.ts";

/** Every rule that looks at the graph, in the order of format.md 6. */
export const rules: readonly Rule[] = [
  failedDerivation,
  contradiction,
  selfContradiction,
  changedPosition,
  unsupportedClaim,
  circularSupport,
  silenceOnly,
  conflictingMeasurements,
  conflictingObservations,
  verdictDependsOnDisputedMeasurement,
  verdictDependsOnStrength,
  beatenInput,
  singleArtefact,
  singleSource,
  secondHand,
  copiedNumber,
  silenceAsEvidence,
  unansweredArgument,
  inconclusiveDerivation,
  refusedDerivation,
  supportsByLargeP,
  unitFromTheseData,
  repeatsMerged,
  unitSlip,
  alteredBeforeObserved,
  measuredAfterLoss,
  anachronism,
  uncitedSource,
  unlistedAuthor,
  unstableReference,
  nearName,
  undatedRecord,
  unitHidden,
];

/** What there is to explain of every rule, those of reading and linking first. */
export const ruleDocs: readonly Pick<Rule, "id" | "level" | "title" | "doc">[] = [...errors, ...rules];
