import { formatNumber, formatP, type Computation } from "../../src/plugin.ts";

/** What the review's methods section prints; the words for what p says are fixed. */
export function spacingSentence(computation: Computation): string {
  return [evenness(computation), period(computation), comparison(computation)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function evenness({ numbers }: Computation): string {
  const n = numbers["n"]?.value ?? 0;
  const censored = numbers["censored"]?.value ?? 0;
  const p = numbers["p"]?.value ?? 1;
  const gaps = `${n} gaps${censored > 0 ? ` and ${censored} broken ${censored === 1 ? "end" : "ends"}` : ""}`;
  const cv = `a coefficient of variation of ${formatNumber(100 * (numbers["cv"]?.value ?? 0), 2)} %`;
  const said =
    p < 0.05
      ? "are compatible with a regular spacing, being more even than gaps at random"
      : p < 0.2 || n < 5
        ? "may or may not be regular, which cannot be decided"
        : "are even no better than chance";
  return `${gaps} with ${cv} ${said} (${formatP(p)}).`;
}

function period({ numbers }: Computation): string {
  const p = numbers["period-p"]?.value;
  if (p === undefined) return "";
  const shown = formatP(p);
  const said =
    p < 0.05
      ? "The positions are compatible with the period"
      : p < 0.2
        ? "Whether the positions follow the period cannot be decided"
        : "The positions follow the period no better than chance";
  return `${said} (${shown}).`;
}

function comparison({ numbers, warnings }: Computation): string {
  const p = numbers["compare-p"]?.value;
  if (p === undefined) return "";
  const said = warnings.includes("comparison-too-small")
    ? "Whether the two rows are spaced alike cannot be decided from so few gaps"
    : p < 0.05
      ? "The two rows are spaced differently"
      : "The two rows are compatible with one spacing";
  return `${said} (permutation test of Gehan 1965: ${formatP(p)}).`;
}
