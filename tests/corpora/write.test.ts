import { spawnSync } from "node:child_process";
import { Command, CommanderError } from "commander";
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { Stop } from "../../src/cli/fault.ts";
import { unzipped } from "../../src/host/telling/files/zip.ts";
import { addWrite } from "../../src/cli/write/command.ts";
import { visitFiles } from "../laws/planning/visit-cases.ts";

const cli = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-write-"));
  for (const [name, text] of Object.entries(visitFiles)) writeFileSync(join(place, name), text);
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** Runs the command here, without a program of its own: what it printed, or the line in which it refused. */
async function write(...words: readonly string[]): Promise<{ readonly out: string; readonly err: string }> {
  let out = "";
  const printing = vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  const program = new Command("variorum").exitOverride();
  addWrite(program);
  try {
    await program.parseAsync(["write", ...words, ...(words.includes("--help") ? [] : ["--no-memo"])], { from: "user" });
    return { out, err: "" };
  } catch (error) {
    if (error instanceof Stop || error instanceof CommanderError) return { out, err: error.message };
    throw error;
  } finally {
    printing.mockRestore();
  }
}

test("a review is written in each format, the same every time, and never over another file", async () => {
  const before = readdirSync(place);
  for (const [ending, begins] of [
    ["md", "# "],
    ["html", "<!doctype html>"],
    ["docx", "PK"],
  ] as const) {
    const to = join(place, `out.${ending}`);
    const asked = ["review", place, "--to", to];
    expect(await write(...asked)).toEqual({ out: `${to}\n`, err: "" });
    const first = readFileSync(to);
    expect(first.toString("latin1").startsWith(begins)).toBe(true);
    if (ending === "docx") {
      expect((await write(...asked)).err).toBe(`Unexpected file \`${to}\`, expected a name that is not taken, or --over`);
      expect((await write(...asked, "--over")).err).toBe("");
    }
    expect(Buffer.compare(first, readFileSync(to)), ending).toBe(0);
  }
  // Nothing half-written stays behind, and nothing of the corpus is touched.
  expect(readdirSync(place).filter((name) => !before.includes(name) && name !== "cache").sort()).toEqual(["out.docx", "out.html", "out.md"]);
});

test("sections come in the order in which they are asked for, and no others", async () => {
  const to = join(place, "some.md");
  expect((await write("review", place, "--sections", "next,question", "--to", to)).err).toBe("");
  const headings = readFileSync(to, "utf8").match(/^## .*$/gm)?.map((one) => one.replace(/^## (?:<span[^>]*><\/span>)?/, ""));
  expect(headings).toEqual(["What to examine next", "The question"]);
});

test("what cannot be written is told in one line, and nothing is written", async () => {
  const to = join(place, "none.docx");
  for (const [words, expected] of [
    [["revew", place, "--to", to], "Unknown kind `revew`, expected review"],
    [["review", place], "Missing --to, expected a file in .docx, .md or .html"],
    [["review", place, "--to", join(place, "x.odt")], "expected a file in .docx, .md or .html"],
    [["review", place, "--to", to, "--sections", "questions"], "Unknown section `questions`, expected a section"],
    [["review", place, "--to", to, "--style", "antiquty"], "Unknown citation style `antiquty`, expected `antiquity`"],
    [["review", place, "--to", to, "--question", "none"], "Unknown question `none`"],
    [["review", place, "--to", to, "--as-of", "soon"], "soon"],
    [["review", place, "--to", to, "--keeper", "x"], "unknown option '--keeper'"],
    [["review", join(place, "nowhere"), "--to", to], "Unknown folder"],
    [["review", place, "--to", join(place, "things.yaml", "x.docx")], "Unwritable file"],
    [["--to", to], "Missing kind"],
  ] as const) {
    const { out, err } = await write(...words);
    expect(out, words.join(" ")).toBe("");
    expect(err).toContain(expected);
    expect(err.trimEnd().split("\n")).toHaveLength(1);
  }
  expect(existsSync(to)).toBe(false);
});

test("help tells every kind with its formats, and the options of one", async () => {
  const told = spawnSync(process.execPath, [cli, "help", "write"], { encoding: "utf8" });
  const all = await write("--help");
  expect([told.status, told.stderr, told.stdout]).toEqual([0, "", all.out]);
  expect(all.out).toContain("review");
  expect(all.out).toContain("to a file in .docx, .md or .html");
  const one = await write("visit", "--help");
  expect(one.out).toContain("--examination <id>");
  expect(one.out).not.toContain("--sections");
});

test("a sheet for a visit is a document too, its earlier values only where they are asked for", async () => {
  const to = join(place, "sheet.docx");
  const asked = ["visit", place, "--examination", "look", "--to", to];
  const text = (): string =>
    unzipped(readFileSync(to)).map(({ content }) => Buffer.from(content).toString("utf8")).join("");
  expect(await write(...asked)).toEqual({ out: `${to}\n`, err: "" });
  expect(text()).toContain("Look at the hole under raking light");
  expect(text()).not.toContain("42.7");
  expect((await write(...asked, "--over", "--with-values")).err).toBe("");
  expect(text()).toContain("42.7 cm");
});
