import { circularSupport } from "./claims/circular.ts";
import { silenceOnly } from "./claims/silence-only.ts";
import { singleArtefact } from "./claims/single-artefact.ts";
import { singleSource } from "./claims/single-source.ts";
import { unsupportedClaim } from "./claims/unsupported.ts";
import { failedDerivation } from "./derivations/failed.ts";
import { verdictDependsOnOne } from "./derivations/left-out.ts";
import { inconclusiveDerivation } from "./derivations/inconclusive.ts";
import { supportsByLargeP } from "./derivations/large-p.ts";
import { repeatsMerged } from "./derivations/merged.ts";
import { refusedDerivation } from "./derivations/refused.ts";
import { unitFromTheseData } from "./derivations/unit-from-these-data.ts";
import { withheldDerivation } from "./derivations/withheld.ts";
import { alteredBeforeObserved } from "./history/altered.ts";
import { measuredAfterLoss } from "./history/lost.ts";
import { conflictingMeasurements } from "./measurements/conflicting-measurements.ts";
import { dimensionsDisagree } from "./measurements/dimensions-disagree.ts";
import { conflictingObservations } from "./measurements/conflicting-observations.ts";
import { copiedNumber } from "./measurements/copied-number.ts";
import { secondHand } from "./measurements/second-hand.ts";
import { changedPosition } from "./scholars/changed-position.ts";
import { selfContradiction } from "./scholars/self-contradiction.ts";
import { uncitedSource } from "./sources/uncited.ts";
import { outdatedProse } from "./sources/prose/outdated.ts";
import { unitHidden } from "./sources/unit-hidden.ts";
import { unlistedAuthor } from "./sources/unlisted-author.ts";
import type { Rule } from "./rule.ts";
import { contradiction } from "./claims/contradiction.ts";
import { silenceAsEvidence } from "./claims/silence.ts";
import { verdictDependsOnStrength } from "./claims/strength.ts";
import { unansweredArgument } from "./claims/unanswered.ts";
import { beatenInput } from "./derivations/beaten.ts";
import { verdictDependsOnDisputedMeasurement } from "./derivations/disputed.ts";
import { errors } from "./errors.ts";
import { anachronism } from "./history/anachronism.ts";
import { undatedRecord } from "./measurements/undated.ts";
import { unitSlip } from "./measurements/unit-slip.ts";
import { nearName } from "./sources/near-name.ts";
import { unstableReference } from "./sources/unstable.ts";
import { unusedAcceptance } from "./sources/unused-acceptance.ts";

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
  dimensionsDisagree,
  conflictingObservations,
  verdictDependsOnDisputedMeasurement,
  verdictDependsOnOne,
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
  withheldDerivation,
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
  outdatedProse,
  unusedAcceptance,
];

/** What there is to explain of every rule, those of reading and linking first. */
export const ruleDocs: readonly Pick<Rule, "id" | "level" | "title" | "doc">[] = [...errors, ...rules];
