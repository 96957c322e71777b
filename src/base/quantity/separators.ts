import type { PlainText } from "./plain-text.ts";
import type { QuantityProblem } from "./problem.ts";
import { say } from "../text/said/said.ts";

const separated = /\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?![\d/])|\d[\d.,]*\d/gu;

/**
 * Mends all numbers of a text in one habit: where one of them shows that the comma is decimal, it is so in all.
 * Two readings are offered where both are readable quantities and nothing decides; none where neither is.
 */
export function withoutSeparators(
  problem: QuantityProblem,
  text: string,
  plain: PlainText,
  readable: (mended: string) => boolean,
): QuantityProblem {
  const odd = [...plain.text.matchAll(separated)].filter(
    ([run]) => /[, ]/u.test(run) || run.split(".").length > 2,
  );
  const readings = odd.map(([run]) => readingsOf(run));
  if (readings.some((one) => one.length === 0)) return problem;
  const decided = readings.some((one, index) => one.length === 1 && /,\d+$/u.test(odd[index]?.[0] ?? ""));
  const mended = (choice: number): string => {
    let result = "";
    let done = 0;
    odd.forEach((run, index) => {
      const words = readings[index] ?? [];
      result += text.slice(done, plain.at(run.index)) + (words[choice] ?? words[0] ?? "");
      done = plain.at(run.index + run[0].length);
    });
    return result + text.slice(done);
  };
  const choices = decided || readings.every((one) => one.length === 1) ? [mended(1)] : [mended(0), mended(1)];
  const [replacement, otherwise] = choices.filter(readable);
  if (replacement === undefined) return problem;
  const found = text.slice(problem.start, problem.end);
  if (otherwise !== undefined) {
    const message = say`Unexpected number \`${found}\`, expected \`${replacement}\` or \`${otherwise}\``;
    return { ...problem, message, replacement, otherwise };
  }
  const sign =
    problem.code === "decimal-comma" ? say`the point as the decimal sign` : say`digits without gaps`;
  return {
    ...problem,
    message: say`Unexpected number \`${found}\`, expected ${sign}: \`${replacement}\``,
    replacement,
  };
}

/**
 * The readings of a run of digits with commas, points or spaces in it: one when the signs decide it, two when they
 * do not (`1,200`: the thousands first), none when it is no number in any habit.
 */
export function readingsOf(digits: string): readonly string[] {
  const bare = digits.replaceAll(" ", "");
  const commas = bare.split(",").length - 1;
  const points = bare.split(".").length - 1;
  if (commas === 1 && points === 0) {
    const asDecimal = bare.replace(",", ".");
    return /^[1-9]\d{0,2},\d{3}$/u.test(bare) && bare === digits
      ? [bare.replace(",", ""), asDecimal]
      : [asDecimal];
  }
  const [group, sign] = bare.lastIndexOf(",") > bare.lastIndexOf(".") && points > 0 ? [".", ","] : [",", "."];
  const [ahead = "", behind, ...more] = bare.split(sign);
  if (more.length > 0) return /^\d{1,3}(?:\.\d{3})+$/u.test(bare) ? [bare.replaceAll(".", "")] : [];
  const groups = ahead.split(group);
  const regular = groups.every((part, index) => (index === 0 ? /^\d{1,3}$/u : /^\d{3}$/u).test(part));
  if (groups.length > 1 && !regular) return [];
  return behind?.includes(group) ? [] : [groups.join("") + (behind === undefined ? "" : `.${behind}`)];
}
