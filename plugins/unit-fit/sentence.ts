import {
  fieldsOf,
  formatDrawnP,
  formatNumber,
  formatP,
  numberOf,
  type Computation,
  type Settings,
} from "../../src/plugin.ts";

type Verdict = "compatible" | "chance" | "undecided";

/** What the review's methods section prints; the words for what p says are fixed. */
export function unitFitSentence(computation: Computation, settings: Settings): string {
  const { numbers } = computation;
  const n = numbers["n"]?.value ?? 0;
  const unit = settings["unit"];
  const verdict = verdictOf(computation);
  if (unit?.kind === "unit") {
    const name = `the ${unit.value.name}, a unit given beforehand`;
    const said: Record<Verdict, string> = {
      compatible: `${n} measurements are compatible with multiples of ${name}`,
      chance: `${n} measurements fit multiples of ${name}, no better than chance`,
      undecided: `Whether ${n} measurements are multiples of ${name}, cannot be decided`,
    };
    return `${said[verdict]} (exact V-test of the cosine quantogram, Kendall 1974: ${forLooks(formatP(pOf(computation)), computation)}). ${power(computation)}`;
  }
  const shown = fieldsOf(fieldsOf(computation.data)["shown"]);
  const size = typeof shown["size"] === "number" ? shown["size"] : 1;
  const q = `${formatNumber((numbers["q"]?.value ?? 0) / size, 4)} ${String(shown["unit"] ?? "")}`;
  const said: Record<Verdict, string> = {
    compatible: `${n} measurements are compatible with a unit of that size`,
    chance: `${n} measurements fit it no better than chance`,
    undecided: `whether ${n} measurements have a unit cannot be decided`,
  };
  return `A search among units found its best at ${q}; ${said[verdict]} (cosine quantogram, Kendall 1974, against sets without a unit searched alike: ${drawn(computation)}). ${power(computation)}`;
}

// A p that is neither small nor large, one that depends on what is drawn, or a large one from few values, which could
// show only a very exact unit.
function verdictOf({ numbers, warnings }: Computation): Verdict {
  const p = numbers["p-adjusted"]?.value ?? 1;
  if (warnings.includes("nulls-disagree")) return "undecided";
  if (p < 0.05) return "compatible";
  return p < 0.2 || (numbers["n"]?.value ?? 0) < 10 ? "undecided" : "chance";
}

const pOf = ({ numbers }: Computation): number => numbers["p"]?.value ?? 1;

/** The p of both nulls, each with the error that comes of drawing. */
function drawn(computation: Computation): string {
  const data = fieldsOf(computation.data);
  const draws = numberOf(data["draws"]);
  const kernel = formatDrawnP(pOf(computation), draws);
  const gamma = formatDrawnP(numberOf(fieldsOf(data["p"])["gamma"]), draws);
  const adjusted = forLooks("", computation);
  return `${kernel} for ${draws} drawn from the smoothed measurements, ${gamma} for as many from a gamma distribution${adjusted}`;
}

/** A p and what it comes to for all looks at the data. */
function forLooks(p: string, { numbers, data }: Computation): string {
  const looks = numberOf(fieldsOf(data)["looks"]);
  const adjusted = numbers["p-adjusted"]?.value ?? 1;
  return looks > 1
    ? `${p}; ${formatNumber(adjusted, 2)} for ${looks} looks at these data (Holm 1979, first step)`
    : p;
}

/** What so many measurements could show at all. */
function power({ numbers, data }: Computation): string {
  const n = numbers["n"]?.value ?? 0;
  const error = fieldsOf(data)["largestError"];
  return typeof error === "number"
    ? `With errors of ${formatNumber(error, 2)} of a unit (1 s) ${n} measurements show one at 5 % in half of all cases; with larger errors it is mostly missed.`
    : `So few as ${n} measurements could show no unit at 5 %, however exact.`;
}
