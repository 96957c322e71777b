import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import * as z from "zod";
import { allowed, allowedBeside, isAllowed, lockedIn, unnamed } from "../audit/licences.ts";
import { manifest, read } from "./manifest.ts";

const bundled = new Set(
  ["dist/packages.json", "dist/app/packages.json"].flatMap((list) =>
    z.array(z.string()).parse(JSON.parse(read(list))),
  ),
);
const packages = lockedIn(read("package-lock.json"), bundled);
const folderOf = (place: string): string => fileURLToPath(new URL(`../../${place}`, import.meta.url));

test("every package of the lock file is under a licence that is allowed", () => {
  expect(packages.length).toBeGreaterThan(500);
  expect(packages.filter((one) => !isAllowed(one))).toEqual([]);
});

test("what is handed on asks for no more than the list says", () => {
  const handedOn = packages.filter(({ beside }) => !beside).map(({ name }) => name);
  for (const name of [...Object.keys(manifest.dependencies), "react", "cytoscape", "lunr", "pdfjs-dist"])
    expect(handedOn).toContain(name);
  expect(handedOn).not.toContain("typescript");
});

test("what is installed says of its licence what the lock file says", () => {
  const there = packages.filter(({ place }) => existsSync(folderOf(place)));
  expect(there.length).toBeGreaterThan(300);
  const others = there.filter(({ place, name, licence, version }) => {
    const said = z
      .object({ license: z.unknown().optional(), version: z.string() })
      .parse(JSON.parse(readFileSync(join(folderOf(place), "package.json"), "utf8")));
    return (
      said.version !== version ||
      (Object.hasOwn(unnamed, name) ? said.license !== undefined : said.license !== licence)
    );
  });
  expect(others.map(({ place }) => place)).toEqual([]);
});

test("what names no licence has one in its files", () => {
  for (const [name, { words }] of Object.entries(unnamed)) {
    const folder = folderOf(`node_modules/${name}`);
    const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one)) ?? "";
    expect(readFileSync(join(folder, file), "utf8"), name).toContain(words);
  }
});

test("no licence is allowed that nothing needs, and one that is unknown, missing or to be joined to another is not", () => {
  const named = new Set(packages.flatMap(({ licence }) => licence?.match(/[\w.-]+/g) ?? []));
  expect([...Object.keys(allowed), ...Object.keys(allowedBeside)].filter((one) => !named.has(one))).toEqual(
    [],
  );
  const may = (licence: string | null, beside = false): boolean => isAllowed({ licence, beside });
  expect([may("MIT"), may("(MIT OR GPL-3.0-or-later)"), may("MIT AND OFL-1.1")]).toEqual([true, true, true]);
  expect([
    may("GPL-3.0-only"),
    may("MIT AND GPL-3.0-only"),
    may(null),
    may("UNLICENSED"),
    may("constructor"),
  ]).toEqual(Array(5).fill(false));
  expect([may("PSF-2.0"), may("PSF-2.0", true)]).toEqual([false, true]);
});
