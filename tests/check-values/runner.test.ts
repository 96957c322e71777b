import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runFiles } from "./runner.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "check-values-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const published = (name: string) => fileURLToPath(new URL(`../published/${name}`, import.meta.url));

function run(...files: readonly string[]) {
  const lines: string[] = [];
  const complaints: string[] = [];
  const code = runFiles(
    files,
    (line) => lines.push(line),
    (line) => complaints.push(line),
  );
  return { code, lines, complaints };
}

function fileOf(content: string): string {
  const file = join(folder, "cases.json");
  writeFileSync(file, content);
  return file;
}

const convert = (
  id: string,
  value: unknown,
  tolerance: unknown = { rel: 1e-9 },
  method = "units.convert",
) => ({
  id,
  method,
  input: { expression: "1 m", to: "cm" },
  expected: { value },
  tolerance,
});

test("passes, failures with their place, and unknown methods are counted", () => {
  const cases = [convert("good", 100), convert("bad", 101), convert("new", 100, {}, "units.weigh")];
  expect(run(fileOf(JSON.stringify({ cases })))).toEqual({
    code: 1,
    complaints: [],
    lines: [
      "bad: value: got 100, expected 101, tolerance rel 1e-9",
      "new: unknown method units.weigh",
      "1 passed, 2 failed",
    ],
  });
});

test("a case that asks for nothing, or in a way not known, has not passed", () => {
  const cases = [
    1,
    { id: "nothing", method: "units.convert", input: {}, expected: {}, tolerance: {} },
    convert("ulp", 100, { value_ulp: 3 }),
    convert("formula", 100, { value_abs: "3 ulp" }),
    { ...convert("proto", 100), method: "__proto__" },
    { ...convert("input", 100), input: null },
    { id: "theory", theory: {}, expected: { groundedClaims: { a: "in" } } },
    { id: "attack", arguments: ["a"], attacks: [["a", "b"]], grounded: ["a"] },
    { id: "field", arguments: ["a"], attacks: [], ideal: ["a"] },
  ];
  const { code, lines } = run(fileOf(JSON.stringify(cases)));
  expect(code).toBe(1);
  expect(lines.at(-1)).toBe("0 passed, 9 failed");
  expect(lines.map((line) => line.split(":")[0])).toEqual([
    "case 1",
    "nothing",
    "ulp",
    "formula",
    "proto",
    "input",
    "theory",
    "attack",
    "field",
    "0 passed, 9 failed",
  ]);
});

test.each([
  ["half a file", '{"cases": [', "Not JSON"],
  ["an empty file", "", "Not JSON"],
  ["no cases", '{"units": []}', "No list of cases"],
  ["an empty list", '{"cases": []}', "An empty list of cases"],
  ["a number", "7", "No list of cases"],
  ["bytes", "\u0000\u0007\uFFFD", "Not JSON"],
])("%s is one message and the exit code 2", (_, content, message) => {
  const { code, lines, complaints } = run(fileOf(content));
  expect({ code, lines, complaints: complaints.length }).toEqual({ code: 2, lines: [], complaints: 1 });
  expect(complaints[0]).toContain(`cases.json: ${message}`);
  expect(complaints[0]).not.toMatch(/\p{Cc}/u);
});

test("a missing file, a folder, a table and no file at all are told", () => {
  expect(run(join(folder, "missing.json")).complaints[0]).toContain("No such file");
  expect(run(folder).complaints[0]).toContain("A folder");
  expect(run(published("erechtheion-blocks.csv")).complaints[0]).toContain("Not JSON");
  expect(run(published("historical-units.json")).complaints[0]).toContain("No list of cases");
  expect(run()).toMatchObject({ code: 2, lines: [] });
});

test("a file that cannot be read does not keep the others from running", () => {
  const { code, lines } = run(join(folder, "missing.json"), published("claim-graphs.json"));
  expect({ code, lines }).toEqual({ code: 2, lines: ["17 passed, 0 failed"] });
});

test("both argument files pass whole", () => {
  const files = [published("argument-frameworks.json"), published("claim-graphs.json")];
  expect(run(...files)).toEqual({ code: 0, lines: ["48 passed, 0 failed"], complaints: [] });
});
