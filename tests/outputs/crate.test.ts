import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsonld from "jsonld";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import type { SourceFile } from "../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { data } from "../../src/host/telling/data.ts";
import type { Told } from "../../src/host/telling/kind.ts";
import type { Made } from "../../src/write/telling/made.ts";
import { everything } from "../oracle/open-data/corpus.ts";

type Entity = Readonly<Record<string, unknown>> & { readonly "@id": string };

const folder = mkdtempSync(join(tmpdir(), "crate-"));
const drawing = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M0 0L4 4"/></svg>';

async function madeOf(
  files: readonly SourceFile[],
  asked: Record<string, boolean> = {},
): Promise<readonly Made[]> {
  const memo = emptyMemo();
  const under: Told["under"] = (lens) => evaluate(files, plugins, memo, computingHere(plugins), { lens });
  const { model, findings } = await under({});
  if (!model) throw new Error("no model");
  const told: Told = { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
  const made = await data.make(told, "zip", "data", asked);
  if ("refused" in made) throw new Error("refused");
  return made;
}

const textIn = (made: readonly Made[], path: string): string =>
  String(made.find((one) => one.path === path)?.content ?? "");

function entitiesIn(made: readonly Made[]): ReadonlyMap<string, Entity> {
  const crate = JSON.parse(textIn(made, "ro-crate-metadata.json")) as {
    readonly "@graph": readonly Entity[];
  };
  return new Map(crate["@graph"].map((one) => [one["@id"], one]));
}

/** The address that a property of an entity leads to. */
const leadsTo = (entity: Entity | undefined, property: string): string =>
  (entity?.[property] as Entity | undefined)?.["@id"] ?? "";

const pictured = everything.map((one) => ({
  ...one,
  text: one.text.replace("images/k17.jpg", "images/k17.svg"),
}));

let made: readonly Made[];
let entities: ReadonlyMap<string, Entity>;
beforeAll(async () => {
  mkdirSync(join(folder, "images"));
  writeFileSync(join(folder, "images", "k17.svg"), drawing);
  made = await madeOf(pictured);
  entities = entitiesIn(made);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("the description of the folder as RO-Crate 1.2 asks for it", () => {
  test("begins with itself and the root, with a name, a description, a day and a licence", () => {
    expect(entities.get("ro-crate-metadata.json")).toEqual({
      "@id": "ro-crate-metadata.json",
      "@type": "CreativeWork",
      about: { "@id": "./" },
      conformsTo: { "@id": "https://w3id.org/ro/crate/1.2" },
    });
    const root = entities.get("./");
    expect(root?.["@type"]).toBe("Dataset");
    expect(root?.["name"]).toBe('Rods of "Sallow Fen" \\ Αγορά');
    expect(root?.["description"]).toMatch(/record of a scholarly dispute/);
    expect(root?.["datePublished"]).toBe("2026-11-26");
    const licence = entities.get(leadsTo(root, "license"));
    expect(licence).toMatchObject({
      "@id": "https://creativecommons.org/licenses/by/4.0/",
      name: "CC-BY-4.0",
    });
    expect(licence?.["description"]).toBeTruthy();
    expect(entities.get(leadsTo(root, "author"))).toMatchObject({
      "@id": "https://orcid.org/0000-0002-1825-0097",
      "@type": "Person",
      name: "A. Compiler",
    });
    expect(root?.["informationWithheld"]).toHaveLength(3);
  });

  test("is flat, each entity once, and all that is named as here is here", () => {
    const text = textIn(made, "ro-crate-metadata.json");
    const list = (JSON.parse(text) as { readonly "@graph": readonly Entity[] })["@graph"];
    expect(new Set(list.map((one) => one["@id"])).size).toBe(list.length);
    for (const entity of list) {
      expect(entity["@type"], entity["@id"]).toBeTruthy();
      for (const value of Object.values(entity).flat())
        if (typeof value === "object" && value !== null) {
          expect(Object.keys(value)).toEqual(["@id"]);
          const id = (value as Entity)["@id"];
          if (!/^https?:/.test(id)) expect(entities.has(id), id).toBe(true);
        }
    }
  });

  test("names every file with its type, its size and its SHA-256, and no other", () => {
    const parts = (entities.get("./")?.["hasPart"] as readonly Entity[] | undefined)?.map(
      (one) => one["@id"],
    );
    const others = made.filter(({ path }) => path !== "ro-crate-metadata.json");
    expect(parts?.map(decodeURIComponent)).toEqual(others.map(({ path }) => path));
    for (const { path, content } of others) {
      const bytes = Buffer.from(content as Uint8Array);
      const file = entities.get(path);
      expect([file?.["@type"]].flat(), path).toContain("File");
      expect(file?.["contentSize"], path).toBe(String(bytes.length));
      expect(file?.["sha256"], path).toBe(createHash("sha256").update(bytes).digest("hex"));
      expect(file?.["encodingFormat"], path).toMatch(/^(?:application|image|text)\/[a-z+-]+$/);
      expect(file?.["encodingFormat"], path).not.toBe("application/octet-stream");
    }
  });

  test("tells each run of a plug-in: with what, on what, what came of it", () => {
    const run = entities.get("#run-feet");
    expect(run).toMatchObject({
      "@type": "CreateAction",
      instrument: { "@id": "#plugin-counts" },
      object: { "@id": "corpus/measurements.yaml" },
      result: { "@id": "standings.json" },
      agent: { "@id": "https://orcid.org/0000-0002-1825-0097" },
      actionStatus: { "@id": "http://schema.org/CompletedActionStatus" },
    });
    const version = plugins.find(({ id }) => id === "counts")?.version;
    expect(entities.get("#plugin-counts")).toMatchObject({
      "@type": "SoftwareApplication",
      softwareVersion: version,
    });
  });

  test("tells of a picture who is to be named with it and what may be done with it", () => {
    expect(entities.get("corpus/images/photo.svg")).toMatchObject({
      "@type": ["File", "ImageObject"],
      encodingFormat: "image/svg+xml",
      creditText: "Fen museum",
      license: { "@id": "https://creativecommons.org/publicdomain/zero/1.0/" },
      description: "A picture of Bone rod K-17. Made by A. Vale.",
    });
    expect(textIn(made, "corpus/images.yaml")).toContain("file: images/photo.svg");
  });

  test("uses no term that its context does not have: in safe mode nothing is lost", async () => {
    const terms = readFileSync(
      new URL("../oracle/open-data/vocabularies/ro-crate-1.2.tsv", import.meta.url),
      "utf8",
    )
      .split("\n")
      .filter((line) => line !== "" && !line.startsWith("#"))
      .map((line) => line.split("\t") as [string, string]);
    const document = { "@context": Object.fromEntries(terms) };
    const options = {
      safe: true,
      base: "https://example.org/crate/",
      format: "application/n-quads",
      documentLoader: (url: string) => {
        if (url !== "https://w3id.org/ro/crate/1.2/context") throw new Error(`fetched ${url}`);
        return Promise.resolve({ contextUrl: null, document, documentUrl: url });
      },
    };
    const crate = JSON.parse(textIn(made, "ro-crate-metadata.json")) as jsonld.JsonLdDocument;
    const quads = (await jsonld.toRDF(crate, options as never)) as unknown as string;
    expect(quads).toContain(
      "<https://example.org/crate/ro-crate-metadata.json> <http://purl.org/dc/terms/conformsTo> <https://w3id.org/ro/crate/1.2> .",
    );
    expect(quads).toContain("<http://rs.tdwg.org/dwc/terms/informationWithheld>");
    const alien = { ...(crate as object), "@graph": [{ "@id": "#x", "no-such-term": "y" }] };
    await expect(jsonld.toRDF(alien as jsonld.JsonLdDocument, options as never)).rejects.toThrow();
  });
});

test("says all rights reserved where no licence is recorded", async () => {
  const bare = [{ path: "corpus.yaml", text: "title: Bare\n" }];
  const only = entitiesIn(await madeOf(bare));
  const licence = only.get(leadsTo(only.get("./"), "license"));
  expect(licence?.["name"]).toBe("All rights reserved");
  expect(licence?.["description"]).toMatch(/Ask the authors/);
  expect(only.get("./")).not.toHaveProperty("informationWithheld");
});

test("tells where the corpus that is given, read by itself, says otherwise than the whole record", async () => {
  const records = `artefacts: [{ id: bowl, name: The bowl }, { id: lid, name: The lid }]
observations: [{ id: mark, of: lid, text: A mark. }, { id: stain, of: bowl, text: A stain. }]
claims: [{ id: oil, text: Oil. }, { id: grain, text: Grain. }]
arguments: [{ id: by-mark, because: [mark], therefore: oil }, { id: by-stain, because: [stain], therefore: grain }]
measurements:
  - { id: of-bowl, of: bowl, dimension: beads, value: 12 }
  - { id: of-lid, of: lid, dimension: beads, value: 30 }
  - { id: first, of: bowl, dimension: knobs, value: 12 }
derivations:
  - { id: beads, plugin: counts, inputs: { first: { of: bowl, dimension: knobs }, second: { of: [bowl], dimension: beads } } }
`;
  const files = [
    { path: "corpus.yaml", text: "title: Bowls\nwithhold: [lid]\n" },
    { path: "things.yaml", text: records },
  ];
  const told = JSON.parse(textIn(await madeOf(files), "differences.json")) as object;
  // Whatever is given that nothing withheld bears on is as it was; the claim has lost its one argument.
  expect(told).toEqual({
    leftOut: { artefacts: 1, observations: 1, arguments: 1, measurements: 1 },
    standings: { oil: { whole: "stands", given: "unsupported" } },
    numbers: {},
  });
  expect(textIn(made, "README.md")).toMatch(/^Records left out/m);
});

test("notes are in no file, or with the option in the data and in the corpus", async () => {
  const files = [
    { path: "corpus.yaml", text: "title: Noted\n" },
    { path: "things.yaml", text: "artefacts: [{ id: bowl, name: The bowl, note: Noteword }]\n" },
  ];
  const told = (one: readonly Made[]): readonly string[] =>
    one.filter(({ content }) => String(content).includes("Noteword")).map(({ path }) => path);
  expect(told(await madeOf(files))).toEqual([]);
  expect(told(await madeOf(files, { "with-notes": true }))).toEqual([
    "data.ttl",
    "data.jsonld",
    "corpus/artefacts.yaml",
  ]);
});
