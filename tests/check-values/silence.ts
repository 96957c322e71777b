import { presentAfter, weighSilence } from "../../plugins/silence/detection.ts";
import type { Methods } from "./case.ts";

interface Input {
  readonly reportedOfKnown: number;
  readonly known: number;
  readonly silentOccasions: number;
  readonly falseReportRate: number;
  readonly priorA: number;
  readonly priorB: number;
  readonly priorPresent: number;
}

/** `silence.detection`: the reporting rate, and what the silence is worth by it. */
function detection(input: unknown): unknown {
  const given = input as Input;
  const {
    known,
    reportedOfKnown: reported,
    silentOccasions: occasions,
    falseReportRate: falseReports,
  } = given;
  const worth = weighSilence({ reported, known, occasions, falseReports }, given.priorA, given.priorB);
  const detected = known === 0 ? null : reported / known;
  return {
    detection: detected,
    detectionPosteriorMean: worth.rate,
    detection95: worth.rateEnds,
    pSilence_present_plugin: detected === null ? null : (1 - detected) ** occasions,
    pSilence_present_beta: worth.ifPresent,
    LR_present_vs_absent: 1 / worth.ratio,
    LR_absent_vs_present: worth.ratio,
    posteriorPresent: presentAfter(worth.ratio, given.priorPresent),
    envelope_pSilence: worth.ifPresentEnds,
    warnings: worth.rateUnknown ? ["reporting-rate-unknown"] : [],
  };
}

/** The methods of `silence`. */
export const silence: Methods = { "silence.detection": detection };
