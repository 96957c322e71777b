import { existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { ruleDocs } from "../../src/judge/rules/index.ts";
import { evaluated, lineOf } from "./findings-text.ts";

const corpora = fileURLToPath(new URL("rules", import.meta.url));
const ids = ruleDocs.map((one) => one.id);

test("every rule that can be explained has its example corpora, and there are no others", () => {
  expect(readdirSync(corpora).sort()).toEqual([...ids].sort());
  expect(new Set(ids).size).toBe(ids.length);
});

test.each(ruleDocs.map((one) => [one.id, one] as const))(
  "%s is explained in whole sentences, in British spelling and neutral words",
  (_, rule) => {
    const [title, doc] = [inEnglish(rule.title), inEnglish(rule.doc)];
    expect(title).toMatch(/^[A-Z].*\.$/);
    expect(doc).toMatch(/^[A-Z].*\.$/);
    const said = `${title} ${doc}`;
    expect(said).not.toMatch(/refut|debunk|demolish|disprov|claims to|alleged|obvious|wrongly/i);
    expect(said).not.toMatch(/\b(?:colou?rize|center|gray|analyze|artifact|favor|recognize|meter)/i);
    expect(said).not.toMatch(/[a-z]+-[0-9]{4}|@/);
  },
);

/** What a rule finds in a corpus, a line each. */
async function told(folder: string, rule: string): Promise<readonly string[]> {
  const { findings } = await evaluated(folder);
  return findings.filter((one) => one.rule === rule).map((one) => lineOf(folder, one));
}

/** The text that a corpus is expected to give; what differs is left beside it, to be looked at and renamed. */
function compare(folder: string, lines: readonly string[]): void {
  const expectedFile = join(folder, "expected.txt");
  const changedFile = join(folder, "expected-changed.txt");
  const text = lines.map((line) => `${line}\n`).join("");
  const expected = existsSync(expectedFile) ? readFileSync(expectedFile, "utf8") : "";
  if (text === expected) rmSync(changedFile, { force: true });
  else writeFileSync(changedFile, text);
  expect(text).toBe(expected);
}

describe.each(ids)("%s", (rule) => {
  test("is told where it should be", async () => {
    const folder = join(corpora, rule, "fires");
    const lines = await told(folder, rule);
    expect(lines).not.toEqual([]);
    compare(folder, lines);
  });

  test("is silent about the near twin, which holds the same kinds of record", async () => {
    const folder = join(corpora, rule, "near-twin");
    const { model, findings } = await evaluated(folder);
    expect(findings.filter((one) => one.rule === rule)).toEqual([]);
    expect(findings.filter((one) => one.level === "error")).toEqual([]);
    expect(model?.graph.records.size).toBeGreaterThan(0);
  });
});
