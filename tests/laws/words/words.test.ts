import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, test, vi } from "vitest";
import type { Language } from "../../../src/app/words/reader/language.ts";
import { arabicCount, arabicFigure, arabicYear } from "../../../src/app/words/reader/figures.ts";

const room = fileURLToPath(new URL("../../../src/app/words/", import.meta.url));

/** The files of English words, by their paths in the room. */
const files = readdirSync(room, { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts") && !/^(?:arabic|reader)\//.test(path))
  .filter((path) => !["shown/taught-lines.ts"].includes(path))
  .sort();

const textOf = (path: string): string => readFileSync(room + path, "utf8");
const inBoth = files.filter((path) => textOf(path).includes("reader/told.ts"));

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

/** The modules of the room as a reader of one language has them. */
async function loaded(
  language: Language,
  paths: readonly string[],
): Promise<Readonly<Record<string, unknown>>> {
  vi.resetModules();
  vi.stubGlobal("location", { search: `?lang=${language}` });
  vi.stubGlobal("document", {});
  const modules: Record<string, unknown> = {};
  for (const path of paths) modules[path] = { ...(await import(/* @vite-ignore */ room + path)) };
  return modules;
}

type Leaf = string | ((...given: never[]) => unknown);

/** Every text and every function of words, by its path. */
function leavesOf(value: unknown, path: string): readonly (readonly [string, Leaf])[] {
  if (typeof value === "string" || typeof value === "function") return [[path, value as Leaf]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => leavesOf(one, `${path} ${name}`));
}

/** Words that are the same in any language: signs, file names, keys of the keyboard, lines of the format. */
const same = /(?: (?:lines|fileName|orcid|ArrowUp|ArrowDown|ArrowLeft|ArrowRight|phi)$| keys \d+ 1$)/;
/** What stands in the same file and belongs to no language: the core's own texts, and functions that only arrange. */
const ofNoLanguage =
  /^\S+ (?:explainedWords titles|languageName|methodName|numberName|conditionParts|printed)\b/;

const letters = (text: string): string => text.replace(/[^\p{L}]/gu, "");

/** How often each parameter of a function stands in its source. */
function unusedIn(made: (...given: never[]) => unknown): readonly string[] {
  const source = made.toString();
  const head = /^(?:\(([^)]*)\)|(\w+))\s*=>/.exec(source);
  const names = (head?.[1] ?? head?.[2] ?? "").match(/[A-Za-z]\w*/g) ?? [];
  return names.filter((name) => (source.match(new RegExp(`\\b${name}\\b`, "g"))?.length ?? 0) < 2);
}

describe("words in both languages", () => {
  test("are of one shape, and Arabic where they are not signs", async () => {
    const english = leavesOf(await loaded("en", inBoth), "").filter(
      ([path]) => !ofNoLanguage.test(path.trim()),
    );
    const arabic = new Map(leavesOf(await loaded("ar", inBoth), ""));
    expect(english.length).toBeGreaterThan(500);
    const faults: string[] = [];
    for (const [path, word] of english) {
      const other = arabic.get(path);
      if (typeof other !== typeof word) faults.push(`${path}: missing`);
      else if (typeof word === "string" && typeof other === "string") {
        if (other === word && letters(word) !== "" && !same.test(path)) faults.push(`${path}: as in English`);
        if (
          !same.test(path) &&
          letters(word) !== "" &&
          !/[\u0600-\u06ff]/.test(other) &&
          !path.endsWith(" phi")
        )
          faults.push(`${path}: not Arabic: ${other}`);
        if (word.endsWith(".") !== other.endsWith(".") && !same.test(path)) faults.push(`${path}: its end`);
      } else if (typeof word === "function" && typeof other === "function") {
        if (word.length !== other.length && word.toString() !== other.toString())
          faults.push(`${path}: takes ${other.length}, expected ${word.length}`);
        for (const name of unusedIn(other)) faults.push(`${path}: leaves out ${name}`);
      }
    }
    expect(faults).toEqual([]);
  });

  test("count as Arabic counts, whatever the number", async () => {
    const arabic = leavesOf(await loaded("ar", inBoth), "");
    let counting = 0;
    for (const [path, word] of arabic) {
      // A function of one count: `(n) => …`.
      if (typeof word !== "function" || !/^\(?(?:n|times)\)?\s*=>/.test(word.toString())) continue;
      if (!/arabicCount|inRecords|more\(/.test(word.toString())) continue;
      const of = (n: number): string => String((word as (n: number) => unknown)(n));
      counting++;
      expect(of(2), path).not.toMatch(/2/);
      for (const n of [3, 11, 100, 103]) expect(of(n), path).toContain(String(n));
      expect(new Set([1, 2, 3].map(of)).size, path).toBe(3);
    }
    expect(counting).toBeGreaterThan(30);
  });
});

test("Arabic is offered only when every file of words has it", async () => {
  vi.resetModules();
  const { offered } = await import("../../../src/app/words/reader/language.ts");
  if (offered.includes("ar")) expect(files.filter((path) => !inBoth.includes(path))).toEqual([]);
  else expect(offered).toEqual(["en"]);
});

describe("the reader's language", () => {
  async function languageFor(
    search: string,
    kept: string | null,
    languages: readonly string[],
  ): Promise<Language> {
    vi.resetModules();
    vi.stubGlobal("location", { search });
    vi.stubGlobal("document", {});
    vi.stubGlobal("localStorage", { getItem: () => kept });
    vi.stubGlobal("navigator", { languages });
    return (await import("../../../src/app/words/reader/language.ts")).language;
  }

  test("is the one asked for in the address, else the one chosen before or the browser's where it is offered", async () => {
    expect(await languageFor("?lang=ar", null, ["en-GB"])).toBe("ar");
    expect(await languageFor("?lang=xx", null, ["en-GB"])).toBe("en");
    expect(await languageFor("", null, ["fr-FR", "en"])).toBe("en");
    const { offered } = await import("../../../src/app/words/reader/language.ts");
    const whenOffered = offered.includes("ar") ? "ar" : "en";
    expect(await languageFor("", "ar", ["en"])).toBe(whenOffered);
    expect(await languageFor("", null, ["ar-EG", "en"])).toBe(whenOffered);
  });
});

test("figures and years in Arabic", () => {
  expect(arabicFigure(1234)).toBe("1,234");
  expect([-479, 60, 1998].map(arabicYear)).toEqual(["480 ق.م", "60 م", "1998"]);
  const forms = { two: "سجلان", few: "# سجلات", many: "# سجلًا", other: "# سجل" };
  expect([2, 5, 11, 100].map((n) => arabicCount(n, forms))).toEqual([
    "سجلان",
    "5 سجلات",
    "11 سجلًا",
    "100 سجل",
  ]);
});
