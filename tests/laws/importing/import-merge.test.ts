import { describe, expect, test } from "vitest";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import { after, corpusWith, planOf } from "./import-cases.ts";
import type { Told } from "./import-cases.ts";

const missing: Told = { duplicates: "merge" };

const ours = `% ours
@article{vane-1968,
  author  = {Vane, Isolde},
  title   = {A Pace of the Down},
  journal = {Measure and Ground},
  year    = {1968} % in print
}
`;

function merged(
  there: string,
  coming: string,
  told: Told = missing,
  path = "ours.bib",
  from = "x.bib",
): string {
  return after(corpusWith({ [path]: there }), { [from]: coming }, told)[path] ?? "";
}

describe("merging", () => {
  test("adds the fields that are missing, one a line, as the file is typed", () => {
    const coming =
      '@article{vane-1968, author = "Vane, Isolde", title = {A pace of the {D}own}, journaltitle = {Measure and Ground}, year = 1968, volume = 2, pages = "1--26", doi = {10.1000/5}}\n';
    expect(merged(ours, coming)).toBe(
      ours.replace(
        "  year    = {1968} % in print",
        "  year    = {1968},\n  volume  = {2},\n  pages   = {1--26},\n  doi     = {10.1000/5} % in print",
      ),
    );
  });

  test("tells what differs, and writes over it by choice alone", () => {
    const coming =
      "@article{vane-1968, author = {Vane, Isolde}, title = {A Pace of the Down}, journal = {Measure}, year = 1969, volume = 2}\n";
    const corpus = corpusWith({ "ours.bib": ours });
    const differing = planOf(corpus, { "x.bib": coming }).outcomes[0]?.merge?.differing;
    expect(differing?.map((one) => [one.name, one.here, one.theirs])).toEqual([
      ["journal", "Measure and Ground", "Measure"],
      ["year", "1968", "1969"],
    ]);
    expect(merged(ours, coming)).toContain("journal = {Measure and Ground}");
    const taken = merged(ours, coming, { choices: { 0: { do: "merge", take: ["journal"] } } });
    expect(taken).toContain("  journal = {Measure},\n  year    = {1968},\n  volume  = {2} % in print");
  });

  test("knows one name in two spellings of TeX, and one date in two fields", () => {
    const there = '@book{m, author = {M{\\"u}ller, K.}, title = {Pits of clay}, year = {1990}}\n';
    const coming = "@book{m, author = {Müller, K.}, title = {Pits of clay}, date = {1990}}\n";
    expect(planOf(corpusWith({ "ours.bib": there }), { "x.bib": coming }).outcomes[0]?.merge).toMatchObject({
      missing: [],
      differing: [],
    });
  });

  test("does not lack what it has from its parent", () => {
    const there =
      "@inbook{part, title = {A part of it}, year = 1990, crossref = {whole}}\n@book{whole, title = {Whole}, publisher = {P}}\n";
    const coming = "@inbook{part, title = {A part of it}, year = 1990, publisher = {P}, pages = {3}}\n";
    expect(merged(there, coming)).toBe(
      there.replace("crossref = {whole}", "crossref = {whole}, pages = {3}"),
    );
  });

  test("in RIS and in CSL-JSON", () => {
    const ris = "TY  - BOOK\r\nID  - b\r\nTI  - One of them\r\nPY  - 1990\r\nER  - \r\n";
    const moreRis = "TY  - BOOK\nID  - b\nTI  - One of them\nPY  - 1990\nAU  - A, B\nAU  - C, D\nER  - \n";
    expect(merged(ris, moreRis, missing, "ours.ris", "x.ris")).toBe(
      ris.replace("ER  - ", "AU  - A, B\r\nAU  - C, D\r\nER  - "),
    );
    const json =
      '[\n  {\n    "id": "b",\n    "type": "book",\n    "title": "One of them",\n    "issued": { "date-parts": [[1990]] }\n  }\n]\n';
    const moreJson =
      '[{"id":"b","type":"book","title":"One of them","issued":{"date-parts":[["1990"]]},"author":[{"family":"A"}],"DOI":"10.1000/9"}]';
    expect(merged(json, moreJson, missing, "ours.json", "x.json")).toBe(
      json.replace("[[1990]] }", '[[1990]] },\n    "author": [{"family":"A"}],\n    "DOI": "10.1000/9"'),
    );
  });

  test("of another format writes what it says in the manner of the corpus's own", () => {
    const ris =
      "TY  - JOUR\nAU  - Vane, Isolde\nTI  - A Pace of the Down\nT2  - Measure and Ground\nPY  - 1968\nVL  - 2\nSP  - 1\nEP  - 26\nAB  - Rod & line\nER  - \n";
    const text = merged(ours, ris, missing, "ours.bib", "x.ris");
    const { sources, findings } = readBibliography({ path: "ours.bib", text });
    expect(findings).toEqual([]);
    expect(sources[0]?.csl).toMatchObject({ volume: "2", page: "1-26" });
    expect(text).toContain("abstract = {Rod \\& line}");
    expect(text).toContain("  pages   = {1--26}");
    expect(merged(text, ris, missing, "ours.bib", "x.ris")).toBe(text);
  });

  test("a second time changes nothing", () => {
    const coming =
      "@article{vane-1968, title = {A Pace of the Down}, year = 1968, note = {Read} # { twice}, volume = 2, month = jan}\n";
    const once = merged(ours, coming);
    expect(merged(once, coming)).toBe(once);
  });
});
