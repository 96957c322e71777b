import { expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { comingTable } from "../../../src/show/desk/import/table/coming.ts";
import type { TableAsked } from "../../../src/show/desk/import/table/asked.ts";
import { tableTold } from "../../../src/show/desk/import/table/told/told.ts";
import type { TableTold } from "../../../src/show/desk/import/table/told/told.ts";

const files: ReadonlyMap<string, string> = new Map(
  Object.entries({
    "corpus.yaml": "title: Pits\nwithhold: [sealed]\ndimensions: { diameter: { kind: length } }\n",
    "records.yaml": `artefacts:
  - { id: pit-1, name: The deep pit, numbers: { inventory: K-17 } }
  - { id: sealed, name: Umbrapit, numbers: { inventory: Q-99 } }
measurements:
  - { of: sealed, dimension: umbraspan, value: 44.4 cm }
`,
  }),
);

function modelOf(all: ReadonlyMap<string, string>): Model {
  const { model, findings } = build(
    [...all].map(([path, text]) => ({ path, text })),
    [],
    emptyMemo(new Map()),
    {},
  );
  if (!model || findings.some(({ level }) => level === "error"))
    throw new Error("expected a corpus that can be read");
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

function told(text: string, asked: Partial<TableAsked> = {}): TableTold {
  return tableTold(
    modelOf(files).graph,
    comingTable({ path: "store.csv", text }),
    { ...plain, ...asked },
    files,
  );
}

function after({ changes }: TableTold): ReadonlyMap<string, string> {
  const next = new Map(files);
  for (const { file, edits } of changes) next.set(file, edited(next.get(file) ?? "", edits));
  return next;
}

const odd = ["__proto__", "constructor", "toString", "prototype", "hasOwnProperty"];

test.each(["measurements", "artefacts"] as const)(
  "names that every object has are headings, registers and cells like others: %s",
  (list) => {
    const head = list === "measurements" ? "of,dimension,value" : "id,name";
    const row = list === "measurements" ? "pit-1,diameter,4 cm" : "pit-2,A pit";
    for (const as of ["records", "table"] as const) {
      const found = told(`${head},${odd.join(",")}\n${row},${odd.join(",")}\n`, { list, as });
      expect(() => modelOf(after(found))).not.toThrow();
      const named = told(
        `of,dimension,value,from,by\n${odd.map((one) => `${one},${one},4 cm,${one},${one}`).join("\n")}\n`,
        { list: "measurements", as },
      );
      expect(named.changes).toEqual([]);
    }
    expect(({} as Record<string, unknown>)["name"]).toBeUndefined();
  },
);

test.each([
  '=HYPERLINK("http://x")',
  "=1+1",
  "+4 cm",
  "@sum",
  "-2+3",
  "\u0007",
  "\u001b[2J",
  "# a",
  "a: b",
  "- x",
  "|",
  ">",
  "*x",
  "&x",
  "!x",
  "\ud800",
  "\u202e",
  "'",
  '"',
])("what a cell says is a text, and never an order to anybody: %j", (cell) => {
  const quoted = `"${cell.replaceAll('"', '""')}"`;
  const found = told(`id,name,material\npit-2,${quoted},${quoted}\n`, { list: "artefacts" });
  const next = modelOf(after(found)).graph;
  const record = next.records.get("pit-2");
  if (found.changes.length > 0) expect(record?.list === "artefacts" && record.values.name).toBe(cell);
  const figures = told(`of,dimension,value\npit-1,diameter,${quoted}\n`, { list: "measurements" });
  expect(() => modelOf(after(figures))).not.toThrow();
});

test("a number, name or id of something withheld leads to nothing, and a dimension of it is a new one", () => {
  const said = (text: string): unknown => {
    const { failures, fresh, there, twins, changes } = told(text, { list: "measurements" });
    return { why: failures.map(({ why }) => JSON.stringify(why)), fresh, there, twins, changes };
  };
  for (const [secret, none] of [
    ["Q-99", "Q-77"],
    ["Umbrapit", "Ultrapit"],
    ["sealed", "healed"],
  ] as const) {
    const [one, other] = [secret, none].map((key) =>
      JSON.stringify(said(`of,dimension,value\n${key},diameter,4 cm\n`)).replaceAll(key, "KEY"),
    );
    expect(one).toBe(other);
  }
  const [one, other] = ["umbraspan", "ultraspan"].map((key) =>
    JSON.stringify(told(`of,${key} (cm)\npit-1,4\n`)).replaceAll(key, "KEY"),
  );
  expect(one).toBe(other);
});

test.each([
  ["\r\n", "\n"],
  ["\r", "\n"],
  ["\n\n\n", "\n"],
])("line ends of any kind, mixed, part rows alike: %j", (some, other) => {
  const found = told(`id,name${some}pit-2,A${other}pit-3,B${some}`, { list: "artefacts" });
  const ids = modelOf(after(found))
    .graph.list("artefacts")
    .map(({ id }) => id);
  expect(ids).toEqual(["pit-1", "sealed", "pit-2", "pit-3"]);
});
