import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import {
  anyValue,
  changed,
  commentsIn,
  isKept,
  linesOf,
  meant,
  recordsOf,
  saidIn,
  tame,
  without,
} from "./edits-files.ts";
import { anyRecord, fieldsOf, fieldsSaid, others, ownLines, texts, withRecords } from "./edits-written.ts";

/** A text without the comment lines right at its end, which speak of what follows. */
function withoutCommentsAtEnd(text: string): string {
  const lines = text.split("\n");
  let last = lines.length - 1;
  while (lines[last - 1]?.trimStart().startsWith("#")) last--;
  return lines
    .slice(0, last)
    .map((line) => `${line}\n`)
    .join("");
}

/** A line that may go since its list has no record any more. */
const heads = /^[a-z]+:\s*$/;

/** A file in brackets, or one with a list of records in them: their lines belong to all of its records. */
const isInLine = (text: string): boolean => /^\ufeff?\{|^[a-z]+: \[(?!\])/m.test(text);

const newRecord = fc.constantFrom(...listNames).chain((list) =>
  fc.record({
    list: fc.constant(list),
    records: fc.array(
      fc.dictionary(fc.constantFrom(...fieldsOf(list)), anyValue, { minKeys: 1, maxKeys: 5 }),
      {
        minLength: 1,
        maxLength: 2,
      },
    ),
  }),
);

describe("new records", () => {
  test("only put lines in, but for the line of a list that had none, and read as they were meant", () => {
    fc.assert(
      fc.property(fc.constantFrom(...texts), newRecord, ({ name, text }, { list, records }) => {
        const after = changed("a.yaml", text, { is: "add", list, records });
        if (after === null) throw new Error(name);
        const before = saidIn(text);
        const said = saidIn(after);
        if (!/[^\r]\n/.test(text) && text.includes("\n")) expect(after).not.toMatch(/[^\r]\n/);
        if (!text.includes("\r")) expect(after).not.toContain("\r");
        expect(after.startsWith("\ufeff")).toBe(text.startsWith("\ufeff"));
        expect(after.endsWith("\n")).toBe(text.endsWith("\n") || text.replace("\ufeff", "") === "");
        const had = recordsOf(before.get(list));
        expect(recordsOf(said.get(list))).toEqual([...had, ...records.map((one) => meant(one))]);
        expect(without(said, list)).toEqual(without(before, list));
        if (!isInLine(text))
          expect(
            isKept(
              linesOf(text).filter((line) => !/^[a-z]+: \[\]/.test(line)),
              linesOf(after),
            ),
          ).toBe(true);
      }),
      { numRuns: 250 },
    );
  });

  test("behind a given one stand there", () => {
    fc.assert(
      fc.property(anyRecord, tame, ({ text, record }, note) => {
        const change = {
          is: "add",
          list: record.list,
          records: [{ note }],
          after: record.node.start,
        } as const;
        const after = changed("a.yaml", text, change);
        if (after === null) return void expect(text).toContain("&");
        expect(fieldsSaid(after, { ...record, place: record.place + 1 })).toEqual({ note });
        expect(others(after, { ...record, place: record.place + 1 })).toEqual(saidIn(text));
      }),
      { numRuns: 200 },
    );
  });
});

test.each(withRecords)(
  "every record of $name goes with its own lines, and no other comment is lost",
  ({ text, records }) => {
    for (const record of records) {
      const after = changed("a.yaml", text, { is: "take", record: record.node.start });
      if (after === null) {
        expect(text).toContain("&");
        continue;
      }
      const left = others(text, record);
      expect(recordsOf(saidIn(after).get(record.list))).toEqual(recordsOf(left.get(record.list)));
      expect(without(saidIn(after), record.list)).toEqual(without(left, record.list));
      const own = ownLines(text, record);
      const outside = withoutCommentsAtEnd(text.slice(0, own.start)) + text.slice(own.end);
      expect(commentsIn(after)).toEqual(expect.arrayContaining([...commentsIn(outside)]));
      // Blank lines may go; nothing else outside its lines does.
      if (!isInLine(text))
        expect(
          isKept(
            linesOf(outside).filter((line) => line.trim() !== "" && !heads.test(line)),
            linesOf(after),
          ),
        ).toBe(true);
    }
  },
);
