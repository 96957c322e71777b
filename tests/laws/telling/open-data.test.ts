import fc from "fast-check";
import { parseHTML } from "linkedom";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { build } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { data } from "../../../src/host/telling/data.ts";
import type { Told } from "../../../src/host/telling/kind.ts";
import { cslJsonOf } from "../../../src/write/data/formats/csl-json.ts";
import { graphMlOf } from "../../../src/write/data/formats/graphml.ts";
import { jsonLdOf } from "../../../src/write/data/formats/json-ld.ts";
import { turtleOf } from "../../../src/write/data/formats/turtle.ts";
import { limitsOf } from "../../../src/write/data/graph/dates.ts";
import { openData } from "../../../src/write/data/open-data.ts";
import { concepts } from "../../../src/write/data/terms/concepts.ts";
import { ownProperties } from "../../../src/write/data/terms/properties.ts";
import { decimal } from "../../../src/write/data/terms/units.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { losable, losableFiles } from "../../oracle/losable-corpus.ts";
import { everything, withheldWords } from "../../oracle/open-data/corpus.ts";
import { nQuadsOf, quadsIn } from "../../oracle/open-data/parsed.ts";

const base = "https://example.org/variorum/test/";
const asked = { base, program: "Variorum 0", versions: new Map<string, string>(), today: "2026-11-26" };

function readTurtle(model: Model): string {
  return turtleOf(openData(model, asked), base);
}

async function told(files: readonly SourceFile[]): Promise<Told> {
  const memo = emptyMemo();
  const { model, findings } = await evaluate(files, plugins, memo, computingHere(plugins));
  if (!model) throw new Error("no model");
  const under: Told["under"] = (lens) => evaluate(files, plugins, memo, computingHere(plugins), { lens });
  return { folder: ".", files, model, findings, plugins, memo, under, today: "2026-11-26" };
}

async function made(one: Told, options: Record<string, string> = {}): Promise<ReadonlyMap<string, string>> {
  const files = await data.make(one, "zip", "data", options);
  if ("refused" in files) throw new Error("refused");
  return new Map(files.map(({ path, content }) => [path, String(content)]));
}

describe("the data of a corpus with everything in it", () => {
  let one: Told;
  let files: ReadonlyMap<string, string>;
  beforeAll(async () => {
    one = await told(everything);
    files = await made(one);
  });

  test("is made of these files, the same bytes each time and whatever the order of the corpus's files", async () => {
    expect([...files.keys()].filter((path) => !/^(?:corpus|tables)\//.test(path))).toEqual([
      "ro-crate-metadata.json",
      "README.md",
      "data.ttl",
      "data.jsonld",
      "terms.ttl",
      "sources.json",
      "dispute.graphml",
      "standings.json",
      "differences.json",
    ]);
    expect(await made(one)).toEqual(files);
    expect(await made(await told(everything.toReversed()))).toEqual(files);
  });

  test("has nothing in it that is withheld, in any file, and says that something is", () => {
    for (const [path, text] of files)
      for (const word of withheldWords)
        if (path !== "terms.ttl") expect(text.includes(word), `${word} in ${path}`).toBe(false);
    expect(files.get("data.ttl")).toContain("dwc:informationWithheld");
    // What is told would be nothing to hide, were it not there: the words are in the corpus.
    const corpus = everything.map(({ text }) => text).join("\n");
    for (const word of withheldWords) expect(corpus).toContain(word);
  });

  test("holds each stance as somebody's belief, and a rejection as FALSE", () => {
    const turtle = files.get("data.ttl") ?? "";
    const held = (id: string): string | undefined =>
      new RegExp(`<${id}#belief>\\n[^]*?J5_holds_to_be "([A-Z]+)"`).exec(turtle)?.[1];
    expect(held("vale%3Arule%40vale-1950")).toBe("PROBABLE");
    expect(held("haddad-on-rule")).toBe("FALSE");
    expect(held("vale%3Apin%40vale-1950")).toBe("UNLIKELY");
    expect(held("vale%3Ain-feet%40vale-1950")).toBe("UNKNOWN");
    expect(held("no-wear")).toBe("FALSE");
    expect(held("wear-unclear")).toBe("UNKNOWN");
    expect(held("wear-silent")).toBe("UNKNOWN");
    // A sentence that names no feature says what it says.
    expect(held("absent-unnamed")).toBe("TRUE");
  });

  test("takes what was measured on the thing, between landmarks and off a picture each for what it is", () => {
    const turtle = files.get("data.ttl") ?? "";
    const classes = (id: string): string => new RegExp(`<${id}>\\n  a ([^;]*);`).exec(turtle)?.[1] ?? "";
    expect(classes("length-17")).toContain("crm:E16_Measurement");
    expect(classes("spacing-17")).toContain("crmsci:S21_Measurement");
    expect(classes("spacing-17#dimension")).toContain("crmsci:S25_Relative_Dimension");
    expect(classes("k-18%3Alength%40haddad-1988")).toContain("crmsci:S6_Data_Evaluation");
    expect(classes("k-18%3Alength%40haddad-1988")).not.toContain("E16");
    expect(classes("wear")).toContain("crmsci:S4_Single_Observation");
    expect(classes("absent-in-print")).not.toContain("S27");
    const dimension = /<k-18%3Alength%40haddad-1988#dimension>\n[^]*? \.\n/.exec(turtle)?.[0] ?? "";
    // 6 in are 152.4 mm (exactly, since 1959).
    expect(dimension).toContain('crm:P90_has_value "0.1524"^^xsd:decimal');
    expect(dimension).toContain('vr:as-printed "6 in"');
    // From smallest to largest of five things is no error of one.
    const spread = turtle.split("\n\n").filter((one) => one.includes('vr:as-printed "30–33 mm"'));
    expect(spread).toHaveLength(1);
    expect(spread[0]).toContain("vr:spread");
    expect(spread[0]).not.toContain("vr:standard-uncertainty");
    expect(dimension).toContain("vr:standard-uncertainty");
  });

  test("says of citing no more than the record does: to hold another claim is no dispute between sources", () => {
    const turtle = files.get("data.ttl") ?? "";
    const source = (key: string): string => new RegExp(`<${key}>\\n[^]*? \\.\\n`).exec(turtle)?.[0] ?? "";
    // Haddad argues against what Vale measured and argued; Vale came first and cites nobody.
    expect(source("haddad-1988")).toContain("cito:disputes <vale-1950>");
    expect(source("haddad-1988")).toContain("cito:usesDataFrom <vale-1950>");
    expect(source("vale-1950")).not.toContain("cito:");
    expect(turtle).not.toContain("cito:refutes");
  });

  test("under a year tells nothing that was not in print", async () => {
    const { model } = await one.under({ asOf: 1960 });
    if (!model) throw new Error("no model");
    const turtle = readTurtle(model);
    expect(turtle).not.toContain("haddad-1988");
    expect(turtle).not.toContain("no-wear");
    expect(turtle).toContain("<length-17>");
  });

  test("begins its addresses as it is told to, and refuses what cannot begin one", async () => {
    const own = await made(one, { base: "https://fen.example/rods/" });
    expect(own.get("data.ttl")).toContain("@base <https://fen.example/rods/> .");
    for (const base of [
      "fen",
      "https://fen.example/rods",
      "https://fen.example/#",
      "ftp://x/",
      "https://a b/",
    ])
      expect(await data.make(one, "zip", "data", { base })).toHaveProperty("refused");
  });

  test("is not made of what is only supposed", async () => {
    const { model } = await one.under({ suppose: { examination: "look", outcome: "worn" } });
    if (!model) throw new Error("no model");
    expect(await data.make({ ...one, model }, "zip", "data", {})).toHaveProperty("refused");
  });

  test("is one file where one is asked for", async () => {
    for (const format of data.formats.filter((one) => one !== "zip")) {
      const only = await data.make(one, format, "rods", {});
      const whole = [...files].find(([path]) => path.endsWith(`.${format}`));
      expect(only).toEqual([{ path: `rods.${format}`, content: whole?.[1] }]);
    }
  });

  test("puts what CSL does not know into custom", () => {
    const items = JSON.parse(files.get("sources.json") ?? "[]") as readonly Record<string, unknown>[];
    const vale = items.find(({ id }) => id === "vale-1950");
    expect(vale).not.toHaveProperty("x-shelf");
    expect(vale?.["custom"]).toEqual({
      variorum: { label: "Vale 1950", scholars: ["vale"], other: { "x-shelf": "B 4" } },
    });
  });

  test("ties nodes of the dispute that are there, and all that argues", () => {
    const { document } = parseHTML(files.get("dispute.graphml") ?? "");
    const ids = [...document.querySelectorAll("node")].map((node) => node.getAttribute("id"));
    const ends = [...document.querySelectorAll("edge")].flatMap((edge) => [
      edge.getAttribute("source"),
      edge.getAttribute("target"),
    ]);
    expect(ids.length).toBeGreaterThan(30);
    expect(ends.filter((end) => !ids.includes(end))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ends).toContain("for-rule");
  });
});

describe("the data of generated corpora", () => {
  test.each([1, 2, 3])("%i: is read back whole, whatever the order of the files", (seed) => {
    const files = losableFiles(seed);
    const model = modelOf(files);
    const turtle = readTurtle(model);
    expect(quadsIn(turtle).length).toBe(openData(model, asked).length);
    expect(readTurtle(modelOf(files.toReversed()))).toBe(turtle);
    expect(graphMlOf(modelOf(files.toReversed()))).toBe(graphMlOf(model));
  });

  test("names nothing that is withheld", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.subarray([...losable], { minLength: 1 }),
        (seed, withhold) => {
          const files = losableFiles(seed).map((file) =>
            file.path === "corpus.yaml"
              ? { ...file, text: JSON.stringify({ ...(JSON.parse(file.text) as object), withhold }) }
              : file,
          );
          const model = modelOf(files);
          const text = [readTurtle(model), graphMlOf(model)].join("\n");
          for (const id of withhold) {
            expect(text).not.toMatch(new RegExp(`<${id}[#>/%]`));
            expect(text).not.toContain(`"${id}"`);
          }
        },
      ),
      { numRuns: 12 },
    );
  });

  test("a made corpus of some hundred records is the same in Turtle and in JSON-LD", async () => {
    const { model } = build(corpusOf({ records: 100, seed: 7 }), plugins, emptyMemo());
    if (!model) throw new Error("no model");
    const triples = openData(model, asked);
    expect(quadsIn(turtleOf(triples, base)).length).toBe(triples.length);
    expect(quadsIn(await nQuadsOf(jsonLdOf(triples, base))).length).toBe(triples.length);
  });
});

describe("what the files are made of", () => {
  test("any words come back as they were, but for half characters", async () => {
    const words = fc.string({ unit: "binary", maxLength: 20 });
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(words, { minLength: 1, maxLength: 5 }), async (said) => {
        const triples = said.map((one, place) => ({
          subject: `${base}s${place}`,
          property: "http://www.w3.org/2000/01/rdf-schema#label",
          object: { words: one },
        }));
        const expected = said.map((one) => one.replace(/\p{Cs}/gu, "\ufffd"));
        const read = (quads: ReturnType<typeof quadsIn>): readonly string[] =>
          quads.map(({ object }) => object.value);
        expect(read(quadsIn(turtleOf(triples, base)))).toEqual(expected);
        expect(read(quadsIn(await nQuadsOf(jsonLdOf(triples, base)))).toSorted()).toEqual(
          expected.toSorted(),
        );
      }),
      { numRuns: 25 },
    );
  });

  test("a decimal is the number, without powers of ten and to twelve figures", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (value) => {
        const text = decimal(value);
        expect(text).toMatch(/^-?(?:0|[1-9]\d*)(?:\.\d*[1-9])?$/);
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-11);
      }),
    );
    expect([0, 0.0254, 1e-7, -12.5, 25.400000000000002, 1e21].map(decimal)).toEqual([
      "0",
      "0.0254",
      "0.0000001",
      "-12.5",
      "25.4",
      "1000000000000000000000",
    ]);
  });

  test("dates have sharp limits where they are sharp", () => {
    const both = (begin: string | null, end: string | null): unknown => ({ begin, end });
    expect(limitsOf("1998-02")).toEqual(both("1998-02-01T00:00:00", "1998-02-28T23:59:59"));
    // 5 BC is astronomical −4, a leap year.
    expect(limitsOf("-0004-02")).toEqual(both("-0004-02-01T00:00:00", "-0004-02-29T23:59:59"));
    expect(limitsOf("0000")).toEqual(both("0000-01-01T00:00:00", "0000-12-31T23:59:59"));
    expect(limitsOf("1984-05-03/1984-06")).toEqual(both("1984-05-03T00:00:00", "1984-06-30T23:59:59"));
    expect(limitsOf("18XX")).toEqual(both("1800-01-01T00:00:00", "1899-12-31T23:59:59"));
    expect(limitsOf("../1850")).toEqual(both(null, "1850-12-31T23:59:59"));
    expect(limitsOf("[1667,1670]")).toEqual(both("1667-01-01T00:00:00", "1670-12-31T23:59:59"));
    expect(limitsOf("1850~")).toBeNull();
    expect(limitsOf("1850?")).toBeNull();
  });

  test("no concept of ours is also a property, nor two schemes' concept", () => {
    const names = [
      ...Object.values(concepts).flatMap(({ has }) => Object.keys(has)),
      ...Object.keys(ownProperties),
    ];
    expect(new Set(names).size).toBe(names.length);
  });
});

test("notes and abstracts that stand beside an entry stay at home", () => {
  const { model } = build(
    [
      { path: "corpus.yaml", text: "title: Bowls\nbibliography: [sources.bib]\n" },
      {
        path: "sources.bib",
        text: "@book{hale, author = {Hale, Ada}, title = {The Row}, year = 1990, abstract = {Their words}, note = {lent to Mal}, keywords = {rows}}",
      },
    ],
    [],
    emptyMemo(),
  );
  const written = model ? cslJsonOf(model) : "";
  expect(written).toContain("The Row");
  expect(written).not.toMatch(/Their words|lent to Mal|rows/);
});
