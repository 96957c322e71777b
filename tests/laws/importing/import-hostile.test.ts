import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { importChanges } from "../../../src/read/bibliography/incoming/changes.ts";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import { corpusWith, planOf } from "./import-cases.ts";
import { ownTime } from "../base/processor.ts";

const published = readFileSync(new URL("../../published/biblatex-examples.bib", import.meta.url), "utf8");

const ris = [1, 2, 3, 4]
  .map(
    (n) => `TY  - JOUR\nID  - r${n}\nAU  - Vane, I.\nTI  - Pits of the ${n}th row\nPY  - 196${n}\nER  - \n`,
  )
  .join("\n");
const json = JSON.stringify(
  [1, 2, 3, 4].map((n) => ({
    id: `j${n}`,
    type: "book",
    title: `The roof in ${n} parts`,
    DOI: `10.1000/${n}`,
  })),
  null,
  2,
);

/** Stretches of real text of each format, from which some characters are lost or in which some others stand. */
const texts = fc.constantFrom("x.bib", "x.ris", "x.json").chain((path) =>
  fc
    .tuple(
      fc.nat({ max: 30_000 }),
      fc.array(
        fc.tuple(
          fc.nat({ max: 4000 }),
          fc.nat({ max: 40 }),
          fc.constantFrom("", "{", "}", '"', "@", ",", "\n", "\\", "#", "=", "]", "\u0000", "TY  - "),
        ),
        { maxLength: 6 },
      ),
    )
    .map(([from, changes]): readonly [string, string] => {
      const whole = path === "x.bib" ? published.slice(from, from + 4000) : path === "x.ris" ? ris : json;
      return [
        path,
        changes.reduce((text, [at, out, put]) => text.slice(0, at) + put + text.slice(at + out), whole),
      ];
    }),
);

const there = {
  "ours.bib":
    "@string{jas = {Ours}}\n@book{aristotle:rhetoric, title = {Another rhetoric}, year = 1999, publisher = jas}\n",
  "ours.ris": "TY  - BOOK\nTI  - Unnamed\nPY  - 1961\nER  - \n",
  "ours.json": '[{"id": "j1", "type": "book", "title": "Something else"}]',
};

describe("whatever comes in", () => {
  test("an import is refused, or leaves every source as it was and adds what it says it adds", () => {
    fc.assert(
      fc.property(texts, fc.constantFrom("leave", "merge"), ([path, text], duplicates) => {
        const corpus = corpusWith(there);
        const plan = planOf(corpus, { [path]: text }, { duplicates: duplicates as "leave" | "merge" });
        const made = importChanges(plan);
        if ("problem" in made) return;
        const file = path.replace("x", "ours");
        const was = corpus[file] ?? "";
        const edits = made.changes.find((one) => one.file === file)?.edits ?? [];
        const is = readBibliography({ path: file, text: edited(was, edits) }).sources;
        const before = readBibliography({ path: file, text: was }).sources;
        const added = plan.outcomes.filter((one) => one.key !== null);
        expect(is.slice(0, before.length).map((one) => one.key)).toEqual(before.map((one) => one.key));
        expect(is.slice(before.length).map((one) => one.key)).toEqual(added.map((one) => one.key));
        expect(new Set(is.map((one) => one.key)).size).toBe(is.length);
      }),
      { numRuns: 300 },
    );
  });

  test("a broken entry is never a reason to refuse the others of a good corpus", () => {
    const broken =
      "@book{a, title = {A one}, year = 1900}\n@book{b, title = {open}, x\n@book{c, title = {C three}, year = 1903}\n";
    const plan = planOf(corpusWith(there), { "x.bib": broken });
    expect("problem" in importChanges(plan)).toBe(false);
    expect(plan.outcomes.map((one) => one.key)).toEqual(["a", "c"]);
  });

  test("a record of RIS without its end gets none of the next one's fields", () => {
    const open = "TY  - BOOK\nTI  - One pit\nPY  - 1901\nTY  - BOOK\nTI  - Two pits\nPY  - 1902\nER  - \n";
    const made = importChanges(planOf(corpusWith(), { "x.ris": open }));
    if ("problem" in made) throw new Error(inEnglish(made.problem));
    const text = made.changes.find((one) => one.file === "bibliography.ris")?.edits[0]?.text ?? "";
    expect(readBibliography({ path: "x.ris", text }).findings).toEqual([]);
    expect(readBibliography({ path: "x.ris", text }).sources.map((one) => one.csl.title)).toEqual([
      "One pit",
      "Two pits",
    ]);
  });

  test("entries that all have one title are gone through in a time that grows with them", () => {
    const many = (n: number): string =>
      Array.from({ length: n }, (_, at) => `@misc{k${at}, title = {The same for all}, year = 1900}\n`).join(
        "",
      );
    const timed = (n: number): number => {
      const spent = ownTime();
      planOf(corpusWith(), { "x.bib": many(n) });
      return spent();
    };
    timed(500);
    const [few, more] = [timed(1000), timed(4000)];
    expect(more / few).toBeLessThan(12);
  });
});
