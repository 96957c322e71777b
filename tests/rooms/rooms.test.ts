import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { againstDirection, crowded, drawers, importCircles, impure, tooLong, undeclared } from "./laws.ts";
import type { Files } from "./laws.ts";
import { manifest } from "./manifest.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** The house as it stands on disk. */
function house(): Files {
  const files = new Map<string, string>();
  for (const top of ["src", "plugins"]) {
    for (const entry of readdirSync(join(root, top), { recursive: true, withFileTypes: true })) {
      if (!entry.isFile() || entry.name.startsWith(".")) continue;
      const path = join(entry.parentPath, entry.name);
      files.set(path.slice(root.length).replaceAll("\\", "/"), readFileSync(path, "utf8"));
    }
  }
  return files;
}

const files = house();

test("the house is read: each room of the core has files", () => {
  for (const room of ["base", "read", "link", "derive", "judge", "show", "host", "cli", "server", "app"]) {
    expect([...files.keys()].filter((path) => path.startsWith(`src/${room}/`))).not.toEqual([]);
  }
});

test("imports go to the left only, and to packages on the list", () => {
  expect(againstDirection(files)).toEqual([]);
});

test("every package that is imported is in package.json", () => {
  const { dependencies, devDependencies } = manifest;
  expect(undeclared(files, [...Object.keys(dependencies), ...Object.keys(devDependencies)])).toEqual([]);
});

test("no circle of imports", () => {
  expect(importCircles(files)).toEqual([]);
});

test("the core asks for no clock, chance, locale, Node or document", () => {
  expect(impure(files)).toEqual([]);
});

test("no file over 300 lines", () => {
  expect(tooLong(files)).toEqual([]);
});

test("no file is a drawer", () => {
  expect(drawers(files)).toEqual([]);
});

test("no room of more than twelve", () => {
  expect(crowded(files)).toEqual([]);
});
