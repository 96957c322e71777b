import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

const program = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
let place = "";

const things = `artefacts:
  - { id: secret-spring, name: The Hidden Spring, coordinates: grid 1234, found-at: behind the mill }
  - { id: secret-spring/basin, name: Sunken Basin, note: nothing names it, unknown-field: 1 }
  - { id: open-field, name: Open Field, coordinates: grid 5678, odd-field: 2 }
observations:
  - { id: spring-wet, of: secret-spring, text: The Hidden Spring is wet. }
  - { id: field-dry, of: open-field, text: The field is dry. }
measurements:
  - { of: secret-spring/basin, dimension: width, value: 3 m }
claims:
  - { id: dry, text: The land was dry. }
  - { id: wet, text: The land was wet. }
questions:
  - { id: which, text: Wet or dry?, answers: [dry, wet] }
arguments:
  - { id: by-spring, because: spring-wet, therefore: wet }
  - { id: by-field, because: field-dry, therefore: dry }
  - { id: against-field, because: spring-wet, against: field-dry }
`;

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-withheld-"));
  writeFileSync(join(place, "corpus.yaml"), "title: Land\nwithhold: [secret-spring]\n");
  writeFileSync(join(place, "things.yaml"), things);
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

function outputOf(...words: readonly string[]): string {
  const { stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, ".cache") },
  });
  return stdout + stderr;
}

test.each([
  ["check"],
  ["check", "--json"],
  ["check", "--format", "sarif"],
  ["check", "--rests-on", "--json"],
  ["check", "--standpoints"],
  ["check", "--standpoints", "--json"],
  ["check", "--explain", "wet"],
  ["check", "--explain", "dry"],
  ["check", "--explain", "by-sprin"],
  ["compute"],
  ["plan"],
  ["plan", "--all"],
  ["plan", "--json"],
])("%s %s %s: nothing withheld is printed", (command, ...options) => {
  const printed = outputOf(command, place, ...options);
  expect(printed).not.toBe("");
  for (const secret of ["secret-spring", "Hidden Spring", "spring-wet", "by-spring", "Sunken", "grid 1234", "mill"])
    expect(printed).not.toContain(secret);
});

test("the rest is printed, and its standings follow from the whole", () => {
  const { standings } = JSON.parse(outputOf("check", place, "--json")) as {
    readonly standings: Readonly<Record<string, { readonly standing: string }>>;
  };
  expect(standings["wet"]?.standing).toBe("stands");
  expect(Object.keys(standings)).not.toContain("spring-wet");
  expect(outputOf("check", place)).toContain("odd-field");
});

test("exact places are shown in no excerpt of a file", () => {
  expect(outputOf("check", place)).not.toContain("grid 5678");
});
