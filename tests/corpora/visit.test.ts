import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { returnedText } from "../../src/show/desk/visit/returned.ts";
import { filledWith, girth, length, lookAsked, visitFiles } from "../laws/planning/visit-cases.ts";

const cli = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-visit-"));
  for (const [name, text] of Object.entries(visitFiles)) writeFileSync(join(place, name), text);
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

function run(...words: readonly string[]): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
  });
  return { code: status, out: stdout, err: stderr };
}

test("a sheet is written to be taken along, and never over another file", () => {
  const to = join(place, "sheet.md");
  const asked = ["write", "visit", place, "--examination", "look", "--to", to];
  expect(run(...asked)).toEqual({ code: 0, out: `${to}\n`, err: "" });
  const text = readFileSync(to, "utf8");
  expect(text).toContain("# Look at the hole under raking light");
  expect(text).not.toContain("42.7");
  expect(run(...asked).code).toBe(2);
  expect(run(...asked, "--over", "--with-values").code).toBe(0);
  expect(readFileSync(to, "utf8")).toContain("42.7 cm");
});

test("what cannot be written is told in one line", () => {
  const to = join(place, "none.html");
  for (const [words, expected] of [
    [["vizit", place, "--to", to], "Unknown kind `vizit`, expected visit"],
    [["visit", place, "--to", to], "Missing --examination or --keeper"],
    [["visit", place, "--to", to, "--examination", "lok"], "Unknown examination `lok`, expected `look`"],
    [["visit", place, "--to", to, "--keeper", "county stor"], "expected `county store`"],
  ] as const) {
    const { code, out, err } = run("write", ...words);
    expect([code, out], words.join(" ")).toEqual([2, ""]);
    expect(err).toContain(expected);
  }
  expect(existsSync(to)).toBe(false);
});

test("a filled sheet comes in as one step, and a second time not at all", () => {
  const file = join(place, "back.json");
  const filled = filledWith({ [girth]: ["41", "42", "43"], [length]: ["41,2"] });
  writeFileSync(file, returnedText({ asked: lookAsked, filled }));
  const first = run("import", file, "--into", place);
  expect([first.code, first.err]).toEqual([1, ""]);
  expect(first.out).toContain("not brought in: length of the first peg: Unexpected number `41,2`");
  expect(first.out).toContain("1 measurement added.");
  expect(readFileSync(join(place, "things.yaml"), "utf8")).toContain("value: 42.0 ± 1.0 mm");
  const second = run("import", file, "--into", place, "--json");
  expect(JSON.parse(second.out)).toMatchObject({
    visits: [{ added: { measurements: 0 }, already: ["girth of the first peg"] }],
  });
});
