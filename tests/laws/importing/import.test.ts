import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { readBibtex } from "../../../src/read/bibliography/bibtex/bibtex.ts";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import { importChanges } from "../../../src/read/bibliography/incoming/changes.ts";
import { after, corpusWith, planOf } from "./import-cases.ts";
import type { Files } from "./import-cases.ts";

/** Of biblatex's own documentation (its examples file): see ../shared/published/README.md. */
const published = readFileSync(new URL("../../published/biblatex-examples.bib", import.meta.url), "utf8");

/** Where entries of each ending begin and end, as they stand in a file. */
function entriesIn(path: string, text: string): readonly string[] {
  return readBibliography({ path, text }).sources.map(({ span }) => text.slice(span.start, span.end));
}

const word = fc.stringMatching(/^[A-Z][a-zäéώب中]{2,8}$/u);
const work = fc.record({
  family: word,
  title: fc.array(word, { minLength: 3, maxLength: 6 }).map((words) => words.join(" ")),
  year: fc.integer({ min: 1700, max: 2020 }),
  key: fc.option(fc.stringMatching(/^[a-z]{3,6}-\d{4}$/), { nil: null }),
});
type Work = typeof work extends fc.Arbitrary<infer W> ? W : never;

const typed: Readonly<Record<string, (works: readonly Work[]) => string>> = {
  "new.bib": (works) =>
    works
      .map(
        ({ family, title, year, key }, n) =>
          `@book{${key ?? `k${n}`},\n  author = {${family}, A.},\n  title={${title}},\n  year = ${year}\n}\n`,
      )
      .join("\n"),
  "new.ris": (works) =>
    works
      .map(
        ({ family, title, year, key }) =>
          `TY  - BOOK\n${key === null ? "" : `ID  - ${key}\n`}AU  - ${family}, A.\nTI  - ${title}\nPY  - ${year}\nER  - \n`,
      )
      .join("\n"),
  "new.json": (works) =>
    JSON.stringify(
      works.map(({ family, title, year, key }, n) => ({
        id: key ?? `k${n}`,
        type: "book",
        title,
        author: [{ family, given: "A." }],
        issued: { "date-parts": [[year]] },
      })),
      null,
      2,
    ),
};

const lists = fc.uniqueArray(work, { minLength: 1, maxLength: 6, selector: (one) => one.title });
const several = fc.tuple(fc.constantFrom(...Object.keys(typed)), lists, lists);

describe("an import", () => {
  test("a second time changes nothing", () => {
    fc.assert(
      fc.property(several, ([path, there, coming]) => {
        const text = typed[path] ?? (() => "");
        const corpus = corpusWith({ [path.replace("new", "old")]: text(there) });
        const once = after(corpus, { [path]: text(coming) });
        expect(after(once, { [path]: text(coming) })).toEqual(once);
      }),
      { numRuns: 60 },
    );
  });

  test("keeps the order, and the text of each entry whose key is free to the byte", () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(typed)), lists, (path, coming) => {
        const text = (typed[path] ?? (() => ""))(coming);
        const plan = planOf(corpusWith(), { [path]: text });
        const files = after(corpusWith(), { [path]: text });
        const made = files[path.replace("new", "bibliography")] ?? "";
        const own = plan.outcomes.filter((one) => one.keyIs !== "freed").map((one) => one.entry.text);
        let at = 0;
        for (const one of own) {
          const found = made.indexOf(one, at);
          expect(found, made).toBeGreaterThanOrEqual(at);
          at = found + one.length;
        }
        expect(readBibliography({ path, text: made }).findings).toEqual([]);
        expect(entriesIn(path, made)).toHaveLength(coming.length);
      }),
      { numRuns: 60 },
    );
  });

  test("of all of biblatex's examples brings 92 of 92, with no finding beyond those of the file itself", () => {
    const plan = planOf(corpusWith(), { "biblatex-examples.bib": published });
    expect(plan.outcomes.filter((one) => one.key === null)).toEqual([]);
    const files = after(corpusWith(), { "biblatex-examples.bib": published });
    const [was, is] = [published, files["bibliography.bib"] ?? ""].map((text) =>
      readBibtex({ path: "x.bib", text }),
    );
    expect(is?.sources).toHaveLength(92);
    expect(is?.sources.map((one) => one.csl)).toEqual(was?.sources.map((one) => one.csl));
    const said = (findings: readonly { readonly message: unknown }[] = []) =>
      findings.map((one) => one.message);
    expect(said(is?.findings)).toEqual(said(was?.findings));
    expect(entriesIn("x.bib", is ? (files["bibliography.bib"] ?? "") : "")).toEqual(
      entriesIn("x.bib", published),
    );
    expect(files["corpus.yaml"]).toContain("bibliography: [bibliography.bib]");
    expect(after(files, { "biblatex-examples.bib": published })).toEqual(files);
  });

  test("touches no byte that stood in the bibliography", () => {
    const there = '% ours\r\n@book{a-1901,\r\n title = "A", year=1901}';
    const corpus = corpusWith({ "ours.bib": there });
    const made = after(corpus, { "x.bib": "@misc{b,\n  title = {B and more},\n year = 1950\n}\n" });
    expect(made["ours.bib"]?.startsWith(there)).toBe(true);
    expect(made["ours.bib"]?.slice(there.length)).toBe(
      "\r\n\r\n@misc{b,\r\n  title = {B and more},\r\n year = 1950\r\n}\r\n",
    );
  });
});

const files = (text: string): Files => ({ "x.bib": text });

describe("keys", () => {
  test("one that another work has gets a letter behind; free ones are kept first", () => {
    const corpus = corpusWith({
      "ours.bib": "@book{vane-1968, title = {A pace of the Down}, year = 1968}\n",
    });
    const text =
      "@book{vane-1968, title = {Something else entirely}, year = 1970}\n@book{vane-1968a, title = {A third thing}, year = 1971}\n";
    const plan = planOf(corpus, files(text));
    expect(plan.outcomes.map((one) => [one.key, one.keyIs])).toEqual([
      ["vane-1968b", "freed"],
      ["vane-1968a", "own"],
    ]);
    expect(after(corpus, files(text))["ours.bib"]).toContain(
      "@book{vane-1968b, title = {Something else entirely}",
    );
  });

  test("ids of records are taken, too", () => {
    const plan = planOf(corpusWith(), files("@book{ring-a, title = {On rings}, year = 1900}"), {
      ids: ["ring-a"],
    });
    expect(plan.outcomes[0]?.key).toBe("ring-aa");
  });

  test("one that is missing is made of family and year", () => {
    const bib =
      "@book{,\n author = {Vane, Isolde},\n title = {A pace}, year = 1968}\n@book{author = {Hale, J.}, year = 1896}\n";
    const bibMade = after(corpusWith(), files(bib))["bibliography.bib"];
    expect(bibMade).toContain("@book{vane-1968,\n author");
    expect(bibMade).toContain("@book{hale-1896, author = {Hale, J.}, year = 1896}");
    const json = '[{"type": "book", "author": [{"family": "Vane"}], "issued": {"date-parts": [[1968]]}}]';
    expect(after(corpusWith(), { "x.json": json })["bibliography.json"]).toContain(
      '{"id": "vane-1968", "type": "book"',
    );
    const ris = "TY  - BOOK\nAU  - Vane, I.\nPY  - 1968\nER  - \n";
    const corpus = corpusWith({
      "ours.bib": "@book{vane-1968, title = {Another}, author = {Vane}, year = {1968}}\n",
    });
    const made = after(corpus, { "x.ris": ris });
    expect(made["bibliography.ris"]).toBe(
      "TY  - BOOK\nID  - vane-1968a\nAU  - Vane, I.\nPY  - 1968\nER  - \n",
    );
  });
});

describe("what comes along", () => {
  test("abbreviations that entries use, and those these are made of, before them", () => {
    const text =
      '@string{tv = "Thorn Vale"}\n@string{ptv = "Proceedings of " # tv}\n@string{unused = "x"}\n@article{a, journal = ptv, title = {T one}, year = 1900}\n';
    const made = after(corpusWith({ "ours.bib": "@string{ptv = {Other}}\n" }), files(text))["ours.bib"];
    expect(made).toBe(
      '@string{ptv = {Other}}\n\n@string{tv = "Thorn Vale"}\n@string{ptv = "Proceedings of " # tv}\n\n@article{a, journal = ptv, title = {T one}, year = 1900}\n',
    );
    expect(after(corpusWith({ "ours.bib": made ?? "" }), files(text))["ours.bib"]).toBe(made);
  });

  test("a parent of an added entry, under a free key that the child then names", () => {
    const corpus = corpusWith({
      "ours.bib": "@book{whole, title = {Whole of ours}, isbn = {0-306-40615-2}, year = 1999}\n",
    });
    const text =
      "@inbook{part, title = {Part}, crossref = {whole}}\n@book{whole, title = {Whole of theirs}, isbn = {978-0-306-40615-7}, year = 2000, publisher = {P}}\n";
    const plan = planOf(corpus, files(text));
    expect(plan.outcomes.map((one) => [one.choice.do, one.key, one.for])).toEqual([
      ["add", "part", null],
      ["leave", "wholea", "part"],
    ]);
    expect(after(corpus, files(text))["ours.bib"]).toContain("crossref = {wholea}");
  });

  test("lenders of fields that are no sources", () => {
    const text =
      "@xdata{pub, publisher = {P}, location = {L}}\n@book{a, title = {T one}, xdata = {pub}, year = 1900}\n";
    const made = after(corpusWith(), files(text));
    expect(
      readBibtex({ path: "x.bib", text: made["bibliography.bib"] ?? "" }).sources[0]?.csl.publisher,
    ).toBe("P");
    expect(after(made, files(text))).toEqual(made);
  });
});

describe("hostile files", () => {
  const failures = (path: string, text: string) =>
    planOf(corpusWith(), { [path]: text }).arrived.flatMap((one) => one.failures);

  test("what cannot be read is told with its line and text, the rest comes in", () => {
    const text =
      "@book{a, title = {A one}, year = 1900}\n@book{broken, title = {never closed\n@book{b, title = {B two}, year = 1901}\n";
    const plan = planOf(corpusWith(), files(text));
    expect(plan.outcomes.map((one) => one.key)).toEqual(["a", "b"]);
    expect(plan.arrived[0]?.failures.map((one) => [one.line, one.text])).toEqual([
      [2, "@book{broken, title = {never closed"],
    ]);
  });

  test("every character of a file is in an entry, a failure, an abbreviation or beside them", () => {
    const pieces = fc.constantFrom(
      "@book{k1, title = {A one}, year = 1900}\n",
      "@string{x = {y}}\n",
      '@preamble{"z"}\n',
      "free words\n",
      "@book{bad, title = {open\n",
      "@book{k2, title = }\n",
      "@comment{a}\n",
      "% a remark\n",
      "}\n",
      "@book k3\n",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (parts) => {
        const text = parts.join("");
        const [arrived] = planOf(corpusWith(), { "x.bib": `${text}@misc{last, title = {L}}\n` }).arrived;
        if (!arrived) throw new Error("unexpected lack of a file");
        const told = [...arrived.entries, ...arrived.abbreviations, ...arrived.failures, ...arrived.besides];
        let rest = `${text}@misc{last, title = {L}}\n`;
        for (const one of told.toSorted((a, b) => b.text.length - a.text.length))
          rest = rest.replace(one.text, "");
        expect(rest.trim(), text).toBe("");
      }),
      { numRuns: 200 },
    );
  });

  test("`__proto__` is a key and a field like any other", () => {
    const text = '[{"id": "__proto__", "type": "book", "title": "One of them", "__proto__": {"x": 1}}]';
    const made = after(corpusWith(), { "x.json": text });
    expect(made["bibliography.json"]).toContain('"__proto__": {"x": 1}');
    expect(after(made, { "x.json": text })).toEqual(made);
    expect(
      planOf(corpusWith(), files("@book{__proto__, title = {T two}, __proto__ = {x}}")).outcomes[0]?.key,
    ).toBe("__proto__");
  });

  test("control characters keep an entry out", () => {
    expect(failures("x.bib", "@book{a, title = {A\u0000one}}\n").map((one) => one.line)).toEqual([1]);
  });

  test("a mark at the head, other line ends, `and others` and other scripts come through", () => {
    const text =
      "\uFEFF@book{a,\r\n author = {المصري, سلمى and others},\r\n title = {Περὶ λόφων},\r\n year = 1990\r\n}\r\n@book{z, author = {王, 小明}, title = {中文的書名}, year = 1991}\r\n";
    const made = after(corpusWith(), files(text))["bibliography.bib"] ?? "";
    const { sources, findings } = readBibtex({ path: "x.bib", text: made });
    expect(findings).toEqual([]);
    expect(sources.map((one) => [one.names[0]?.family, one.andOthers])).toEqual([
      ["المصري", true],
      ["王", false],
    ]);
    expect(made.split("\r\n")).toHaveLength(made.split("\n").length);
  });

  test("a bibliography with an entry left open at its end is not written to", () => {
    const corpus = corpusWith({
      "ours.bib": "@book{a, title = {A one}, year = 1900}\n@book{b, title = {open",
    });
    const made = importChanges(planOf(corpus, files("@book{c, title = {C three}, year = 1903}\n")));
    const text = "changes" in made ? (made.changes[0]?.edits[0]?.text ?? "") : "";
    // Where the reader still finds the new entry behind what is open, it may come in; else the import is refused.
    if ("problem" in made) expect(inEnglish(made.problem)).toContain("ours.bib");
    else
      expect(
        readBibtex({ path: "x", text: `${corpus["ours.bib"] ?? ""}${text}` }).sources.map((one) => one.key),
      ).toEqual(["a", "c"]);
  });
});
