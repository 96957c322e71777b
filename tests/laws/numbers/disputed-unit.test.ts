import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import type { Memo, Model, SourceFile } from "../../../src/build.ts";
import { parseQuantity } from "../../../src/base/quantity/quantity-text.ts";
import { measuredOf } from "../../../src/derive/prepare/select.ts";
import { rereadIn } from "../../../src/derive/trials/reread.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import type { NumberPage } from "../../../src/show/numbers/number.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const spans = {
  span: { is: "20.0 ± 0.1 cm", also: ["builders' span"], from: "hale-1896" },
  "long-span": { is: "22.0 ± 0.2 cm", also: ["Builders’ span", "builders' span"], from: "brandt-1902" },
};

/** Rooms written in spans beside chests in centimetres, and how many times as large they are. */
function files(units: object, more: object = {}, rooms = ["10.0 span", "about 12 span", "7 span 20 cm"]) {
  const sizes = ["100.0 ± 0.5 cm", "120.0 ± 0.5 cm", "80.0 ± 0.5 cm"];
  const names = ["width", "length", "height"];
  const of = (thing: string, values: readonly string[]) =>
    values.map((value, at) => ({ id: `${thing}-${at}`, of: thing, dimension: names[at], value }));
  const records = {
    artefacts: [
      { id: "room", name: "the room" },
      { id: "chest", name: "the chest" },
    ],
    claims: [{ id: "twice", text: "The room is twice the chest." }],
    measurements: [...of("room", rooms), ...of("chest", sizes)],
    derivations: [
      {
        id: "scale",
        plugin: "scaling",
        inputs: { larger: { of: "room" }, smaller: { of: "chest" } },
        "bears-on": [{ claim: "twice", supports: { k: "within 1.9 .. 2.1" } }],
      },
    ],
  };
  const settings = { title: "Rooms", bibliography: "books.bib", units, ...more };
  const bib = ["hale-1896", "brandt-1902"].map(
    (key) => `@book{${key}, author = {Delver, Ada}, title = {Rooms}, year = ${key.slice(-4)}}`,
  );
  return [
    { path: "corpus.yaml", text: JSON.stringify(settings) },
    { path: "records.yaml", text: JSON.stringify(records) },
    { path: "books.bib", text: bib.join("\n") },
  ];
}

async function read(all: readonly SourceFile[]): Promise<{
  readonly model: Model;
  readonly messages: readonly string[];
  readonly page: Worded<NumberPage>;
}> {
  const memo: Memo = emptyMemo();
  const { model, findings } = await evaluate(all, plugins, memo, computingHere(plugins));
  const page = model && numberPage(model, plugins, memo.compute, "scale");
  if (!model || !page) throw new Error("no page");
  const rule = "verdict-depends-on-disputed-measurement";
  const messages = findings.filter((one) => one.rule === rule).map(({ message }) => inEnglish(message));
  return { model, messages, page: wholeInEnglish(page) };
}

describe("measurements in a unit of which sizes differ", () => {
  test("are read with each of them, as if it were the only one, and what turns is told", async () => {
    const { messages, page } = await read(files(spans));
    expect(messages).toEqual([
      "“the scaling number” supports “The room is twice the chest”, but with each span of the measurements read as 22 cm it is inconclusive.",
    ]);
    const tried = page.turns?.tried ?? [];
    expect(tried.map(({ text }) => text)).toEqual([
      "each span of the measurements read as 22 cm (Delver 1902)",
    ]);
    const alone = await read(files({ span: { ...spans["long-span"], also: [] } }));
    const k = alone.page.numbers.find(({ name }) => name === "k");
    expect(tried[0]?.numbers).toEqual([{ name: "k", value: `${k?.value} (${k?.interval})` }]);
  });

  test("are rounded in it too: to the nearest 2 of a larger unit is less sure", async () => {
    const { model } = await read(files(spans));
    const [record] = model.graph.list("measurements");
    const nearest = parseQuantity("2 span", model.graph.settings.quantities);
    if (record === undefined || !("ok" in nearest)) throw new Error("no measurement");
    const rounded = { ...record, values: { ...record.values, "to-nearest": nearest.ok } };
    const size = (metres: number) => ({
      name: "span",
      kind: "length" as const,
      size: metres,
      u: 0,
      source: "",
    });
    for (const metres of [0.2, 0.22, 0.3]) {
      const choices = [{ derivation: "scale", written: { unit: "span", as: size(metres) } }];
      const { quantity } = measuredOf(rereadIn(rounded, model.graph, choices), model.graph);
      expect(quantity.value).toBeCloseTo(10 * metres, 12);
      expect(quantity.digit).toBeCloseTo(2 * metres, 12);
      expect(quantity.u).toBeCloseTo((2 * metres) / Math.sqrt(12), 12);
    }
  });

  test("are not tried where none is written in it, nor with what a withheld source says", async () => {
    const plain = await read(files(spans, {}, ["200.0 cm", "240.0 cm", "160.0 cm"]));
    expect(plain.page.turns?.tried).toEqual([]);
    const withheld = await read(files(spans, { withhold: ["brandt-1902"] }));
    expect(withheld.page.turns?.tried).toEqual([]);
    expect(withheld.messages).toEqual([]);
  });
});
