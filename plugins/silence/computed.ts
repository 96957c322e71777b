import {
  refuse,
  say,
  type Computation,
  type Inputs,
  type Recorded,
  type Refusal,
  type Settings,
  type Tools,
} from "../../src/plugin.ts";
import { countedIn, troubles } from "./counted.ts";
import { weighSilence } from "./detection.ts";

/** The likelihood ratio of a silence, and the rate at which its source reports. */
export function computed(
  _inputs: Inputs,
  settings: Settings,
  _tools: Tools,
  recorded?: Recorded,
): Computation | Refusal {
  const given = settings["false-reports"];
  const falseReports = given?.kind === "number" ? given.value : 0;
  if (!(falseReports >= 0 && falseReports < 1))
    return refuse(
      "no-share",
      say`Unexpected share of false reports ${String(falseReports)}, expected 0 or more and below 1.`,
    );
  const counted = countedIn(recorded?.observations ?? {});
  const { known, reported, occasions, silences, leftOut } = counted;
  if (occasions.size === 0)
    return refuse("no-silence", say`None of the occasions is a silence, expected one at least.`);
  const habit = {
    reported: reported.length,
    known: known.length,
    occasions: occasions.size,
    falseReports,
  };
  const worth = weighSilence(habit);
  const { rate, rateEnds, ratio, ratioEnds, ifPresent, ifAbsent } = worth;
  return {
    numbers: {
      "likelihood-ratio": { value: ratio, low: ratioEnds[0], high: ratioEnds[1] },
      "reporting-rate": { value: rate, low: rateEnds[0], high: rateEnds[1] },
    },
    leftOut,
    warnings: troubles(counted),
    data: {
      ...habit,
      silences: silences.length,
      silent: [...new Set(silences.flatMap((one) => one.source ?? []))],
      ifPresent,
      ifAbsent,
    },
  };
}
