import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import type { Lens, Model, SourceFile } from "../../src/build.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { withheldIn } from "../../src/link/withheld.ts";
import { givenCorpus } from "../../src/show/telling/given/given.ts";
import type { Given } from "../../src/show/telling/given/given.ts";
import { picturesOpen } from "../../src/show/telling/given/records.ts";
import { losable, losableFiles, losablePlugins } from "../oracle/losable-corpus.ts";
import { everything, withheldWords } from "../oracle/open-data/corpus.ts";

const all = [...plugins.filter(({ id }) => id !== "silence"), ...losablePlugins];

function modelOf(files: readonly SourceFile[], lens: Lens = {}): Model {
  const { model } = build(files, all, emptyMemo(), lens);
  if (!model) throw new Error("no model");
  return model;
}

function givenOf(files: readonly SourceFile[], notes = false, lens: Lens = {}): Given {
  const model = modelOf(files, lens);
  const pictures = new Map(picturesOpen(model).map(({ id }) => [id, `images/${id}.png`]));
  return givenCorpus(model, { pictures, notes });
}

/** A corpus of two files, the records under their lists, the settings beside a title and a bibliography. */
function corpus(records: string, settings = "", more: readonly SourceFile[] = []): readonly SourceFile[] {
  const books = ["open-1900", "sealed-1950"].map((id) => ({
    id,
    type: "book",
    title: `Book ${id.split("-")[0] ?? ""}`,
    author: [{ family: id.startsWith("open") ? "Hale" : "May", given: "Ada" }],
    issued: { "date-parts": [[Number(id.slice(-4))]] },
  }));
  return [
    { path: "books.json", text: JSON.stringify(books) },
    { path: "corpus.yaml", text: `title: Bowls\nbibliography: [books.json]\n${settings}` },
    { path: "records.yaml", text: records },
    ...more,
  ];
}

const textOf = ({ files }: Given): string => files.map(({ path, text }) => `${path}\n${text}`).join("\n");
const errorsIn = (files: readonly SourceFile[]): readonly unknown[] =>
  build(files, all, emptyMemo()).findings.filter(({ level }) => level === "error");

/** Reads what is given and holds it against what was to be given. */
function holdsAsGiven(given: Given): Model {
  const read = modelOf(given.files);
  expect([...read.graph.records.keys()].toSorted()).toEqual([...given.records.keys()].toSorted());
  for (const [id, { list, values }] of given.records) {
    const one = read.graph.records.get(id);
    expect(one?.list, id).toBe(list);
    expect(one?.values, id).toEqual(values);
  }
  return read;
}

describe("a corpus with everything in it, as it may be given out", () => {
  const given = givenOf(everything);

  test("is read by the program without an error, with the values that were recorded", () => {
    expect(errorsIn(given.files)).toEqual([]);
    const { graph } = modelOf(everything);
    const read = holdsAsGiven(given).graph;
    const whole = [...read.records.keys()].filter((id) => {
      const record = graph.records.get(id);
      return record !== undefined && !JSON.stringify([...entriesOf(record.values)]).match(/hidden|secret/);
    });
    expect(whole.length).toBeGreaterThan(40);
    for (const id of whole.filter((one) => !["fen", "k-17", "photo"].includes(one)))
      expect(read.records.get(id)?.values, id).toEqual(graph.records.get(id)?.values);
    expect(read.settings.units).toMatchObject([{ name: "rod-foot", size: 0.31, from: ["vale-1950"] }]);
    expect(read.settings.dimensions).toEqual(graph.settings.dimensions);
    expect([...read.sources.values()].map(({ label, year }) => [label, year])).toEqual(
      [...graph.sources.values()]
        .filter(({ key }) => key !== "hidden-1960")
        .map(({ label, year }) => [label, year]),
    );
  });

  test("has nothing in it that is withheld, and its settings do not name it", () => {
    const text = textOf(given);
    for (const word of withheldWords) expect(text.includes(word), word).toBe(false);
    expect(text).not.toMatch(/withhold:|coordinates|x-shelf/);
    expect(given.records.get("k-18")?.values).toHaveProperty("found-at", "Trench Z");
    expect(given.records.get("k-17")?.values).not.toHaveProperty("found-at");
  });

  test("says how many records are not in it", () => {
    const counts = new Map(given.leftOut);
    expect(counts.get("scholars")).toBe(1);
    expect(counts.get("sources")).toBe(1);
    expect(counts.get("images")).toBe(2);
    expect(counts.get("questions")).toBeUndefined();
  });

  test("gives the same files when it is given on", () => {
    expect(givenOf(given.files).files.filter(({ path }) => path !== "images.yaml")).toEqual(
      given.files.filter(({ path }) => path !== "images.yaml"),
    );
  });

  test("under a year has nothing in it that was not in print", () => {
    const early = givenOf(everything, false, { asOf: 1960 });
    expect(textOf(early)).not.toMatch(/haddad-1988|no-wear/);
    expect(early.records.has("length-17")).toBe(true);
    expect(errorsIn(early.files)).toEqual([]);
  });
});

function* entriesOf(value: object): Generator<unknown> {
  for (const one of Object.values(value) as unknown[])
    if (one instanceof Map) yield [...one];
    else if (typeof one === "object" && one !== null) yield* entriesOf(one);
    else yield one;
}

describe("a record that would say another thing without what it names is not given", () => {
  const settings = "withhold: [sealed-1950, may, lid]\ndimensions: { rim: { kind: length } }\n";
  const records = `
scholars: [{ id: hale, name: Ada Hale }, { id: may, name: Una May }]
artefacts: [{ id: bowl, name: The bowl, date: [{ is: 1200, by: may }, { is: 1300, by: hale }] }, { id: lid, name: The lid }, { id: cup, name: The cup }]
claims:
  - { id: oil, text: It held oil., from: sealed-1950 p. 3, dates: [{ event: firing, after: "1200" }] }
  - { id: grain, text: It held grain. }
measurements:
  - { id: anew, of: bowl, dimension: rim, value: 18.2 cm, from: open-1900 p. 1 }
  - { id: copied, of: bowl, dimension: rim, value: 18.2 cm, from: open-1900 p. 2, repeats: sealed-1950 }
  - { id: unsaid, of: bowl, dimension: rim, value: 18.3 cm, from: sealed-1950 p. 2 }
  - { id: second-hand, of: bowl, dimension: rim, value: 18.4 cm, from: open-1900 p. 2, via: sealed-1950 p. 4 }
  - { id: by-may, of: bowl, dimension: rim, value: 18.5 cm, from: open-1900 p. 2, by: may }
  - { id: by-both, of: bowl, dimension: rim, value: 18.6 cm, from: open-1900 p. 2, by: [may, hale] }
observations:
  - { id: stain, of: bowl, text: A stain., from: [open-1900 p. 4, sealed-1950 p. 9] }
  - { id: alike, of: [bowl, lid], text: They are of one hand. }
arguments:
  - { id: whole, because: [stain], therefore: oil }
  - { id: half, because: [stain, second-hand], therefore: oil }
  - { id: on-half, because: [grain], against: [half] }
  - { id: on-two, because: [grain], against: [half, whole] }
derivations:
  - { id: listed, plugin: echo, inputs: { values: [anew, second-hand] } }
  - { id: chosen, plugin: echo, inputs: { values: { of: bowl, dimension: rim } } }
talks:
  - { id: talk, title: Bowls, steps: [{ show: [lid], text: Behold the lid. }, { show: [bowl], text: Behold the bowl. }, { text: Words alone. }] }
examinations:
  - { id: look, of: [bowl, lid], method: lamp, outcomes: [{ id: glows, text: It glows., therefore: [oil], against: [second-hand] }] }
searches: [{ id: shelf, where: shelf, words: bowls, by: may }]
readings: [{ from: sealed-1950, status: read }, { from: open-1900, status: read }]
`;
  const given = givenOf(corpus(records, settings));
  const valuesOf = (id: string): Record<string, unknown> | undefined =>
    given.records.get(id)?.values as Record<string, unknown> | undefined;

  test("copied numbers, second-hand words, things by somebody, arguments without a premise", () => {
    const ids = ["copied", "unsaid", "second-hand", "by-may", "alike", "half", "on-half", "listed"];
    expect(ids.filter((id) => given.records.has(id))).toEqual([]);
    const kept = [
      "anew",
      "by-both",
      "stain",
      "whole",
      "on-two",
      "chosen",
      "talk",
      "look",
      "shelf",
      "readings@open-1900",
    ];
    expect(kept.filter((id) => !given.records.has(id))).toEqual([]);
  });

  test("of what is given, what named it is gone", () => {
    expect(valuesOf("by-both")?.["by"]).toEqual(["hale"]);
    expect(valuesOf("stain")?.["from"]).toEqual([{ key: "open-1900", locator: "p. 4" }]);
    expect(valuesOf("on-two")?.["against"]).toEqual(["whole"]);
    expect(valuesOf("oil")).not.toHaveProperty("from");
    expect(valuesOf("bowl")?.["date"]).toEqual([{ is: "1300", by: ["hale"] }]);
    expect(valuesOf("talk")?.["steps"]).toEqual([
      { show: ["bowl"], text: "Behold the bowl." },
      { text: "Words alone." },
    ]);
    expect(valuesOf("look")?.["of"]).toEqual(["bowl"]);
    expect(textOf(given)).not.toMatch(/sealed|: may|\[may|lid|Una/);
    expect(errorsIn(given.files)).toEqual([]);
    holdsAsGiven(given);
  });
});

describe("what the files hold", () => {
  test("notes only where they are asked for, who typed what never", () => {
    const files = corpus(
      "scholars: [{ id: hale, name: Ada Hale, note: Noteword, entered-by: Typistword, checked-by: Checkerword, x-own: Ownword }]\n",
    );
    expect(textOf(givenOf(files))).not.toMatch(/Noteword|Typistword|Checkerword|Ownword/);
    const noted = givenOf(files, true);
    expect(textOf(noted)).toMatch(/Noteword/);
    expect(textOf(noted)).not.toMatch(/Typistword|Checkerword|Ownword/);
    holdsAsGiven(noted);
  });

  test("a table with decimal commas comes back by points, years of BC as such, several records of one name in their order", () => {
    const files = corpus(
      `artefacts: [{ id: bowl, name: The bowl }]
observations: [{ id: old, of: bowl, text: It was old., year: 480 BC }, { id: early, of: bowl, text: New., year: AD 60 }]
measurements: [{ of: bowl, dimension: rim, value: 18.2 cm, coverage: 2 }, { of: bowl, dimension: rim, value: 18.9 ± 0.2 cm }]
`,
      "measurement-tables: [rims.csv]\ndecimal: comma\ndimensions: { rim: { kind: length } }\nwithhold: ['bowl:rim']\n",
      [
        {
          path: "rims.csv",
          text: "of;dimension;value;uncertainty;unit;n\nbowl;rim;18,25;0,05;cm;3\nbowl;rim;188,5;;mm;\n",
        },
      ],
    );
    const given = givenOf(files);
    const { graph } = holdsAsGiven(given);
    expect(graph.list("observations").map(({ values }) => values.year)).toEqual([-479, 60]);
    // The first of the four is withheld: the others would go by other names.
    expect(graph.list("measurements")).toEqual([]);
    const openFiles = files.map((one) => ({
      ...one,
      text: one.text.replace("withhold: ['bowl:rim']\n", ""),
    }));
    const open = givenOf(openFiles);
    const read = modelOf(open.files).graph.list("measurements");
    expect(read.map(({ values }) => [values.value.text, values.value.value]).toSorted()).toEqual([
      ["18.2 cm", 0.182],
      ["18.25 ± 0.05 cm", 0.1825],
      ["18.9 ± 0.2 cm", 0.189],
      ["188.5 mm", 0.1885],
    ]);
    expect(read.map(({ id }) => id)).toEqual(
      modelOf(openFiles)
        .graph.list("measurements")
        .map(({ id }) => id),
    );
    expect(errorsIn(open.files)).toEqual([]);
  });

  test("any words come back as they were", () => {
    const words = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 40 })
      .filter((text) => text.trim() !== "");
    const hostile = fc.constantFrom(
      "a: b",
      "# c",
      "- d",
      "'e",
      '"f',
      "g\n\n  h\n",
      "> i",
      "{j}",
      "k #l",
      "~",
      "null",
      "*m",
      "&n",
      "!o",
      "p\t",
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(words, hostile), { minLength: 1, maxLength: 4 }), (said) => {
        const list = said.map((text, place) => ({ id: `c${place}`, text }));
        const files = corpus(JSON.stringify({ claims: list }));
        const read = holdsAsGiven(givenOf(files)).graph.list("claims");
        expect(read.map(({ values }) => values.text)).toEqual(
          modelOf(files)
            .graph.list("claims")
            .map(({ values }) => values.text),
        );
      }),
      { numRuns: 40 },
    );
  });

  test("numbers come back as they were, however small", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat({ max: 30 }), (share, zeros) => {
        const chance = `0.${"0".repeat(zeros)}${String(share).replace(/\D/gu, "") || "1"}`.slice(0, 60);
        const outcome = `{ id: o, text: O., therefore: [c], probability: ${chance} }`;
        const files = corpus(
          `claims: [{ id: c, text: C. }]\nartefacts: [{ id: a, name: A }]\nexaminations: [{ id: x, of: a, method: m, cost: 1${"0".repeat(zeros)}, outcomes: [${outcome}] }]\n`,
        );
        holdsAsGiven(givenOf(files));
      }),
      { numRuns: 20 },
    );
  });

  test("a plug-in of the corpus goes with it unless it names what is withheld, and then its numbers do not either", () => {
    const records = `artefacts: [{ id: bowl, name: The bowl }, { id: lid, name: The lid }]
measurements: [{ id: a, of: bowl, dimension: rim, value: 18.2 cm }]
derivations: [{ id: own, plugin: mine, inputs: { values: [a] } }, { id: theirs, plugin: echo, inputs: { values: [a] } }]
`;
    const code = (text: string): readonly SourceFile[] => [{ path: "plugins/mine.js", text }];
    const given = (text: string): Given => givenOf(corpus(records, "withhold: [lid]\n", code(text)));
    const open = given("export default {};");
    expect(open.files.find(({ path }) => path === "plugins/mine.js")?.text).toBe("export default {};");
    expect(open.records.has("own")).toBe(true);
    const naming = given("// as for the lid\nexport default {};");
    expect(naming.files.map(({ path }) => path)).not.toContain("plugins/mine.js");
    expect([naming.records.has("own"), naming.records.has("theirs")]).toEqual([false, true]);
  });
});

test("of generated corpora with anything withheld, what is given reads as it was given and names nothing else", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.subarray([...losable], { minLength: 1 }),
      (seed, withhold) => {
        const files = losableFiles(seed).map((file) =>
          file.path === "corpus.yaml"
            ? { ...file, text: JSON.stringify({ ...(JSON.parse(file.text) as object), withhold }) }
            : file,
        );
        const { graph } = modelOf(files);
        const given = givenOf(files);
        holdsAsGiven(given);
        const withheld = withheldIn(graph);
        expect([...given.records.keys()].filter(withheld)).toEqual([]);
        const text = textOf(given);
        for (const id of withhold) expect(text).not.toMatch(new RegExp(`(?<![a-z0-9/-])${id}(?![a-z0-9-])`));
        expect(givenOf(given.files).files).toEqual(given.files);
      },
    ),
    { numRuns: 12 },
  );
});
