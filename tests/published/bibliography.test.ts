import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readBibliography } from "../../src/read/bibliography/read.ts";
import type { Source } from "../../src/read/bibliography/read.ts";

// The example bibliography of the biblatex package by Philipp Lehman, Philip Kime and others (file `biblatex-examples.bib`,
// LaTeX Project Public Licence), as TeX Live 2022 has it. Expected values are read off that file, not off our output.
const file = {
  path: "biblatex-examples.bib",
  text: readFileSync(new URL("biblatex-examples.bib", import.meta.url), "utf8"),
};
const { sources, findings } = readBibliography(file);
const written = (source: Source): string => file.text.slice(source.span.start, source.span.end);
const source = (key: string): Source => {
  const found = sources.find((one) => one.key === key);
  if (!found) throw new Error(`Missing ${key}`);
  return found;
};

/** What an entry writes for a field, on lines of its own as this file has them. */
const field = (entry: string, name: string): string | undefined =>
  new RegExp(`^\\s*${name}\\s*=\\s*\\{(.*(?:\\n(?!\\s*[a-z]+\\s*=|\\}).*)*)\\}`, "m").exec(entry)?.[1];

const heads = [...file.text.matchAll(/^@(\w+)\{([^,=\s]+),/gm)].filter(([, type]) => type !== "string");

test("all 92 entries arrive, in their order, with nothing amiss", () => {
  expect(heads).toHaveLength(92);
  expect(sources.map((one) => one.key)).toEqual(heads.map(([, , key]) => key));
  expect(findings).toEqual([]);
});

describe.each(sources.map((one): [string, Source] => [one.key, one]))("%s", (key, one) => {
  const entry = written(one);

  test("stands where its places say", () => {
    expect(entry).toMatch(/^@\w+\{/);
    expect(entry.endsWith("}")).toBe(true);
    expect(entry.match(/^@\w+\{/gm)).toHaveLength(1);
    expect(file.text.slice(one.keySpan.start, one.keySpan.end)).toBe(key);
  });

  test("has a title, a year, and as many authors as it names", () => {
    expect(one.csl.title).toMatch(/\S/);
    expect(one.csl.title).not.toMatch(/[\\{}]/);
    expect(one.csl.type).not.toBe("document");
    const authors = field(entry, "author");
    if (authors) expect(one.csl.author).toHaveLength(authors.split(/\s+and\s+/).length);
    const years = (field(entry, "date") ?? field(entry, "year"))?.match(/\b\d{4}\b/g)?.map(Number);
    expect(one.csl.issued?.["date-parts"]?.map((parts) => parts[0])).toEqual(years ?? [expect.any(Number)]);
    expect(typeof (one.csl.language ?? "")).toBe("string");
  });
});

test("a child has from its parent what it lacks, the title as that of the book", () => {
  const { csl } = source("westfahl:space");
  expect(csl.title).toBe(
    "The True Frontier: Confronting and Avoiding the Realities of Space in American Science Fiction Films",
  );
  expect(csl["container-title"]).toBe("Space and Beyond: The Frontier Theme in Science Fiction");
  expect(csl.publisher).toBe("Greenwood");
  expect(csl.editor).toEqual([{ family: "Westfahl", given: "Gary" }]);
  expect(source("gaonkar:in").csl["container-title"]).toBe("Alternative Modernities");
});

test("a set stands for its members and reads as the first of them", () => {
  expect(source("set").members).toEqual(["herrmann", "aksin", "yoon"]);
  expect(source("set").csl.title).toBe(source("herrmann").csl.title);
  expect(source("stdmodel").members).toEqual(["glashow", "weinberg", "salam"]);
});

test("the three entries with \\enquote*, and commands of TeX in titles", () => {
  for (const key of ["reese", "britannica", "cms"]) expect(written(source(key))).toContain("\\enquote*");
  expect(source("cms").csl.title).toMatch(/^The Chicago Manual of Style/);
  expect(source("knuth:ct:a").csl.title).toBe("The TeXbook");
  expect(source("kastenholz").csl.title).toMatch(/^Computation of methodology-independent ionic/);
});

test("names with particles and of bodies, and abbreviations", () => {
  expect(source("vangennep").csl.author).toEqual([
    { family: "Gennep", given: "Arnold", "non-dropping-particle": "van" },
  ]);
  expect(source("vangennep").label).toBe("van Gennep 1909");
  expect(source("glashow").csl.volume).toBe("22");
  expect(source("herrmann").csl["container-title"]).toMatch(/^Angew\.\s?Chem\. Int\.\s?Ed\.$/);
  expect(source("jaffe").csl.issued).toEqual({ "date-parts": [[1885], [1888]] });
  expect(source("jaffe").year).toBe(1888);
});
