import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { reportSchema } from "../../src/show/report/schema.ts";
import { rememberDemo } from "./remembered.ts";

const program = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
const demo = fileURLToPath(new URL("../../demo-corpus", import.meta.url));
let cache = "";
beforeAll(async () => {
  cache = mkdtempSync(join(tmpdir(), "variorum-suppose-"));
  await rememberDemo(cache, demo);
});
afterAll(() => rmSync(cache, { recursive: true, force: true }));

function run(...words: readonly string[]) {
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: cache },
  });
  return { out: stdout, err: stderr, code: status };
}

test("check tells the standings as an outcome would leave them, and says that it is supposed", () => {
  const { out, code } = run("check", demo, "--suppose", "look-at-the-casts:round-ends");
  expect(code).toBe(0);
  expect(out).toMatch(
    /^Supposed: The marks on the casts are round-ended, as antler leaves them \(.*\)\. Nothing of this has been found\.\n/,
  );
  expect(out).toMatch(/stands {2}a roof\n/);
});

test("its JSON names what is supposed, and counts what the corpus has", () => {
  const told = (...more: readonly string[]) =>
    reportSchema.parse(JSON.parse(run("check", demo, "--json", ...more).out));
  const plain = told();
  const then = told("--suppose", "look-at-the-casts:straight-ends");
  expect(plain.supposed).toBeNull();
  expect(then.supposed).toEqual({ examination: "look-at-the-casts", outcome: "straight-ends" });
  expect(then.counts).toEqual(plain.counts);
  expect(then.questions["what-was-it"]?.answers).toMatchObject({ "ring-a-open": "stands", "ring-a-roofed": "falls" });
});

test("compute tells the numbers as an outcome would leave them", () => {
  const { out } = run("compute", demo, "--json", "--suppose", "measure-the-1937-film:film-agrees-with-1937");
  const { numbers } = reportSchema.parse(JSON.parse(out));
  expect(numbers["ring-unit"]?.numbers["p"]?.value.toPrecision(1)).toBe("0.2");
  expect(numbers["ring-unit"]?.bearsOn["rings-in-paces"]).toBe("inconclusive");
});

test.each([
  ["look-at-the-casts:round-end", "Unknown outcome `round-end` of `look-at-the-casts`, expected `round-ends`"],
  ["look-at-a-cast:round-ends", "Unknown examination `look-at-a-cast`, expected `look-at-the-casts`"],
  ["round-ends", "Unexpected `round-ends`, expected an examination and its outcome: EXAMINATION:OUTCOME"],
])("%s is one line on standard error, and nothing else", (suppose, said) => {
  expect(run("check", demo, "--suppose", suppose)).toEqual({ out: "", err: `${said}\n`, code: 2 });
});
