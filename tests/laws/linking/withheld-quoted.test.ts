import { expect, test } from "vitest";
import type { SourceFile } from "../../../src/build.ts";
import { findingsText } from "../../../src/cli/print/check.ts";
import { findingLines } from "../../../src/show/pages/findings.ts";
import { quotedBy } from "../../../src/show/report/quoted.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { placeWithheld, shownFindings, shownTexts } from "../../../src/show/withhold.ts";
import { both, built, files } from "../reading/use-cases.ts";
import type { Texts } from "../reading/use-cases.ts";

/** What the command line prints of findings, what the app shows of them, and the report. */
function told(of: readonly SourceFile[]): string {
  const { model, findings } = built(of);
  if (!model) throw new Error("no model");
  const texts = new Map(of.map(({ path, text }) => [path, text]));
  return [
    ...findingsText(shownFindings(model.graph, findings), shownTexts(model.graph, texts, quotedBy(findings))),
    JSON.stringify(findingLines(model.graph, findings, texts)),
    JSON.stringify(reportOf(model, findings, texts).findings),
  ].join("\n");
}

const secret = /umbra/iu;
const open = "artefacts:\n  - { id: post, name: A post }\n";

/** Corpora with mistakes beside, round and in what must stay out; each says something of the mistake. */
const cases: Readonly<Record<string, readonly [texts: Texts, said: RegExp]>> = {
  "an exact place that is taken apart": [
    { "a.yaml": "artefacts:\n  - id: post\n    name: A post\n    coordinates: Umbra: 51.2\n" },
    /a\.yaml:4:18[^]*split-value/,
  ],
  "a place that is withheld, and taken apart": [
    {
      "a.yaml":
        "artefacts:\n  - id: post\n    name: A post\n    found-at: By the umbra mill #4 of\n    withhold-location: true\n",
    },
    /a\.yaml:4:15[^]*split-value/,
  ],
  "an exact place of another form, beside a mistake": [
    { "a.yaml": "artefacts:\n  - { id: post, name: A post, coordinates: [umbra, 1], kind: [a] }\n" },
    /Unexpected list/,
  ],
  "a place of which a word that cannot be read says that it is withheld": [
    {
      "a.yaml": "artefacts:\n  - { id: post, name: A post, found-at: umbra mill, withhold-location: yes }\n",
    },
    /expected true or false/,
  ],
  "a file that cannot be read": [
    { "a.yaml": open, "b.yaml": "observations:\n  - id: umbra-wet\n    text: Umbra is wet\n   of: [post\n" },
    /b\.yaml:4:1[^]*unreadable-file/,
  ],
  "an entry of a bibliography above another": [
    {
      "a.yaml": open,
      "s.bib":
        "@book{umbra-1950, title = {Umbra}, year = {1950}}\n@book{hale-1990, title = {Row}, date = {19x0}}\n",
    },
    /s\.bib:2:/,
  ],
  "a line that names what is withheld": [
    {
      "a.yaml":
        "artefacts:\n  - { id: post, name: A post }\n  - { id: umbra-pit, name: The pit }\nobservations:\n  - { id: o, of: [post, umbra-pit], text: Alike., bogus: 1 }\n",
    },
    /bogus/,
  ],
  "an id that is withheld and is none": [{ "a.yaml": open }, /corpus\.yaml:2:\d+[^]*unknown-reference/],
};

test.each(Object.entries(cases))(
  "no finding and no excerpt tells what must stay out: %s",
  (_, [texts, said]) => {
    const bibliography = "s.bib" in texts ? "bibliography: [s.bib]\n" : "";
    const main = `title: The Row\nwithhold: [umbra-pit, umbra-wet, umbra-1950]\n${bibliography}`;
    const printed = told(files({ ...texts, "corpus.yaml": main }, {}));
    expect(printed).toMatch(said);
    expect(secret.exec(printed)?.input ?? "").toBe("");
  },
);

test("exact places are told nowhere, where nothing else is withheld either", () => {
  const printed = told(
    files({ "corpus.yaml": "title: The Row\n", ...cases["an exact place that is taken apart"]?.[0] }, {}),
  );
  expect(printed).toMatch(/a\.yaml:4:18[^]*split-value/);
  expect(printed).not.toMatch(secret);
  expect(printed).not.toMatch(/51\.2/);
});

test.each(["yes", "True", "[true]", '"true "', "maybe"])(
  "a place is withheld where the word about it cannot be read: %s",
  (word) => {
    const thing = `{ id: post, name: A post, found-at: umbra mill, withhold-location: ${word} }`;
    const { model } = built(
      files({ "corpus.yaml": "title: The Row\n", "a.yaml": `artefacts:\n  - ${thing}\n` }, {}),
    );
    expect(model && placeWithheld(model.graph, "post")).toBe(true);
    const table = {
      "corpus.yaml": "title: The Row\nartefact-tables: [t.csv]\n",
      "t.csv": "id,name,withhold-location\npost,A,yes\npost-2,B,false\n",
    };
    const graph = built(files(table, {})).model?.graph;
    expect(graph && ["post", "post-2"].map((id) => placeWithheld(graph, id))).toEqual([true, false]);
  },
);

test("what is withheld is asked for with care, and the rest is quoted as it is", () => {
  const printed = told(
    files(
      {
        "corpus.yaml": "title: The Row\nwithhold: [umbra-pit]\nartefact-tables: [t.csv]\n",
        "a.yaml":
          "artefacts:\n  - { id: umbra-pit, name: The pit }\n  - id: post\n    name: A post\n    kinds: oak\n",
        "t.csv": "id,name,of-wood\npost-2,A second,oak\n",
      },
      {},
    ),
  );
  expect(printed).toContain("5 ┆     kinds: oak");
  expect(printed).toContain("1 ┆ id,name,of-wood");
});

test("of a corpus that is used, lines of what is not taken are in no excerpt", () => {
  const printed = told(
    both(
      {},
      {
        "corpus.yaml":
          "format: 1\ntitle: The register\nbibliography: [register.bib]\nwithhold: [umbra-seen, trench-9]\nunheard-of: umbra\n",
        "more.yaml":
          "observations:\n  - { id: umbra-seen, of: pit, text: Umbra was seen. }\nclaims:\n  - { id: c, text: Of umbra. }\nartefacts:\n  - { id: pit, name: A pit, bogus: 1 }\n",
        "broken.yaml": "observations:\n  - id: umbra-seen-2\n    text: Umbra\n   of: [pit\n",
      },
    ),
  );
  expect(printed).toMatch(/merrow-register\/more\.yaml:6:/);
  expect(printed).toMatch(/merrow-register\/broken\.yaml:4:/);
  expect(secret.exec(printed)?.input ?? "").toBe("");
});
