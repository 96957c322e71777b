import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { parseQuantity } from "../../../src/base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../src/base/quantity/quantity-text.ts";
import { conflictingMeasurements } from "../../../src/judge/rules/measurements/conflicting-measurements.ts";
import { ownWritten } from "../../../src/read/edit/head.ts";
import {
  cellAt,
  emptyGrid,
  filledDown,
  withTexts,
  withoutRows,
  withRows,
} from "../../../src/show/desk/grid/draft.ts";
import type { GridDraft } from "../../../src/show/desk/grid/draft.ts";
import { commonOf, figureWith, pointed } from "../../../src/show/desk/grid/figure.ts";
import { landed, landingOf, landsAtOnce } from "../../../src/show/desk/grid/landing.ts";
import { gridPage } from "../../../src/show/desk/grid/page.ts";
import { everyRead, rowsRead } from "../../../src/show/desk/grid/read.ts";
import { thingsIn } from "../../../src/show/desk/grid/said.ts";
import { recordedOf } from "../../../src/show/desk/grid/there.ts";
import { shownFindings } from "../../../src/show/withhold.ts";
import { bowls, modelOf, savedIn, weighedIn } from "./grid-cases.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";

const { graph } = modelOf(bowls);
const context: QuantityContext = graph.settings.quantities;

/** A grid with texts from the first cell on, what holds for every row besides. */
function gridOf(every: Readonly<Record<string, string>>, lines: readonly (readonly string[])[]): GridDraft {
  const begun = emptyGrid(Object.entries(every));
  return withTexts(begun, { row: 0, column: "of" }, lines);
}

describe("figures that come bare", () => {
  const figure = fc
    .tuple(
      fc.integer({ min: 1, max: 9999 }),
      fc.constantFrom("", "about ", "≥ ", "< "),
      fc.constantFrom("", "-20000", " ± 3"),
    )
    .filter(([, ahead, behind]) => ahead === "" || behind === "")
    .map(([n, ahead, behind]) => `${ahead}${n / 10}${behind}`);

  test("are read as if the unit of their column stood behind them", () => {
    fc.assert(
      fc.property(figure, fc.constantFrom("cm", "mm", "inch", "foot"), (bare, unit) => {
        const written = figureWith(bare, { unit, u: null }, context);
        expect(written).toBe(`${bare} ${unit}`);
        const read = parseQuantity(written, context);
        expect("ok" in read && read.ok.kind).toBe("length");
        expect(figureWith(written, { unit: "m", u: null }, context)).toBe(written);
      }),
      { numRuns: 60 },
    );
  });

  test("have the uncertainty of their column where they say none themselves", () => {
    const common = commonOf("cm ± 0.1", context);
    expect(common).toEqual({ unit: "cm", u: "0.1" });
    if ("code" in common) throw new Error("unread");
    expect(figureWith("18.2", common, context)).toBe("18.2 ± 0.1 cm");
    expect(figureWith("18.2 ± 0.4", common, context)).toBe("18.2 ± 0.4 cm");
    expect(figureWith("42–45", common, context)).toBe("42–45 cm");
    expect(figureWith("182 mm", common, context)).toBe("182 mm ± 0.1 cm");
    expect(figureWith("3 kg", common, context)).toBe("3 kg");
    expect(figureWith("17", common, context, "count")).toBe("17");
    expect(figureWith("18.2", { unit: "cm", u: "1 mm (2 s)" }, context)).toBe("18.2 cm ± 1 mm (2 s)");
    expect(figureWith("18.2", { unit: "cm", u: "0.1 (2 s)" }, context)).toBe("18.2 ± 0.1 cm (2 s)");
    expect(figureWith("18,2", common, context)).toBe("18,2");
    // A pure number has a bare ± of its own column, and none in centimetres.
    expect(figureWith("1.74", { unit: null, u: "0.02" }, context, "number")).toBe("1.74 ± 0.02");
    expect(figureWith("1.74", common, context, "number")).toBe("1.74");
    expect(figureWith("17", { unit: null, u: "1 mm" }, context)).toBe("17");
    // Readings that all agree scatter by 0, and are still no better than their last digit.
    expect(figureWith("18.2", { unit: "cm", u: "0" }, context)).toBe("18.2 cm");
    expect(figureWith("18.2", { unit: "cm", u: "0.0 mm (2 s)" }, context)).toBe("18.2 cm");
    // A share is no uncertainty that files have: it is told, not passed over.
    expect("ok" in parseQuantity(figureWith("18.2 cm", { unit: null, u: "1 %" }, context), context)).toBe(
      false,
    );
    expect(commonOf("cubits of nowhere", context)).toMatchObject({ code: "unknown-unit" });
  });

  test("with a decimal comma say the same as with a point", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), fc.integer({ min: 0, max: 3 }), (n, places) => {
        const plain = (n / 10 ** places).toFixed(places);
        const [whole = "", part] = plain.split(".");
        const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, ".") + (part === undefined ? "" : `,${part}`);
        expect(pointed(`${grouped} mm`, context)).toBe(`${plain} mm`);
        expect(pointed(`c. ${plain.replace(".", ",")} cm`, context)).toBe(`c. ${plain} cm`);
      }),
      { numRuns: 80 },
    );
  });
});

describe("rows", () => {
  test("name their thing by id, by name and by the number of any register", () => {
    const draft = gridOf({ dimension: "rim diameter", value: "cm" }, [
      ["bowl-1", "", "18.2"],
      ["the red bowl", "", "18.2"],
      ["SR 17", "", "18.2"],
      ["88/4", "", "18.2"],
    ]);
    expect(rowsRead(graph, draft).map(({ read }) => read.of?.id)).toEqual(Array(4).fill("bowl-1"));
    const [several, none] = rowsRead(graph, gridOf({}, [["The grey bowl"], ["SR-170"]]));
    expect(several?.read.troubles[0]?.offered).toEqual(["bowl-2", "bowl-3"]);
    expect(none?.read).toMatchObject({ unmet: true, of: null });
    expect(none?.read.troubles[0]?.offered).toContain("bowl-1");
  });

  test("tell what is wrong with a figure, and offer what it may be", () => {
    const told = (value: string) =>
      rowsRead(graph, gridOf({}, [["bowl-1", "Randdurchmesser", value]]))[0]?.read.troubles ?? [];
    expect(told("18,2 cm")).toMatchObject([{ column: "value", offered: ["18.2 cm"] }]);
    expect(told("1,200 mm")).toMatchObject([{ column: "value", offered: ["1200 mm", "1.200 mm"] }]);
    expect(told("18.2 inchs of")[0]?.offered.length ?? 0).toBe(0);
    expect(told("18.2 fot")[0]?.offered).toContain("18.2 ft");
    expect(
      told("3 kg")
        .map(({ message }) => inEnglish(message))
        .join(),
    ).toContain("expected a length");
    expect(told("18.2 cm")).toEqual([]);
    expect(inEnglish(everyRead(graph, gridOf({ value: "fot" }, []))[0]?.message ?? "")).toContain(
      "Unknown unit",
    );
  });

  test("name a source by its key or as it is cited, and the place in it", () => {
    const from = (cells: Readonly<Record<string, string>>) =>
      rowsRead(graph, gridOf({ ...cells, value: "cm" }, [["bowl-1", "depth", "7"]]))[0]?.said.values["from"];
    expect(from({ from: "reed-2001" })).toBe("reed-2001");
    expect(from({ from: "Reed 2001", at: "p. 4" })).toBe("reed-2001 p. 4");
    expect(from({ from: "reed-2001 p. 4", at: "fig. 2" })).toBe("reed-2001 p. 4, fig. 2");
    expect(from({ from: "reed-2001 p. 4; hale-1990 p. 9" })).toEqual(["reed-2001 p. 4", "hale-1990 p. 9"]);
  });

  test("differ from what is recorded, and enter a derivation, as the corpus says once they are saved", () => {
    const figures = fc.record({
      thing: fc.constantFrom("bowl-1", "bowl-2", "bowl-3"),
      tenths: fc.integer({ min: 175, max: 215 }),
      state: fc.constantFrom("", "preserved", "reconstructed"),
      between: fc.constantFrom("", "at the lip"),
    });
    const twice = { thing: "bowl-1", tenths: 175, state: "reconstructed", between: "" };
    fc.assert(
      fc.property(fc.array(figures, { minLength: 1, maxLength: 5 }), (rows) => {
        const begun = gridOf({ from: "reed-2001", value: "cm", between: "" }, []);
        const draft = withTexts(
          { ...begun, columns: ["of", "dimension", "value", "state", "between", "from"] },
          { row: 0, column: "of" },
          rows.map((one) => [one.thing, "rim diameter", String(one.tenths / 10), one.state, one.between]),
        );
        const weighed = weighedIn(bowls, draft);
        const { files } = savedIn(bowls, draft);
        const model = modelOf(files);
        const own = model.graph.list("measurements").filter(({ file }) => file === "readings/reed-2001.yaml");
        expect(own.length).toBe(rows.length);
        const view = { ...model, plugins, memo: new Map(), footings: new Map(), restsOn: new Map() };
        const found = shownFindings(model.graph, conflictingMeasurements.find(view).findings);
        const { derivations } = model;
        const rims = derivations.byId.get("rims");
        own.forEach((record, place) => {
          const told = weighed[place];
          const about = found.map((one) => one.about).filter((ids) => ids.includes(record.id));
          expect(told !== undefined && told.against.length > 0).toBe(about.length > 0);
          for (const { id } of told?.against ?? []) if (id !== null) expect(about.flat()).toContain(id);
          const taker = told?.takers.find(({ id }) => id === "rims");
          const merged = rims?.merged.flat() ?? [];
          const enters = rims?.used.includes(record.id) === true || merged.includes(record.id);
          expect(taker?.leftOut === null).toBe(enters);
          if (!enters) expect(rims?.leftOut.find(({ id }) => id === record.id)?.why).toEqual(taker?.leftOut);
        });
      }),
      // Two rows that say the same are two rows.
      { numRuns: 30, examples: [[[twice, twice]]] },
    );
  });

  test("tell the same figure of the same source, and a dimension of two kinds among them", () => {
    const draft = gridOf({ from: "hale-1990" }, [
      ["bowl-1", "rim diameter", "18.2 cm"],
      ["bowl-3", "depth", "7 cm"],
      ["bowl-2", "depth", "7 cm"],
      ["bowl-1", "depth", "7 kg"],
    ]);
    const [twin, depth, , weight] = weighedIn(bowls, draft);
    expect(twin?.twins.map(({ id }) => id)).toEqual(["bowl-1:rim-diameter@hale-1990"]);
    expect(depth?.twins).toEqual([]);
    expect(weight?.troubles.length).toBe(1);
    expect(savedIn(bowls, draft).step.keys).toEqual([1, 2, 3]);
  });
});

describe("saving", () => {
  const written = fc.record({
    thing: fc.constantFrom("bowl-1", "bowl-2", "bowl-3"),
    value: fc.constantFrom("18.2 cm", "18.20 ± 0.4 cm", "42–45 mm", "≥ 7 cm", "about 6 inch", "1 1/2 ft"),
    note: fc.constantFrom("", "worn, and: chipped", "# 4 of them", "- a dash", "قدر"),
    basis: fc.constantFrom("", "autopsy", "drawing"),
  });

  test("writes what was read, one line for each, and is read back as it was", () => {
    fc.assert(
      fc.property(
        fc.array(written, { minLength: 1, maxLength: 6 }),
        fc.constantFrom("hale-1990", "reed-2001"),
        (rows, from) => {
          const begun = {
            ...gridOf({ from }, []),
            columns: ["of", "dimension", "value", "basis", "note", "from"],
          };
          const draft = withTexts(
            begun,
            { row: 0, column: "of" },
            rows.map((one) => [one.thing, "height", one.value, one.basis, one.note]),
          );
          const { files, step } = savedIn(bowls, draft);
          expect(step.keys.length).toBe(rows.length);
          const file = `readings/${from}.yaml`;
          const changed = files.filter(
            ({ path, text }) => text !== bowls.find((one) => one.path === path)?.text,
          );
          expect(changed.map(({ path }) => path)).toEqual([file]);
          const before = bowls.find((one) => one.path === file)?.text ?? "";
          const added = changed[0]?.text.slice(before.length) ?? "";
          expect(changed[0]?.text.startsWith(before)).toBe(true);
          // In one line each, as the others of the list; where there are none, as far as they fit.
          const lines = from === "hale-1990" ? /^  - \{ of: .* \}$/gmu : /^  - (?:\{ of: .* \}|of: .*)$/gmu;
          expect(added.match(lines)?.length).toBe(rows.length);
          expect(added).not.toContain("from:");
          const made = modelOf(files)
            .graph.list("measurements")
            .filter((one) => one.values.dimension === "height");
          const said = rowsRead(graph, draft).map(({ said: { values } }) => ({ ...values, from: undefined }));
          expect(made.map((one) => ({ ...ownWritten(one), from: undefined }))).toEqual(said);
        },
      ),
      { numRuns: 40 },
    );
  });

  test("makes a new artefact of a name where that is chosen, in the same step", () => {
    const draft = gridOf({ from: "reed-2001", value: "cm" }, [
      ["SR-20", "rim diameter", "18.2"],
      ["bowl-1", "rim diameter", "18.2"],
      ["SR-20", "height", "7"],
    ]);
    expect(savedIn(bowls, draft).step.keys).toEqual([2]);
    const { files, step } = savedIn(bowls, { ...draft, fresh: ["SR-20"] });
    expect(step).toMatchObject({ keys: [1, 2, 3], made: ["SR-20"] });
    const model = modelOf(files);
    expect(model.graph.records.get("sr-20")).toMatchObject({ list: "artefacts", values: { name: "SR-20" } });
    const own = model.graph.list("measurements").filter(({ values }) => values.of === "sr-20");
    expect(own.map(({ values }) => values.value.text)).toEqual(["18.2 cm", "7 cm"]);
    expect(model.graph.findings).toEqual(graph.findings);
  });
});

describe("a block of cells", () => {
  const begun = gridOf({ from: "hale-1990" }, []);

  test("with headings makes a row of each figure, in the unit of its heading, with its uncertainty", () => {
    const block = [
      ["Inv. no.", "Rim diameter (cm)", "±", "height [mm]", "Remarks", "Seen by whom"],
      ["SR-17", "18,2", "0,1", "70", "worn", "A"],
      ["SR-18", "", "", "1.071,5", "", "B"],
    ];
    const landing = landingOf(graph, begun, { row: 0, column: "of" }, block);
    expect(landing).toMatchObject({ head: true, decimal: null });
    expect(landsAtOnce(landing)).toBe(false);
    expect(landing.commas).toContainEqual(["18,2", "18.2"]);
    // What has a point alone is told as well, where it would become a thousand times as much.
    const mixed = landingOf(graph, begun, { row: 0, column: "value" }, [["18,2"], ["12.345"], ["12.5"]]);
    expect(mixed.commas).toEqual([
      ["12.345", "12345"],
      ["18,2", "18.2"],
    ]);
    const draft = landed(graph, begun, { ...landing, decimal: "comma" });
    expect(draft.rows.map(({ cells }) => cells)).toEqual([
      { of: "SR-17", dimension: "rim diameter", value: "18.2 ± 0.1 cm", note: "worn" },
      { of: "SR-17", dimension: "height", value: "70 mm", note: "worn" },
      { of: "SR-18", dimension: "height", value: "1071.5 mm" },
    ]);
    expect(draft.columns).toContain("note");
    expect(rowsRead(graph, draft).flatMap(({ read }) => read.troubles)).toEqual([]);
    const typed = landed(graph, begun, { ...landing, decimal: "point" });
    expect(typed.rows[0]?.cells["value"]).toBe("18,2");
  });

  test("without headings lies over the cells from its place on", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.stringMatching(/^[a-z]{0,5}$/), { minLength: 2, maxLength: 2 }), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.integer({ min: 0, max: 3 }),
        (block, row) => {
          const before = gridOf({}, [
            ["a", "b", "c"],
            ["d", "e", "f"],
          ]);
          const at = { row, column: "dimension" };
          const landing = landingOf(graph, before, at, block);
          fc.pre(!landing.head);
          expect(landsAtOnce(landing)).toBe(true);
          const draft = landed(graph, before, landing);
          block.forEach((line, down) =>
            line.forEach((text, on) => {
              const column = draft.columns[1 + on] ?? "";
              expect(cellAt(draft, { row: row + down, column })).toBe(text);
            }),
          );
          expect(cellAt(draft, { row: 0, column: "of" })).toBe("a");
        },
      ),
      { numRuns: 60 },
    );
  });

  test("wider than the grid asks where the rest goes, and loses nothing that is named", () => {
    const place = { row: 0, column: begun.columns.at(-1) ?? "" };
    const landing = landingOf(graph, begun, place, [["p. 4", "more"]]);
    expect(landing.columns.map(({ meaning }) => meaning.is)).toEqual(["field", "nothing"]);
    expect(landsAtOnce(landing)).toBe(false);
    const [at] = landing.columns;
    const chosen = {
      ...landing,
      columns: [
        at,
        { head: "", meaning: { is: "field", field: "note" }, unsure: false },
      ] as typeof landing.columns,
    };
    expect(landed(graph, begun, chosen).rows[0]?.cells).toEqual({ at: "p. 4", note: "more" });
  });
});

test("rows are filled down, put in and taken out, and nothing empty is left at the end", () => {
  const draft = gridOf({}, [
    ["a", "b"],
    ["", "c"],
    ["", ""],
    ["d", ""],
  ]);
  const down = filledDown(draft, [0, 2], ["of", "dimension"]);
  expect(down.rows.map(({ cells }) => [cells["of"], cells["dimension"]])).toEqual([
    ["a", "b"],
    ["a", "b"],
    ["a", "b"],
    ["d", undefined],
  ]);
  expect(withoutRows(draft, 3, 3).rows.length).toBe(2);
  const more = withRows(draft, 1, [{ of: "x" }]);
  expect(more.rows.map(({ cells }) => cells["of"] ?? "")).toEqual(["a", "x", "", "", "d"]);
  expect(new Set(more.rows.map(({ key }) => key)).size).toBe(5);
});

test("nothing that is withheld is named, offered or compared with", () => {
  const draft = gridOf({ from: "reed-2001", value: "cm" }, [
    ["SR-99", "rim diameter", "44"],
    ["Umbrabowl", "rim diameter", "44"],
    ["hidden-bowl", "rim diameter", "18.3"],
    ["bowl-1", "rim diameter", "18.3"],
    ["hidden-bow", "rim diameter", "18.3"],
  ]);
  const told = JSON.stringify([
    rowsRead(graph, draft).map(({ read }) => read),
    weighedIn(bowls, draft),
    recordedOf(graph, ["hidden-bowl", "bowl-1", ...thingsIn(graph, draft)]),
    gridPage(graph, {
      presets: [
        ["of", "hidden-bowl"],
        ["from", "sealed-1950"],
      ],
    }).about,
    landingOf(graph, draft, { row: 0, column: "of" }, [["SR-99", "Umbrabowl"]]),
  ]);
  expect(told).not.toMatch(/Umbrabook|sealed-1950|Umbranumber|hidden-number|Under 1950/);
  // What somebody typed stands in the row; who it is is not told.
  expect(rowsRead(graph, draft).map(({ read }) => read.of?.id ?? null)).toEqual([
    null,
    null,
    null,
    "bowl-1",
    null,
  ]);
  expect(rowsRead(graph, draft)[4]?.read.troubles[0]?.offered).not.toContain("hidden-bowl");
  expect(recordedOf(graph, ["hidden-bowl"])).toEqual([]);
});
