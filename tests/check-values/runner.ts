import { readFileSync } from "node:fs";
import { CaseFileError, isFields, type Case, type Methods } from "./case.ts";
import { casesOf } from "./case-file.ts";
import { differences, type Difference } from "./compare.ts";
import { methods } from "./methods.ts";
import { toleranceFault } from "./tolerance.ts";

const exitAllPassed = 0;
const exitFailures = 1;
const exitUnreadable = 2;
const shownDifferences = 20;

/** What a case came to: nothing, a fault of the whole, or the values that differ. */
export type Verdict = { readonly fault?: string; readonly differences: readonly Difference[] };

/** Runs one case against the product's own code. */
export function verdictOn(one: Case, table: Methods = methods): Verdict {
  const fault = (text: string): Verdict => ({ fault: text, differences: [] });
  const method = Object.hasOwn(table, one.method) ? table[one.method] : undefined;
  if (one.method === "") return fault("no method named");
  if (method === undefined) return fault(`unknown method ${one.method}`);
  if (!isFields(one.expected) || Object.keys(one.expected).length === 0) return fault("nothing expected");
  const wrong = toleranceFault(one.tolerance);
  if (wrong !== null) return fault(wrong);
  try {
    return { differences: differences(one, method(one.input)) };
  } catch (error) {
    return fault(`threw ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Whether a verdict is a pass. */
export function isPass(verdict: Verdict): boolean {
  return verdict.fault === undefined && verdict.differences.length === 0;
}

/** Runs the files, printing each failure and then the sums; the result is the exit code. */
export function runFiles(
  files: readonly string[],
  print: (line: string) => void,
  complain: (line: string) => void,
): number {
  if (files.length === 0) {
    complain("No file named, expected: npm run check-values -- FILE…");
    return exitUnreadable;
  }
  let passed = 0;
  let failed = 0;
  let unreadable = 0;
  for (const file of files) {
    try {
      for (const one of casesOf(readFileSync(file, "utf8"))) {
        const verdict = verdictOn(one);
        if (isPass(verdict)) passed++;
        else failed++;
        for (const line of linesOf(one, verdict)) print(line);
      }
    } catch (error) {
      unreadable++;
      complain(`${file}: ${reasonOf(error)}`);
    }
  }
  if (unreadable < files.length) print(`${passed} passed, ${failed} failed`);
  return unreadable > 0 ? exitUnreadable : failed > 0 ? exitFailures : exitAllPassed;
}

function reasonOf(error: unknown): string {
  if (error instanceof CaseFileError) return error.message;
  const { code } = error as { code?: unknown };
  if (code === "ENOENT") return "No such file, expected a case file";
  if (code === "EISDIR") return "A folder, expected a case file";
  if (typeof code === "string") return `Cannot be read (${code}), expected a case file`;
  throw error;
}

function linesOf(one: Case, verdict: Verdict): readonly string[] {
  if (verdict.fault !== undefined) return [`${one.id}: ${verdict.fault}`];
  const shown = verdict.differences.slice(0, shownDifferences).map(({ path, got, expected, tolerance }) => {
    return `${one.id}: ${path === "" ? "(result)" : path}: got ${written(got)}, expected ${written(expected)}, tolerance ${tolerance}`;
  });
  const more = verdict.differences.length - shown.length;
  return more > 0 ? [...shown, `${one.id}: and ${more} more`] : shown;
}

function written(value: unknown): string {
  const text = typeof value === "number" ? String(value) : (JSON.stringify(value) ?? "nothing");
  return text.length > 200 ? `${text.slice(0, 200)}…` : text;
}
