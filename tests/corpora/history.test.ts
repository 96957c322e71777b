import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { reportSchema } from "../../src/show/report/schema.ts";
import { rememberDemo } from "./remembered.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const demo = join(root, "demo-corpus");
let cache = "";

beforeAll(async () => {
  cache = mkdtempSync(join(tmpdir(), "variorum-"));
  await rememberDemo(cache, demo);
});
afterAll(() => rmSync(cache, { recursive: true, force: true }));

function check(...words: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, "dist", "cli.js"), "check", demo, ...words],
    { encoding: "utf8", env: { ...process.env, XDG_CACHE_HOME: cache } },
  );
  expect(stderr).toBe("");
  expect(status).toBe(0);
  return stdout;
}

test("check --history tells the dispute publication by publication, in text and in JSON", () => {
  const text = check("--history");
  expect(text).toMatch(/^1896: 2 claims are named for the first time\n {2}Hale 1896: 2 claims, /);
  expect(text).toContain("\n1937: 1 claim opens, 2 are named for the first time\n");
  expect(text).toMatch(/\n {2}╍╍╍╍ open {2}an open ring \(stood until then\)\n/);
  const told = check("--history", "--json");
  const report = reportSchema.parse(JSON.parse(told));
  expect(report.history?.map((step) => step.year)).toContain(1937);
  expect(check("--history", "--json", "--no-memo")).toBe(told);
  expect(reportSchema.parse(JSON.parse(check("--json"))).history).toBeNull();
});

test("with a year the history ends there", () => {
  const report = reportSchema.parse(JSON.parse(check("--history", "--as-of", "1951", "--json")));
  expect(report.history?.map((step) => step.year)).toEqual([1896, 1911, 1937, 1951]);
});
