import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { comingTable, isTable } from "../../../src/show/desk/import/table/coming.ts";
import type { TableAsked } from "../../../src/show/desk/import/table/asked.ts";
import { tablePage } from "../../../src/show/desk/import/table/told/page.ts";
import { tableTold } from "../../../src/show/desk/import/table/told/told.ts";
import type { TableTold } from "../../../src/show/desk/import/table/told/told.ts";
import { ownTime } from "../base/processor.ts";

type Files = ReadonlyMap<string, string>;

const corpus = (more: Readonly<Record<string, string>> = {}): Files =>
  new Map(
    Object.entries({
      "corpus.yaml":
        "title: Pits\nbibliography: [sources.bib]\nwithhold: [sealed]\ndimensions:\n  diameter: { kind: length }\n  depth: { kind: length }\n",
      "sources.bib": "@book{vane-1968, author = {Vane, I.}, title = {Pits}, year = 1968}\n",
      "records.yaml": `artefacts:
  - { id: pit-1, name: The deep pit, material: chalk, coordinates: 51.2 N, numbers: { inventory: K-17 } }
  - { id: pit-2, name: The wide pit, numbers: { inventory: K-18 } }
  - { id: sealed, name: Umbrapit, numbers: { inventory: Q-99 } }
measurements:
  - { of: pit-1, dimension: diameter, value: 42 ± 0.5 cm, from: vane-1968 }
`,
      ...more,
    }),
  );

function modelOf(files: Files): Model {
  const { model } = build(
    [...files].map(([path, text]) => ({ path, text })),
    [],
    emptyMemo(new Map()),
    {},
  );
  if (!model) throw new Error("expected a corpus that can be read");
  return model;
}

const plain: TableAsked = {
  list: null,
  meanings: new Map(),
  decimal: "point",
  all: {},
  as: "records",
  choices: new Map(),
  duplicates: "leave",
};

function told(files: Files, text: string, asked: Partial<TableAsked> = {}, path = "store.csv"): TableTold {
  return tableTold(modelOf(files).graph, comingTable({ path, text }), { ...plain, ...asked }, files);
}

/** The files of a corpus after a table came in, in which the reader finds no new error. */
function after(files: Files, { changes, problem }: TableTold): Files {
  expect(problem).toBe(null);
  const made = new Map(files);
  for (const { file, edits } of changes) made.set(file, edited(files.get(file) ?? "", edits));
  const errors = modelOf(made).graph.findings.filter(({ level }) => level === "error");
  expect(errors.map(({ message }) => inEnglish(message))).toEqual([]);
  return made;
}

/** The measurements of a corpus in few words, in the order of the letters. */
const measured = (files: Files): readonly string[] =>
  modelOf(files)
    .graph.list("measurements")
    .map(({ values: { of, dimension, value, from } }) =>
      [of, dimension, value.text, from?.map(({ key }) => key).join("; ") ?? ""].join(" | "),
    )
    .toSorted();

const why = ({ failures }: TableTold): readonly string[] =>
  failures.map((one) => `${one.line} ${one.head ?? "-"}: ${one.why.map(inEnglish).join(" ")}`);

const wide =
  "Inv. no.;Diameter (cm);±;Depth (cm);weather;Source\r\n" +
  'K17;42,5;0,5;3,25;"rain; later";Vane 1968, p. 3\r\n' +
  "k 18;;;12;sun;vane-1968\r\n" +
  "K-19;1;;2;;\r\n" +
  "K17;42;0,5;-;;vane-1968\r\n";

describe("a table with a column for each dimension", () => {
  const all = [
    "pit-1 | depth | 3.25 cm | vane-1968",
    "pit-1 | diameter | 42 ± 0.5 cm | vane-1968",
    "pit-1 | diameter | 42.5 ± 0.5 cm | vane-1968",
    "pit-2 | depth | 12 cm | vane-1968",
  ];

  test("becomes one measurement for each figure, as records in the hand of the file", () => {
    const files = corpus();
    const made = told(files, wide, { decimal: "comma" });
    const now = after(files, made);
    expect(measured(now)).toEqual(all);
    expect(now.get("records.yaml")).toBe(
      `${files.get("records.yaml")}${[
        "of: pit-1, dimension: diameter, value: 42.5 ± 0.5 cm, from: vane-1968 p. 3, x-weather: rain; later",
        "of: pit-1, dimension: depth, value: 3.25 cm, from: vane-1968 p. 3, x-weather: rain; later",
        "of: pit-2, dimension: depth, value: 12 cm, from: vane-1968, x-weather: sun",
      ]
        .map((one) => `  - { ${one} }\n`)
        .join("")}`,
    );
  });

  test("or a long table of the corpus, which says the same", () => {
    const files = corpus();
    const now = after(files, told(files, wide, { decimal: "comma", as: "table" }));
    expect(measured(now)).toEqual(all);
    expect(now.get("corpus.yaml")).toContain("measurement-tables: [store.csv]");
    expect(now.get("store.csv")).toBe(
      "of,dimension,value,uncertainty,unit,from,x-weather\n" +
        "pit-1,diameter,42.5,0.5,cm,vane-1968 p. 3,rain; later\n" +
        "pit-1,depth,3.25,,cm,vane-1968 p. 3,rain; later\n" +
        "pit-2,depth,12,,cm,vane-1968,sun\n",
    );
    expect(now.get("records.yaml")).toBe(files.get("records.yaml"));
  });

  test("tells what cannot come in, what is there already, and what has no figure", () => {
    const made = told(corpus(), wide, { decimal: "comma" });
    expect(why(made)).toEqual(["4 -: Unknown artefact `K-19`, expected `pit-1` or `pit-2`"]);
    expect(made.there.map(({ line }) => line)).toEqual([5]);
    expect(made.without).toBe(2);
    expect(made.commas).toBe(4);
  });

  test("the same figure between other landmarks is another thing; one that has its ± as 2 s is the same", () => {
    const files = corpus({
      "more.yaml":
        "measurements:\n  - { of: pit-1, dimension: depth, value: 3 ± 0.2 m, between: rim to floor, from: vane-1968, coverage: 2 }\n",
    });
    const rows =
      "pit-1,depth,3 ± 0.2 m,rim to floor,vane-1968,2\npit-1,depth,3 ± 0.2 m,rim to step,vane-1968,2\n";
    const made = told(files, `of,dimension,value,between,from,coverage\n${rows}`);
    expect(made.there.map(({ line }) => line)).toEqual([2]);
    expect(made.fresh).toHaveLength(1);
  });

  test("readings that agree scatter by 0, which makes no figure exact", () => {
    const made = told(corpus(), "of,depth (cm),± depth\nK17,12.5,0\nK18,12.5,0.2\n");
    expect(made.fresh.map(({ value }) => value)).toEqual(["12.5 cm", "12.5 ± 0.2 cm"]);
  });

  test("a comma is not guessed to be a decimal sign", () => {
    const made = told(corpus(), wide);
    expect(made.fresh.map(({ value }) => value)).toEqual(["12 cm"]);
    expect(why(made).filter((one) => one.startsWith("2 "))).toHaveLength(2);
  });
});

describe("a long table that stays one", () => {
  const long =
    "\uFEFFObjekt\tWhat was measured\tValue (cm)\tmy own\r\n" +
    'K17\tDiameter\t41.5\t"kept ""so"""\r\n' +
    "\r\n" +
    "The wide pit\tdepth\tabout 3 m\t\r\n" +
    "nobody\tdepth\t3\t\r\n";

  test("has the names of fields at its head and ids where it names things, all else to the byte", () => {
    const files = corpus();
    const made = told(files, long, { as: "table", all: { from: "vane-1968 p. 4" } }, "Store 1998.tsv");
    expect(made.columns.map(({ text }) => text)).toEqual(["of", "dimension", "value in cm", "x-my-own"]);
    const now = after(files, made);
    expect(now.get("Store-1998.csv")).toBe(
      "\uFEFFof\tdimension\tvalue\tx-my-own\tunit\tfrom\r\n" +
        'pit-1\tDiameter\t41.5\t"kept ""so"""\tcm\tvane-1968 p. 4\r\n' +
        "\r\n" +
        "pit-2\tdepth\tabout 3 m\t\t\tvane-1968 p. 4\r\n",
    );
    expect(measured(now)).toEqual([
      "pit-1 | Diameter | 41.5 cm | vane-1968",
      "pit-1 | diameter | 42 ± 0.5 cm | vane-1968",
      "pit-2 | depth | about 3 m | vane-1968",
    ]);
  });

  test("is written with the corpus's decimal sign", () => {
    const settings = `${corpus().get("corpus.yaml")}decimal: comma\n`;
    const files = corpus({ "corpus.yaml": settings });
    for (const text of [long, wide]) {
      const given = { as: "table", decimal: text === wide ? "comma" : "point" } as const;
      const table = told(files, text, given);
      const records = told(files, text, { ...given, as: "records" });
      const values = (one: TableTold): readonly string[] =>
        modelOf(after(files, one))
          .graph.list("measurements")
          .map(({ values: { of, value } }) => `${of} ${value.value} ${value.u}`)
          .toSorted();
      expect(values(table)).toEqual(values(records));
    }
  });
});

describe("a table of artefacts", () => {
  const things =
    "Inv. no.,Name,Material,Teil von,found-at\n" +
    "K 17,The deep pit,flint,,north\n" +
    "K-20,A slot,chalk,A hole,\n" +
    "K-21,A hole,chalk,K-18,\n" +
    "K-21,Another,chalk,,\n" +
    "Q99,Shown never,gold,,\n";
  const asked = { list: "artefacts" } as const;

  test("adds what is new, parts named by their whole, and leaves what is there by its number", () => {
    const files = corpus();
    const made = told(files, things, asked);
    const now = after(files, made);
    const added = modelOf(now).graph.list("artefacts").slice(3);
    expect(added.map(({ id, values }) => [id, values["part-of"], values.numbers?.get("inventory")])).toEqual([
      ["pit-2/a-hole/a-slot", "pit-2/a-hole", "K-20"],
      ["pit-2/a-hole", "pit-2", "K-21"],
    ]);
    expect(now.get("records.yaml")).toContain("  - { id: pit-1, name: The deep pit, material: chalk,");
    expect(made.twins.map(({ id, why: by, does }) => [id, by, does])).toEqual([["pit-1", "number", "leave"]]);
    expect(why(made)).toEqual(["5 -: Duplicate artefact, expected it once: line 4 is the same"]);
    expect(made.hidden).toEqual([6]);
  });

  test("merges by choice: what is missing, and of what differs only what was taken", () => {
    const files = corpus();
    const lacking = after(files, told(files, things, { ...asked, duplicates: "merge" }));
    const of = (now: Files) => modelOf(now).graph.list("artefacts")[0]?.values;
    expect([of(lacking)?.material, of(lacking)?.["found-at"]]).toEqual(["chalk", "north"]);
    const choices = new Map([[0, { do: "merge", take: ["material"] }]] as const);
    const taken = after(files, told(files, things, { ...asked, choices }));
    expect(of(taken)?.material).toBe("flint");
    expect(of(taken)?.coordinates).toBe("51.2 N");
    const another = after(files, told(files, things, { ...asked, choices: new Map([[0, { do: "add" }]]) }));
    expect(modelOf(another).graph.list("artefacts")).toHaveLength(6);
  });

  test("stays a table, its numbers in a column for each register", () => {
    const files = corpus();
    const now = after(files, told(files, things, { ...asked, as: "table" }, "things.csv"));
    expect(now.get("things.csv")).toBe(
      "id,numbers.inventory,name,material,part-of,found-at\n" +
        "pit-2/a-hole/a-slot,K-20,A slot,chalk,pit-2/a-hole,\n" +
        "pit-2/a-hole,K-21,A hole,chalk,pit-2,\n",
    );
    expect(modelOf(now).graph.records.get("pit-2/a-hole")?.values).toMatchObject({
      numbers: new Map([["inventory", "K-21"]]),
    });
  });
});

test("nothing that is withheld is told, whatever a table says", () => {
  const files = corpus();
  const names = "Inv. no.,Name,Material,coordinates\nQ-99,Umbrapit,gold,1\nK-17,x,y,48.1 N\n";
  for (const [text, list] of [
    [names, "artefacts"],
    ["of,dimension,value\nsealed,diameter,4 cm\nUmbrapit,diameter,4 cm\nQ99,diameter,4 cm\n", "measurements"],
  ] as const) {
    const coming = comingTable({ path: "x.csv", text });
    const chosen = { ...plain, list, meanings: [], choices: [], duplicates: "merge" } as const;
    const { page } = tablePage(modelOf(files).graph, coming, chosen, files, 50);
    const { failures, ...others } = page;
    const rows = failures.shown.map((one) => one.text);
    expect(JSON.stringify([others, rows])).not.toMatch(/Umbra|sealed|Q-99|51\.2/);
    expect(page.fresh.all).toBe(0);
  }
});

test("what is a table is told from what is a bibliography, and from prose", () => {
  const is = (path: string, text: string): boolean => isTable({ path, text });
  expect(is("x.csv", "a")).toBe(true);
  expect(is("pasted text", "a\tb\n1\t2\n")).toBe(true);
  expect(is("pasted text", "@book{a, title = {b}}\n@book{c, title = {d}}\n")).toBe(false);
  expect(is("notes.txt", "No bibliography at all.\nAnd, here, none.\n")).toBe(false);
  expect(is("about.md", "One, two\nThree, four\n")).toBe(false);
});

test("a table that came in is there already a second time, whatever figures it has", () => {
  const figure = fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 0, max: 99 }));
  const rows = fc.array(fc.tuple(fc.constantFrom("K17", "k-18", "pit-1"), figure, fc.boolean()), {
    minLength: 1,
    maxLength: 5,
  });
  fc.assert(
    fc.property(
      rows,
      fc.constantFrom("point", "comma"),
      fc.constantFrom("records", "table"),
      (all, decimal, as) => {
        const sign = decimal === "comma" ? "," : ".";
        const lines = all.map(
          ([of, [whole, part], exact]) =>
            `${of};${whole}${sign}${part};${exact ? "" : `0${sign}5`};vane-1968`,
        );
        const text = ["Inv. no.;Depth (mm);±;Source", ...lines].join("\n");
        const files = corpus();
        const first = told(files, text, { decimal, as });
        expect(first.fresh).toHaveLength(all.length);
        const now = after(files, first);
        const again = told(now, text, { decimal, as });
        expect([again.fresh, again.failures, again.changes]).toEqual([[], [], []]);
        expect(again.there).toHaveLength(all.length);
      },
    ),
    { numRuns: 25 },
  );
});

test("a thousand rows come in quickly, into one file", () => {
  const lines = Array.from({ length: 1000 }, (_, n) => `pit-${1 + (n % 2)},depth,${n + 1}.5 cm,vane-1968`);
  const files = corpus();
  const spent = ownTime();
  const made = told(files, ["of,dimension,value,from", ...lines].join("\n"));
  expect(made.files).toEqual([{ file: "records.yaml", isNew: false, records: 1000 }]);
  expect(spent()).toBeLessThan(10_000);
});
