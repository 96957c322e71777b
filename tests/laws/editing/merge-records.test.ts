import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergedFile } from "../../../src/read/edit/merge/file.ts";
import { clashesIn, mergedRecords } from "../../../src/read/edit/merge/merge.ts";
import type { Answer } from "../../../src/read/edit/merge/merge.ts";
import { recordsIn } from "../../../src/read/edit/merge/reading.ts";
import { resolvedText } from "../../../src/read/edit/merge/resolve.ts";

interface Claim {
  readonly id: string;
  readonly text: string;
  readonly note?: string;
  readonly about?: readonly string[];
}

/** Claims as a person types them, with a comment above each. */
function typed(claims: readonly Claim[]): string {
  const lines = claims.map(
    ({ id, text, note, about }) =>
      `  # said of ${id}\n  - id: ${id}\n    text: ${text}\n${about ? `    about: [${about.join(", ")}]\n` : ""}${note === undefined ? "" : `    note: ${note}\n`}`,
  );
  return `# Read at Merrow Down.\nclaims:\n${lines.join("")}`;
}

const said = (text: string): readonly unknown[] =>
  [...(recordsIn("a.yaml", text)?.values() ?? [])]
    .map(({ fields }) => JSON.stringify(Object.entries(fields).toSorted(([a], [b]) => (a < b ? -1 : 1))))
    .toSorted();

const side = fc.constantFrom("nobody", "mine", "theirs");
const one = fc.record({
  text: side,
  note: side,
  about: side,
  gone: fc.constantFrom("nobody", "nobody", "mine", "theirs"),
});
const cases = fc.record({
  records: fc.array(one, { minLength: 1, maxLength: 6 }),
  mine: fc.nat({ max: 2 }),
  theirs: fc.nat({ max: 2 }),
});

type Case = typeof cases extends fc.Arbitrary<infer C> ? C : never;

/** The claims as they are once these sides made their changes; a record that a side takes out is changed by nobody else. */
function after({ records, mine, theirs }: Case, ...sides: readonly string[]): readonly Claim[] {
  const kept = records.flatMap(({ text, note, about, gone }, n): readonly Claim[] => {
    if (gone !== "nobody") return sides.includes(gone) ? [] : [{ id: `c${n}`, text: `Claim ${n}.` }];
    return [
      {
        id: `c${n}`,
        text: sides.includes(text) ? `Claim ${n}, said anew.` : `Claim ${n}.`,
        ...(sides.includes(note) ? { note: `seen by ${note}` } : {}),
        ...(sides.includes(about) ? { about: ["ring-a", `post-${n}`] } : {}),
      },
    ];
  });
  const added = (who: string, count: number): readonly Claim[] =>
    sides.includes(who)
      ? Array.from({ length: count }, (_, n) => ({ id: `${who}-${n}`, text: `A claim of ${who}.` }))
      : [];
  return [...kept, ...added("mine", mine), ...added("theirs", theirs)];
}

describe("files are merged record by record", () => {
  test("changes that touch nothing in common give the records with both made", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const merged = mergedFile(
          "a.yaml",
          typed(after(given)),
          typed(after(given, "mine")),
          typed(after(given, "theirs")),
        );
        expect(merged).toHaveProperty("text");
        if (!("text" in merged)) return;
        expect(said(merged.text)).toEqual(said(typed(after(given, "mine", "theirs"))));
      }),
      { numRuns: 120 },
    );
  });

  test("without what both were made from, nothing that either side has is lost", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const [mine, theirs] = [typed(after(given, "mine")), typed(after(given, "theirs"))];
        const [one, two] = [recordsIn("a.yaml", mine), recordsIn("a.yaml", theirs)];
        if (!one || !two) throw new Error("unexpected text, expected records");
        const merges = mergedRecords(null, one, two);
        const answers = new Map(clashesIn(merges).map((name): [string, Answer] => [name, "theirs"]));
        const made = resolvedText({ path: "a.yaml", base: null, mine, theirs }, merges, answers);
        expect(made).toHaveProperty("text");
        if (!("text" in made)) return;
        const after_ = recordsIn("a.yaml", made.text);
        expect([...(after_?.keys() ?? [])].toSorted()).toEqual(
          [...new Set([...one.keys(), ...two.keys()])].toSorted(),
        );
        for (const [key, record] of two) expect(after_?.get(key)?.fields).toMatchObject(record.fields);
        for (const comment of `${mine}${theirs}`.match(/#.*/gu) ?? []) expect(made.text).toContain(comment);
      }),
      { numRuns: 120 },
    );
  });

  const clash = (base: string, mine: string, theirs: string) => {
    const read = [base, mine, theirs].map((text) => recordsIn("a.yaml", text) ?? new Map());
    const [old, own, other] = read;
    return mergedRecords(old ?? null, own ?? new Map(), other ?? new Map());
  };

  test("what both changed clashes, field by field, with all three readings", () => {
    const file = (text: string): string => typed([{ id: "a", text }]);
    const [merge] = clash(file("One."), file("Two."), file("Three."));
    expect(merge?.became).toBe("clash");
    expect(merge?.fields).toEqual([
      { field: "text", became: "clash", base: "One.", mine: "Two.", theirs: "Three.", canBeBoth: false },
    ]);
  });

  test("a record that one side took out and the other changed clashes as a whole", () => {
    const [kept] = [{ id: "b", text: "Stays." }];
    const merges = clash(
      typed([{ id: "a", text: "One." }, kept]),
      typed([kept]),
      typed([{ id: "a", text: "Two." }, kept]),
    );
    expect(clashesIn(merges)).toEqual(["claims a"]);
  });

  test("lists can both stand; a clash is settled as it is answered, and the rest stays byte for byte", () => {
    const file = (about: readonly string[], text: string): string =>
      `${typed([{ id: "a", text, about }])}    # kept\nx-own: "as it is"   # too\n`;
    const [base, mine, theirs] = [
      file(["ring-a"], "One."),
      file(["ring-a", "post-1"], "One."),
      file(["ring-a", "post-2"], "Two."),
    ];
    const merges = clash(base, mine, theirs);
    const [name = ""] = clashesIn(merges);
    expect(clashesIn(merges)).toEqual(["claims a\nabout"]);
    const texts = { path: "a.yaml", base, mine, theirs };
    expect(resolvedText(texts, merges, new Map([[name, "both"]]))).toEqual({
      text: file(["ring-a", "post-1", "post-2"], "Two."),
    });
    expect(resolvedText(texts, merges, new Map([[name, "theirs"]]))).toEqual({
      text: file(["ring-a", "post-2"], "Two."),
    });
  });

  test("a record comes over in its own lines, with its comments and its quotes", () => {
    const base = 'claims:\n  - { id: a, text: "One." }\n';
    const mine = 'claims:\n  - { id: a, text: "One." }\n  - { id: m, text: Mine. }\n';
    const theirs = `${base}  # Seen twice.\n  - id: t\n    text: 'Theirs: a colon'   # sic\n    # further in\n`;
    expect(mergedFile("a.yaml", base, mine, theirs)).toEqual({
      text: `claims:\n  - { id: a, text: "One." }\n  # Seen twice.\n  - id: t\n    text: 'Theirs: a colon'   # sic\n    # further in\n  - { id: m, text: Mine. }\n`,
    });
  });

  test("so do the settings, and the rows of a table", () => {
    const settings = (title: string, costs: string): string =>
      `format: 1\ntitle: ${title}\ncosts-in: ${costs}\n`;
    expect(
      mergedFile("corpus.yaml", settings("A", "days"), settings("B", "days"), settings("A", "weeks")),
    ).toEqual({ text: settings("B", "weeks") });
    const table = (rows: readonly string[]): string => `id,of,dimension,value\n${rows.join("\n")}\n`;
    const [a, b] = ["m1,ring-a,gap,1.62 m", "m2,ring-a,gap,1.70 m"];
    const merged = mergedFile(
      "t.csv",
      table([a, b]),
      table(["m1,ring-a,gap,1.63 m", b]),
      table([a, b, "m3,ring-a,gap,1 m"]),
    );
    expect(merged).toEqual({ text: table(["m1,ring-a,gap,1.63 m", b, "m3,ring-a,gap,1 m"]) });
  });
});
