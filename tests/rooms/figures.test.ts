import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { hasGoal, marks, rowsIn } from "../bench/figures.mjs";

const at = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const benches = readdirSync(fileURLToPath(new URL("../bench", import.meta.url)));

test("the README quotes the figures that have something to reach, as they stand in their file", () => {
  const readme = at("README.md");
  const [from = "", to = ""] = marks;
  const quoted = readme.slice(readme.indexOf(from) + from.length, readme.indexOf(to));
  expect(rowsIn(quoted)).toEqual(rowsIn(at("docs/figures.md")).filter(hasGoal));
});

test("each of the twelve goals has a figure, with the command that makes it", () => {
  const rows: readonly (readonly string[])[] = rowsIn(at("docs/figures.md"));
  const goals = new Set(rows.map(([goal]) => goal));
  for (let goal = 1; goal <= 12; goal++) expect(goals).toContain(String(goal));
  for (const row of rows) {
    const name = /^`npm run bench -- ([\w-]+)`$/.exec(row.at(-1) ?? "")?.[1];
    expect(benches).toContain(`${name}-bench.ts`);
  }
});
