import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTable } from "../../../src/read/table/csv.ts";
import { changed, handWritten, keepings, nasty, tame, whyNot } from "./edits-files.ts";

const tables = handWritten
  .filter(([name]) => name.endsWith(".csv"))
  .flatMap(([, text]) => keepings.map(([, kept]) => kept(text)));

const rowsOf = (text: string): readonly (readonly string[])[] =>
  readTable({ path: "a.csv", text }).rows.map(({ cells }) => cells.map((cell) => cell.text.trim()));
const headOf = (text: string): readonly string[] =>
  readTable({ path: "a.csv", text }).head.map((cell) => cell.text);
const startsOf = (text: string): readonly number[] =>
  readTable({ path: "a.csv", text }).rows.map(({ span }) => span.start);

/** What the columns of a quantity read as together. */
function quantity(row: ReadonlyMap<string, string>): string {
  const [error, unit] = [row.get("uncertainty") ?? "", row.get("unit") ?? ""];
  return `${row.get("value") ?? ""}${error && ` ± ${error}`}${unit && ` ${unit}`}`;
}

/** A row by the names of its columns, its quantity as one text. */
function said(head: readonly string[], row: readonly string[]): ReadonlyMap<string, string> {
  const cells = new Map(head.map((name, column) => [name, row[column] ?? ""]));
  if (cells.has("value")) cells.set("value", quantity(cells));
  cells.delete("unit");
  cells.delete("uncertainty");
  return new Map([...cells].filter(([, text]) => text !== ""));
}

const quantities = fc.constantFrom(
  "1.7 m",
  "18.2 ± 0.4 cm",
  "18.20 m ± 5 mm",
  "42–45 cm",
  "≥ 240 cm",
  "17",
  "12° 30′",
  "5 ft 4 in",
  "1.74",
);

const anyCell = fc.constantFrom(...tables.filter((text) => rowsOf(text).length > 0)).chain((text) =>
  fc
    .record({
      text: fc.constant(text),
      place: fc.nat({ max: rowsOf(text).length - 1 }),
      field: fc.constantFrom(
        ...new Set(headOf(text).filter((name) => name !== "unit" && name !== "uncertainty")),
      ),
    })
    .chain((one) =>
      fc.record({
        ...mapped(one),
        value: one.field === "value" ? quantities : fc.option(fc.oneof(nasty, tame)),
      }),
    ),
);

function mapped<T extends object>(one: T): { [K in keyof T]: fc.Arbitrary<T[K]> } {
  return Object.fromEntries(Object.entries(one).map(([key, value]) => [key, fc.constant(value)])) as {
    [K in keyof T]: fc.Arbitrary<T[K]>;
  };
}

describe("a table", () => {
  test("of which a field changes: that row alone differs, and reads as it was meant", () => {
    fc.assert(
      fc.property(anyCell, ({ text, place, field, value }) => {
        const record = startsOf(text)[place] ?? -1;
        const after = changed("a.csv", text, { is: "field", record, path: [field], value });
        if (after === null) throw new Error("cannot change");
        const [head, before, now] = [headOf(text), rowsOf(text), rowsOf(after)];
        const wanted = new Map(said(head, before[place] ?? []));
        if (value === null || value.trim() === "") wanted.delete(field);
        else wanted.set(field, value.trim());
        expect(said(head, now[place] ?? [])).toEqual(wanted);
        expect(now.toSpliced(place, 1)).toEqual(before.toSpliced(place, 1));
        expect(after.startsWith(text.slice(0, record))).toBe(true);
        const next = startsOf(text)[place + 1];
        if (next !== undefined) expect(after.endsWith(text.slice(next))).toBe(true);
        else if (/[\r\n]$/.test(text)) expect(after.endsWith(text.slice(-1))).toBe(true);
      }),
      { numRuns: 600 },
    );
  });

  test("that gets a row has one line more, with the line ends of its own", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...tables),
        fc.nat({ max: 9 }),
        tame,
        quantities,
        (text, seed, name, value) => {
          const head = headOf(text);
          const record = Object.fromEntries(
            [
              ["id", name],
              ["of", name],
              ["value", value],
            ].filter(([key = ""]) => head.includes(key)),
          );
          const starts = startsOf(text);
          const place = starts.length === 0 ? undefined : seed % (starts.length + 1);
          const after = place === undefined || place === 0 ? {} : { after: starts[place - 1] ?? 0 };
          const now = changed("a.csv", text, {
            is: "add",
            list: "measurements",
            records: [record],
            ...after,
          });
          if (now === null) throw new Error("cannot change");
          const at = place === undefined || place === 0 ? starts.length : place;
          expect(rowsOf(now).toSpliced(at, 1)).toEqual(rowsOf(text));
          expect(said(head, rowsOf(now)[at] ?? [])).toEqual(new Map(Object.entries(record)));
          expect(/\r?\n$/.test(now)).toBe(/\r?\n$/.test(text));
          expect(now.split("\n").length).toBe(text.split("\n").length + 1);
          if (!text.includes("\n")) return;
          if (!text.includes("\r")) expect(now).not.toContain("\r");
          if (!/[^\r]\n/.test(text)) expect(now).not.toMatch(/[^\r]\n/);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("that loses a row is the rest of itself", () => {
    for (const text of tables) {
      startsOf(text).forEach((record, place) => {
        const now = changed("a.csv", text, { is: "take", record });
        expect(rowsOf(now ?? "")).toEqual(rowsOf(text).toSpliced(place, 1));
        const end = readTable({ path: "a.csv", text }).rows[place]?.span.end ?? 0;
        const rest = text.slice(0, record) + text.slice(end).replace(/^\r?\n/, "");
        expect([rest, rest.replace(/\r?\n$/, "")]).toContain(now);
      });
    }
  });
});

test("a table says which column is missing, and that a cell holds one value", async () => {
  const { textEdits } = await import("../../../src/read/edit/text-edits.ts");
  const file = { path: "posts.csv", text: "id,name\na,A\n" };
  const set = (field: string, value: string | readonly string[]) =>
    textEdits(file, { is: "field", record: 8, path: [field], value });
  expect(whyNot(set("kind", "post-hole"))).toBe(
    "Missing column `kind` in `posts.csv`, expected it in the head line",
  );
  expect(whyNot(set("name", ["A", "B"]))).toContain("expected a single value");
  expect(set("name", ["B"])).toEqual([{ file: "posts.csv", start: 10, end: 11, text: "B" }]);
});
