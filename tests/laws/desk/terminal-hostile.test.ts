import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { expect, test } from "vitest";
import { unsteered } from "../../../src/cli/print/paint.ts";

const cli = fileURLToPath(new URL("../../../dist/cli.js", import.meta.url));

/** What a terminal takes for an order, by ECMA-48 and what programs have added: its title, its clipboard, its lines, its letters. */
const orders = [
  "\u001b]0;title\u0007",
  "\u001b]52;c;ZWNobyBoYXJt\u0007",
  "\u001b[2J",
  "\u001b[8m",
  "\u001b[1;8m",
  "\u001bc",
  "\u009b2J",
  "\u0090q\u009c",
  "\u0007",
  "\u0008",
  "\r",
  "\u007f",
];

test("nothing in a text steers a terminal, and what is painted stays so", () => {
  for (const order of orders) {
    const shown = unsteered(`a${order}b`);
    expect(shown.search(/\p{Cc}/u), JSON.stringify(order)).toBe(-1);
    expect(shown).toMatch(/^a\\u00[0-9a-f]{2}/);
  }
  const painted = "\u001b[31m\u001b[1merror\u001b[22m\u001b[39m\n\tكانت the text\n";
  expect(unsteered(painted)).toBe(painted);
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...orders, "\u001b", "[", "31", "m", "8", "x", "\n"), { maxLength: 12 }),
      (parts) => {
        const left = unsteered(parts.join("")).replaceAll(/\u001b\[(?:[124]|2[24]|3\d)m/gu, "");
        expect(left.search(/[^\P{Cc}\n\t]/u)).toBe(-1);
      },
    ),
    { numRuns: 100 },
  );
});

test("what the command line says of a corpus steers no terminal", () => {
  const folder = mkdtempSync(join(tmpdir(), "variorum-terminal-"));
  const text = orders.join("x");
  writeFileSync(join(folder, "corpus.yaml"), "title: The Sallow Row\nbibliography: [s.json]\n");
  writeFileSync(
    join(folder, "s.json"),
    JSON.stringify([{ id: `k${text}`, type: text, title: text, author: [{ family: text }] }]),
  );
  writeFileSync(join(folder, `b${text}.yaml`), "claims: [{ id: c, text: t, from: nobody }]\n");
  try {
    for (const words of [["check"], ["check", "--json"], ["check", "--explain", text], ["plan"]]) {
      const { stdout, stderr } = spawnSync(process.execPath, [cli, ...words, folder], { encoding: "utf8" });
      const said = stdout + stderr;
      expect(said.length).toBeGreaterThan(10);
      expect(said.match(/[^\P{Cc}\n\t]/gu) ?? [], words.join(" ")).toEqual([]);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
