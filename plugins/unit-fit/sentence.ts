import {
  count,
  fieldsOf,
  formatDrawnP,
  formatNumber,
  formatP,
  formatProbability,
  numberOf,
  say,
  type Computation,
  type Said,
  type Settings,
  type Text,
} from "../../src/plugin.ts";

type Verdict = "compatible" | "chance" | "undecided";

/** What the review's methods section prints; the words for what p says are fixed. */
export function unitFitSentence(computation: Computation, settings: Settings): Said {
  const { numbers } = computation;
  const n = numbers["n"]?.value ?? 0;
  const unit = settings["unit"];
  const verdict = verdictOf(computation);
  if (unit?.kind === "unit") {
    const said = fitToGiven(verdict, n, unit.value.name);
    const p = forLooks(formatP(pOf(computation)), computation);
    return say`${said} (exact V-test of the cosine quantogram, Kendall 1974: ${p}). ${power(computation)}`;
  }
  const shown = fieldsOf(fieldsOf(computation.data)["shown"]);
  const size = typeof shown["size"] === "number" ? shown["size"] : 1;
  const q = `${formatNumber((numbers["q"]?.value ?? 0) / size, 4)} ${String(shown["unit"] ?? "")}`;
  const said = foundIn(verdict, n);
  return say`A search among units found its best at ${q}; ${said} (cosine quantogram, Kendall 1974, against sets without a unit searched alike: ${drawn(computation)}). ${power(computation)}`;
}

function fitToGiven(verdict: Verdict, n: number, unit: string): Said {
  switch (verdict) {
    case "compatible":
      return say`${count(n)} measurements are compatible with multiples of the ${unit}, a unit given beforehand`;
    case "chance":
      return say`${count(n)} measurements fit multiples of the ${unit}, a unit given beforehand, no better than chance`;
    case "undecided":
      return say`Whether ${count(n)} measurements are multiples of the ${unit}, a unit given beforehand, cannot be decided`;
  }
}

function foundIn(verdict: Verdict, n: number): Said {
  switch (verdict) {
    case "compatible":
      return say`${count(n)} measurements are compatible with a unit of that size`;
    case "chance":
      return say`${count(n)} measurements fit it no better than chance`;
    case "undecided":
      return say`whether ${count(n)} measurements have a unit cannot be decided`;
  }
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
function drawn(computation: Computation): Text {
  const data = fieldsOf(computation.data);
  const draws = numberOf(data["draws"]);
  const kernel = formatDrawnP(pOf(computation), draws);
  const gamma = formatDrawnP(numberOf(fieldsOf(data["p"])["gamma"]), draws);
  return forLooks(
    say`${kernel} for ${count(draws)} drawn from the smoothed measurements, ${gamma} for as many from a gamma distribution`,
    computation,
  );
}

/** A p and what it comes to for all looks at the data. */
function forLooks(p: Text, { numbers, data }: Computation): Text {
  const looks = numberOf(fieldsOf(data)["looks"]);
  const adjusted = numbers["p-adjusted"]?.value ?? 1;
  return looks > 1
    ? say`${p}; ${formatProbability(adjusted)} for ${count(looks)} looks at these data (Holm 1979, first step)`
    : p;
}

/** What so many measurements could show at all. */
function power({ numbers, data }: Computation): Said {
  const n = numbers["n"]?.value ?? 0;
  const error = fieldsOf(data)["largestError"];
  return typeof error === "number"
    ? say`With errors of ${formatNumber(error, 2)} of a unit (1 s) ${count(n)} measurements show one at 5 % in half of all cases; with larger errors it is mostly missed.`
    : say`So few as ${count(n)} measurements could show no unit at 5 %, however exact.`;
}
