import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writtenOf } from "../../../src/read/edit/written.ts";
import {
  anyValue,
  changed,
  isKept,
  linesOf,
  meant,
  nasty,
  pathsIn,
  recordsIn,
  saidIn,
  tame,
  withPut,
} from "./edits-files.ts";
import { anyField, anyRecord, fieldsSaid, others, ownLines } from "./edits-written.ts";

/** Lines in which two texts of as many lines differ; null where one has more. */
function differing(before: string, after: string): readonly string[] | null {
  const [a, b] = [before.split("\n"), after.split("\n")];
  return a.length === b.length ? a.filter((line, place) => line !== b[place]) : null;
}

describe("a field of a record that gets another value, or is taken out", () => {
  test("touches nothing outside the record's lines, and nothing else says anything else", () => {
    fc.assert(
      fc.property(anyField, fc.option(anyValue, { freq: 6 }), ({ text, record, field }, value) => {
        const change = { is: "field", record: record.node.start, path: [field], value } as const;
        const after = changed("a.yaml", text, change);
        if (after === null) return void expect(text).toContain("&");
        const own = ownLines(text, record);
        expect(after.startsWith(text.slice(0, own.start))).toBe(true);
        expect(after.endsWith(text.slice(own.end))).toBe(true);
        expect(others(after, record)).toEqual(others(text, record));
        const { [field]: _, ...wanted } = fieldsSaid(text, record);
        expect(fieldsSaid(after, record)).toEqual(
          value === null ? wanted : { ...wanted, [field]: meant(value) },
        );
      }),
      { numRuns: 500 },
    );
  });

  test("keeps every line of the record that is not its own, comments and all", () => {
    fc.assert(
      fc.property(anyField, fc.option(anyValue, { freq: 3 }), ({ text, record, field }, value) => {
        const [first] = record.node.entries;
        const own = text.slice(ownLines(text, record).start, ownLines(text, record).end);
        // In brackets a line is not one field's own; an alias stands elsewhere than what it says; of twins both go.
        const twins = own.split(new RegExp(`^ *(?:- )?${field}:`, "m")).length > 2;
        fc.pre(first !== undefined && text[record.node.start] !== "{" && !/: \*\w/.test(text) && !twins);
        const after = changed("a.yaml", text, {
          is: "field",
          record: record.node.start,
          path: [field],
          value,
        });
        if (after === null || !first || !after.startsWith(text.slice(0, first.keyEnd))) return;
        const entry = record.node.entries.find(({ key }) => key === field);
        const before = entry ? text.slice(0, text.lastIndexOf("\n", entry.keyStart) + 1) : text;
        const end = Math.max(entry?.value.end ?? 0, entry?.keyEnd ?? 0);
        const behind = entry ? text.slice(end).replace(/^[^\n]*(?:\n|$)/, "") : "";
        const lines = [...linesOf(before), ...linesOf(behind)].filter((line) => line.trim() !== "");
        expect(isKept(lines, linesOf(after))).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test("changes one line where the old value and the new one each fit into one", () => {
    fc.assert(
      fc.property(anyField, fc.oneof(tame, nasty), ({ text, record, field }, value) => {
        const entry = record.node.entries.find(({ key }) => key === field);
        const { start, end, is } = entry?.value ?? { start: 0, end: 0, is: "list" };
        fc.pre(
          is === "text" &&
            !value.includes("\n") &&
            !text.slice(entry?.keyEnd ?? 0, end).includes("\n") &&
            end > start,
        );
        const after = changed("a.yaml", text, {
          is: "field",
          record: record.node.start,
          path: [field],
          value,
        });
        if (after === null) return void expect(text).toContain("&");
        const same = entry?.value.is === "text" && entry.value.text === value;
        expect(differing(text, after)).toHaveLength(same ? 0 : 1);
      }),
      { numRuns: 400 },
    );
  });

  test("and then the old value again, reads as before, and is the same file where both stand without quotes", () => {
    fc.assert(
      fc.property(anyField, fc.oneof(tame, anyValue), ({ text, record, field }, value) => {
        const entry = record.node.entries.find(({ key }) => key === field);
        fc.pre(entry?.value.is === "text" && entry.value.text !== "");
        // What YAML cut off, at a mark of comments or at a comma in braces, is not said and so cannot be said again.
        if (entry?.value.is !== "text" || /^(?: #|,)\S/.test(text.slice(entry.value.end))) return;
        const change = { is: "field", record: record.node.start, path: [field] } as const;
        const between = changed("a.yaml", text, { ...change, value });
        const after = between && changed("a.yaml", between, { ...change, value: entry.value.text });
        if (between === null || after === null) return void expect(text).toContain("&");
        expect(saidIn(after)).toEqual(saidIn(text));
        const bare = (one: string) =>
          recordsIn(one)
            .find(({ list, place }) => list === record.list && place === record.place)
            ?.node.entries.find(({ key }) => key === field)?.value;
        const [old, put] = [bare(text), bare(between)];
        const alike = [old, put].every(
          (node) => node?.is === "text" && node.plain && node.text.length === node.end - node.start,
        );
        if (alike && !text.includes("*")) expect(after).toBe(text);
      }),
      { numRuns: 400 },
    );
  });

  test("deep inside a record does the same", () => {
    const nested = anyRecord
      .map(({ text, record }) => ({ text, record, paths: pathsIn(record.node) }))
      .filter(({ paths }) => paths.length > 0)
      .chain(({ text, record, paths }) =>
        fc.record({ text: fc.constant(text), record: fc.constant(record), path: fc.constantFrom(...paths) }),
      );
    fc.assert(
      fc.property(nested, fc.option(fc.oneof(nasty, tame), { freq: 4 }), ({ text, record, path }, value) => {
        const after = changed("a.yaml", text, { is: "field", record: record.node.start, path, value });
        if (after === null) return void expect(text).toContain("&");
        const own = ownLines(text, record);
        expect(after.startsWith(text.slice(0, own.start))).toBe(true);
        expect(after.endsWith(text.slice(own.end))).toBe(true);
        expect(others(after, record)).toEqual(others(text, record));
        const wanted = meant(withPut(writtenOf(record.node), path, value)) as ReadonlyMap<string, unknown>;
        expect(fieldsSaid(after, record)).toEqual(Object.fromEntries(wanted));
      }),
      { numRuns: 400 },
    );
  });
});
