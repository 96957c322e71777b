import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isbn13 } from "../../../src/read/bibliography/incoming/alike/identifiers.ts";
import { foldedTitle } from "../../../src/read/bibliography/incoming/alike/titles.ts";
import { after, corpusWith, planOf } from "./import-cases.ts";

const book = (key: string, fields: string): string => `@book{${key}, ${fields}}\n`;

/** Why the one entry that comes in is taken for the one that is there. */
function why(there: string, coming: string): readonly string[] {
  const plan = planOf(corpusWith({ "ours.bib": there }), { "x.bib": coming });
  return plan.outcomes[0]?.twins[0]?.why ?? [];
}

const apart = "title = {Of another matter altogether}, year = 1901";

describe("two sources are taken for one", () => {
  test("by their DOI, whatever its case and address", () => {
    const there = book("a", `title = {One}, year = 1900, doi = {10.1000/ABC.1}`);
    expect(why(there, book("b", `${apart}, doi = {https://doi.org/10.1000/abc.1}`))).toEqual(["doi"]);
    expect(why(there, book("b", `${apart}, doi = {doi:10.1000/Abc.1}`))).toEqual(["doi"]);
    expect(why(there, book("b", `${apart}, url = {http://dx.doi.org/10.1000/abc.1}`))).toEqual(["doi"]);
    expect(why(there, book("b", `${apart}, doi = {10.1000/abc.12}`))).toEqual([]);
  });

  // 0-306-40615-2 and 978-0-306-40615-7 are the example of the ISBN Users' Manual (International ISBN Agency), from memory.
  test("by their ISBN of ten or thirteen digits, where its check digit is right", () => {
    expect(isbn13("0306406152")).toBe("9780306406157");
    expect(isbn13("0306406153")).toBeNull();
    const there = book("a", "title = {One}, year = 1900, isbn = {0-306-40615-2}");
    expect(why(there, book("b", `${apart}, isbn = {978-0-306-40615-7}`))).toEqual(["isbn"]);
    expect(why(there, book("b", `${apart}, isbn = {978-0-306-40615-8}`))).toEqual([]);
  });

  test("but not two chapters by the ISBN of their book, nor two volumes", () => {
    const chapter = (key: string, title: string) =>
      `@incollection{${key}, title = {${title}}, booktitle = {Pits}, isbn = {0306406152}, year = 1990}\n`;
    expect(why(chapter("a", "On the eastern pits"), chapter("b", "Of roofs and walls"))).toEqual([]);
    const volume = (key: string, n: number) =>
      book(key, `title = {Whole ${key}}, volume = ${n}, isbn = {0306406152}`);
    expect(why(volume("a", 1), volume("b", 2))).toEqual([]);
  });

  test("by title and year, without case, accents, punctuation, article and subtitle", () => {
    const there = book("a", "author = {Vane, I.}, title = {The Pits of Mérrow: A Survey}, year = 1968");
    const like = (title: string, year = 1968) =>
      why(there, book("b", `author = {Vane, Isolde}, title = {${title}}, year = ${year}`));
    expect(like("THE PITS OF MERROW")).toEqual(["title"]);
    expect(like("Pits of Merrow, a survey")).toEqual(["title"]);
    expect(like("The pits of Merrow: another look")).toEqual([]);
    expect(like("The pits of Merrow", 1969)).toEqual([]);
    expect(foldedTitle("Ἡ ΤΟΠΟΣ")).toBe(foldedTitle("η τόπος"));
  });

  test("not by a title alone where nobody wrote both", () => {
    const there = book("a", "author = {Hale, J.}, title = {Introduction to the pits}, year = 1968");
    expect(
      why(there, book("b", "author = {Reed, M.}, title = {Introduction to the pits}, year = 1968")),
    ).toEqual([]);
  });

  test("by their key, unless their titles say otherwise", () => {
    const there = book("a", "title = {The burning of Merrow}, year = 1911");
    expect(why(there, book("a", "title = {Burning of Merrow Down}, year = 1912"))).toEqual(["key"]);
    expect(why(there, book("a", "title = {A pace on chalk}, year = 1911"))).toEqual([]);
  });

  test("across formats, and whichever of the two comes first", () => {
    const title = fc.constantFrom(
      "A pace of the Down",
      "The Roof Withdrawn",
      "Pfostenkreise und Windschirme",
    );
    fc.assert(
      fc.property(title, fc.integer({ min: 1800, max: 2000 }), (said, year) => {
        const bib = book("a", `author = {Vane, I.}, title = {${said}}, year = ${year}`);
        const ris = `TY  - BOOK\nAU  - Vane, I.\nTI  - ${said.toUpperCase()}\nPY  - ${year}\nER  - \n`;
        const one = planOf(corpusWith({ "ours.bib": bib }), { "x.ris": ris }).outcomes[0];
        const other = planOf(corpusWith({ "ours.ris": ris }), { "x.bib": bib }).outcomes[0];
        expect(one?.twins[0]?.why).toEqual(["title"]);
        expect(other?.twins[0]?.why).toEqual(["title"]);
        expect([one?.key, other?.key]).toEqual([null, null]);
      }),
      { numRuns: 20 },
    );
  });
});

describe("within what comes in", () => {
  const twice = book("k", "title = {One and the same}, year = 1900");

  test("the second with one key is left, two under keys of their own are both wanted", () => {
    const plan = planOf(corpusWith(), { "x.bib": twice + twice });
    expect(plan.outcomes.map((one) => one.key)).toEqual(["k", null]);
    const both = planOf(corpusWith(), { "x.bib": twice + twice.replace("{k,", "{l,") });
    expect(both.outcomes.map((one) => [one.key, one.twins.length])).toEqual([
      ["k", 0],
      ["l", 1],
    ]);
  });

  test("of two files the second is left", () => {
    const plan = planOf(corpusWith(), { "x.bib": twice, "y.bib": twice.replace("{k,", "{l,") });
    expect(plan.outcomes.map((one) => one.key)).toEqual(["k", null]);
  });

  test("by choice it comes in as another source", () => {
    const made = after(corpusWith(), { "x.bib": twice + twice }, { choices: { 1: { do: "add" } } });
    expect(made["bibliography.bib"]).toBe(`${twice}\n${twice.replace("{k,", "{ka,")}`);
  });
});

describe("what the corpus withholds", () => {
  test("is like nothing that may be told of, and stays as it is", () => {
    const there = book("kept-1900", "title = {A thing kept back}, year = 1900");
    const coming = book("other", "title = {A thing kept back}, year = 1900, doi = {10.1000/x}");
    const told = { hidden: ["kept-1900"], duplicates: "merge", choices: { 0: { do: "add" } } } as const;
    const [outcome] = planOf(corpusWith({ "ours.bib": there }), { "x.bib": coming }, told).outcomes;
    expect([outcome?.hidden, outcome?.key, outcome?.merge]).toEqual([true, null, null]);
    expect(after(corpusWith({ "ours.bib": there }), { "x.bib": coming }, told)["ours.bib"]).toBe(there);
  });
});
