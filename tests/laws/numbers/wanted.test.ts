import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { looksAt } from "../../../src/show/numbers/looks.ts";
import type { Looks } from "../../../src/show/numbers/looks.ts";
import { wantedFor } from "../../../src/show/numbers/wanted.ts";
import type { WantedLine } from "../../../src/show/numbers/wanted.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { moreOf, readUnder } from "../linking/supposed-model.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { demoMemo } from "../../demo-memo.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const memo = await demoMemo();

function wantedIn({ graph, derivations }: Model, id: string): Worded<readonly WantedLine[]> {
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  if (record?.list !== "derivations" || !derived) throw new Error(`expected the derivation ${id}`);
  return wholeInEnglish(
    wantedFor(
      graph,
      record,
      derived,
      plugins.find((one) => one.id === record.values.plugin),
    ),
  );
}

const taken = (model: Model, id: string): number => model.derivations.byId.get(id)?.used.length ?? 0;

/** Two rows of sockets; of the second row one was never measured, and a door is no socket. */
function rows(more: object = {}): readonly SourceFile[] {
  const socket = (row: string, n: number) => ({
    id: `${row}/socket-${n}`,
    name: `socket ${n} of the ${row}`,
    kind: "socket",
  });
  const depth = (row: string, n: number, value: string) => ({
    id: `${row}-${n}`,
    of: `${row}/socket-${n}`,
    dimension: "depth",
    value,
  });
  return corpus(
    {
      artefacts: [
        { id: "north", name: "the north row" },
        { id: "south", name: "the south row" },
        ...[1, 2, 3, 4].flatMap((n) => [socket("north", n), socket("south", n)]),
        { id: "south/door", name: "the door", kind: "door" },
      ],
      measurements: [
        ...[1, 2, 3, 4].map((n) => depth("north", n, `${20 + n}.0 ± 0.2 cm`)),
        ...[1, 2, 4].map((n) => depth("south", n, `${10 + n}.5 ± 0.2 cm`)),
      ],
      derivations: [
        {
          id: "scale",
          plugin: "scaling",
          inputs: {
            larger: { of: "north", dimension: "depth" },
            smaller: { of: "south", dimension: "depth" },
          },
        },
        {
          id: "unit",
          plugin: "unit-fit",
          inputs: { values: { of: ["north", "south"], dimension: "depth" } },
          parameters: { unit: "inch" },
        },
      ],
    },
    more,
  );
}

describe("what could be measured for a number", () => {
  test("is the counterpart of what is measured, and what is like the measured in a row", () => {
    const { model } = readUnder(rows(), plugins, memo);
    expect(wantedIn(model, "scale")).toEqual([
      {
        thing: { id: "south/socket-3", text: "socket 3 of the south" },
        dimension: "depth",
        counterpart: { id: "north/socket-3", text: "socket 3 of the north" },
        follows: null,
      },
    ]);
    expect(wantedIn(model, "unit").map(({ thing }) => thing.id)).toEqual(["south/socket-3"]);
  });

  test("is told with what it comes to where it follows from measured dimensions", () => {
    const tied = { dimensions: { depth: { equals: "rim + shaft" } } };
    const more = moreOf({
      measurements: [
        { of: "south/socket-3", dimension: "rim", value: "3.0 ± 0.3 cm" },
        { of: "south/socket-3", dimension: "shaft", value: "10.0 ± 0.4 cm" },
      ],
    });
    const follows = (settings: object) =>
      wantedIn(readUnder([...rows(settings), more], plugins, memo).model, "unit").map((one) => one.follows);
    expect(follows(tied)).toEqual([{ from: "rim and shaft", size: "0.130 ± 0.005 m" }]);
    expect(follows({})).toEqual([null]);
  });

  test("is nothing where only what one source measured may enter", () => {
    const files = rows().map((file) => ({
      ...file,
      text: file.text.replace(
        '"of":["north","south"]',
        '"of":["north","south"],"basis":"autopsy","from":"a-book"',
      ),
    }));
    const bib = {
      path: "books.bib",
      text: "@book{a-book, author = {Delver, Ada}, title = {Rows}, year = 1901}",
    };
    const known = files.map((file) =>
      file.path === "corpus.yaml"
        ? { ...file, text: file.text.replace("{", '{"bibliography":"books.bib",') }
        : file,
    );
    const { model } = readUnder([...known, bib], plugins, memo);
    expect(model.derivations.byId.get("unit")?.status).toBe("refused");
    expect(wantedIn(model, "unit")).toEqual([]);
    expect(wantedIn(model, "scale")).toHaveLength(1);
  });

  test("is told of nothing withheld", () => {
    const { model } = readUnder(rows({ withhold: ["south/socket-3"] }), plugins, memo);
    expect(wantedIn(model, "scale")).toEqual([]);
    expect(wantedIn(model, "unit")).toEqual([]);
    const beside = readUnder(rows({ withhold: ["north/socket-3"] }), plugins, memo).model;
    expect(wantedIn(beside, "scale")).toEqual([]);
  });

  test("enters the number once it is measured, in the invented dispute too", () => {
    const { model } = readUnder(demo, plugins, memo);
    const ids = [...model.derivations.byId.keys()].filter((id) => wantedIn(model, id).length > 0);
    expect(ids).toContain("plan-scale");
    const kinds = new Map(
      model.graph.list("measurements").map(({ values }) => [values.dimension, values.value.kind]),
    );
    for (const id of ids) {
      for (const { thing, dimension } of wantedIn(model, id).slice(0, 1)) {
        expect(kinds.get(dimension)).toBe("length");
        const file = moreOf({
          measurements: [{ id: "newly-measured", of: thing.id, dimension, value: "1.23 m" }],
        });
        const after = readUnder([...demo, file], plugins, memo).model;
        expect([id, taken(after, id)]).toEqual([id, expect.toSatisfy((n) => n > taken(model, id))]);
        expect([id, taken(after, id)]).toEqual([id, expect.toSatisfy((n) => n > taken(model, id))]);
      }
    }
  });
});

describe("looks at one claim", () => {
  function looksIn(model: Model, id: string): readonly Looks[] {
    const record = model.graph.records.get(id);
    if (record?.list !== "derivations") throw new Error(`expected the derivation ${id}`);
    return looksAt(model, plugins, record);
  }

  test("are counted over the corpus, and p is adjusted for all of them after Holm", () => {
    const { model } = readUnder(demo, plugins, memo);
    const [given, ...rest] = looksIn(model, "ring-unit");
    expect(rest).toEqual([]);
    const p = model.derivations.byId.get("ring-unit")?.numbers["p"]?.value ?? 0;
    const searched = model.derivations.byId.get("ring-unit-search")?.numbers["p"]?.value ?? 0;
    expect(p).toBeLessThan(searched);
    expect(given?.times).toBe(2);
    expect(given?.others.map(({ id }) => id)).toEqual(["ring-unit-search"]);
    expect(Number(given?.adjusted)).toBeCloseTo(2 * p, 4);
    // The larger of two is left as it is, but never falls below the smaller one's.
    expect(Number(looksIn(model, "ring-unit-search")[0]?.adjusted)).toBeCloseTo(Math.max(searched, 2 * p), 3);
  });

  test("a number that alone tests its claim, and says of no more, has none", () => {
    const { model } = readUnder(demo, plugins, memo);
    expect(looksIn(model, "plan-scale")).toEqual([]);
  });
});
