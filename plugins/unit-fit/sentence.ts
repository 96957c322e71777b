import { fieldsOf, formatNumber, formatP, type Computation, type Settings } from "../../src/plugin.ts";

type Verdict = "compatible" | "chance" | "undecided";

/** What the review's methods section prints; the words for what p says are fixed. */
export function unitFitSentence(computation: Computation, settings: Settings): string {
  const { numbers } = computation;
  const n = numbers["n"]?.value ?? 0;
  const unit = settings["unit"];
  const verdict = verdictOf(computation);
  const p = shownP(computation);
  if (unit?.kind === "unit") {
    const name = `the ${unit.value.name}, a unit given beforehand`;
    const said: Record<Verdict, string> = {
      compatible: `${n} measurements are compatible with multiples of ${name}`,
      chance: `${n} measurements fit multiples of ${name}, no better than chance`,
      undecided: `Whether ${n} measurements are multiples of ${name}, cannot be decided`,
    };
    return `${said[verdict]} (exact V-test of the cosine quantogram, Kendall 1974: ${p}).`;
  }
  const shown = fieldsOf(fieldsOf(computation.data)["shown"]);
  const size = typeof shown["size"] === "number" ? shown["size"] : 1;
  const q = `${formatNumber((numbers["q"]?.value ?? 0) / size, 4)} ${String(shown["unit"] ?? "")}`;
  const said: Record<Verdict, string> = {
    compatible: `${n} measurements are compatible with a unit of that size`,
    chance: `${n} measurements fit it no better than chance`,
    undecided: `whether ${n} measurements have a unit cannot be decided`,
  };
  return `A search among units found its best at ${q}; ${said[verdict]} (cosine quantogram, Kendall 1974, against sets without a unit searched alike: ${p}).`;
}

// A p that is neither small nor large, or a large one from few values, which could show only a very exact unit.
function verdictOf({ numbers }: Computation): Verdict {
  const p = numbers["p-adjusted"]?.value ?? 1;
  if (p < 0.05) return "compatible";
  return p < 0.2 || (numbers["n"]?.value ?? 0) < 10 ? "undecided" : "chance";
}

function shownP({ numbers, data }: Computation): string {
  const p = numbers["p"]?.value ?? 1;
  const draws = fieldsOf(data)["draws"];
  const looks = fieldsOf(data)["looks"];
  const own = typeof draws === "number" && p <= 1 / draws ? `p < 1/${draws}` : formatP(p);
  const adjusted = numbers["p-adjusted"]?.value ?? p;
  return typeof looks === "number" && looks > 1
    ? `${own}; ${formatNumber(adjusted, 2)} for ${looks} looks at these data (Holm 1979)`
    : own;
}
