import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { markedIn, sideOf } from "../../../src/base/text/conflict-marks.ts";
import { withMarks } from "../../../src/base/text/merging/marking.ts";
import type { Versions } from "../../../src/base/text/merging/marking.ts";
import { recordsIn } from "../../../src/read/edit/merge/reading.ts";
import { mergedVersions } from "../../../src/read/edit/merge/versions.ts";
import { mergePage } from "../../../src/show/desk/changes/merging/page.ts";
import { ownIn, ownWritten } from "../../../src/show/desk/changes/merging/told.ts";

const marking = { names: { mine: "HEAD", theirs: "second" }, size: 7 };
const ended = (text: string): string => (text === "" || text.endsWith("\n") ? text : `${text}\n`);

/** Both versions as the marks of a text give them back, their last lines ended. */
function readBack(versions: Versions): { readonly mine: string; readonly theirs: string } | null {
  const marked = markedIn(withMarks(versions, marking));
  return marked && { mine: ended(sideOf(marked, "mine")), theirs: ended(sideOf(marked, "theirs")) };
}

describe("two versions in one text are read back as they were", () => {
  const line = fc.constantFrom(
    "a",
    "  - id: x",
    "",
    "# said",
    "=======",
    "<<<<<<< a",
    "||||||||",
    ">>>>>>> b",
  );
  const text = fc
    .tuple(fc.array(line, { maxLength: 8 }), fc.constantFrom("\n", "\r\n"), fc.boolean())
    .map(
      ([lines, nl, mark]) =>
        `${mark && lines.length > 0 ? "\ufeff" : ""}${lines.map((one) => `${one}${nl}`).join("")}`,
    );

  test("whatever they are, lines that look like marks among them", () => {
    fc.assert(
      fc.property(fc.option(text), text, text, (base, mine, theirs) => {
        fc.pre(mine.replace("\ufeff", "") !== theirs.replace("\ufeff", ""));
        expect(readBack({ base, mine, theirs })).toEqual({ mine, theirs });
      }),
      { numRuns: 400 },
    );
  });

  test("what stood there before is told, in the length of marks that was asked for", () => {
    const versions = { base: "a\nb\nc\n", mine: "a\nx\nc\n", theirs: "a\ny\nc\n" };
    expect(withMarks(versions, { ...marking, size: 9 })).toBe(
      "a\n<<<<<<<<< HEAD\nx\n|||||||||\nb\n=========\ny\n>>>>>>>>> second\nc\n",
    );
    const marked = markedIn(withMarks(versions, { ...marking, size: 9 }));
    expect(marked && sideOf(marked, "base")).toBe(versions.base);
  });
});

interface Claim {
  readonly text: string;
  readonly note: string;
  readonly gone: boolean;
}

const same: Claim = { text: "", note: "", gone: false };
const changes = fc.record({
  text: fc.constantFrom("", "anew", "otherwise"),
  note: fc.constantFrom("", "seen", "read"),
  gone: fc.constantFrom(false, false, false, true),
});

/** A file of claims, each with a comment, as one side has it. */
function typed(side: string, claims: readonly Claim[], added: number, flow: boolean): string {
  const all = claims.flatMap(({ text, note, gone }, n): readonly string[] => {
    if (gone) return [];
    const [said, noted] = [`Claim ${n}${text === "" ? "" : ` ${text}`}`, note === "" ? "" : `${note} ${n}`];
    if (flow) return [`  - { id: c${n}, text: ${said}${noted === "" ? "" : `, note: ${noted}`} }\n`];
    return [`  # of c${n}\n  - id: c${n}\n    text: ${said}\n${noted === "" ? "" : `    note: ${noted}\n`}`];
  });
  const more = Array.from(
    { length: added },
    (_, n) => `  - { id: ${side}-${n}, text: Of ${side}. } # by ${side}\n`,
  );
  return `# Read on Merrow Down.\nclaims:\n${[...all, ...more].join("")}`;
}

describe("a file of records that both sides changed", () => {
  const cases = fc.record({
    mine: fc.array(changes, { minLength: 3, maxLength: 3 }),
    theirs: fc.array(changes, { minLength: 3, maxLength: 3 }),
    added: fc.tuple(fc.nat({ max: 2 }), fc.nat({ max: 2 })),
    flow: fc.boolean(),
  });

  test("is one where no field clashes, else two that are read record by record and differ in those fields alone", () => {
    fc.assert(
      fc.property(cases, ({ mine, theirs, added, flow }) => {
        // What both took out where both put something in may be one record that both renamed: that is asked for.
        const bothTook = mine.some((one, n) => one.gone && theirs[n]?.gone);
        fc.pre(!(bothTook && added[0] > 0 && added[1] > 0));
        // A list without a record has no manner of lines that a comment could come over with.
        fc.pre(![mine, theirs].some((side) => side.every((one) => one.gone)));
        const base = typed("base", [same, same, same], 0, flow);
        const [own, other] = [typed("mine", mine, added[0], flow), typed("theirs", theirs, added[1], flow)];
        const merged = mergedVersions("a.yaml", base, own, other);
        const one = "text" in merged ? merged.text : merged.mine;
        const two = "text" in merged ? merged.text : merged.theirs;
        const clashes = mine.map((a, n): string[] => {
          const b = theirs[n] ?? same;
          const touched = ({ text, note }: Claim): boolean => text !== "" || note !== "";
          if (a.gone || b.gone) return a.gone !== b.gone && touched(a.gone ? b : a) ? ["whole"] : [];
          return (["text", "note"] as const).filter((it) => a[it] !== "" && b[it] !== "" && a[it] !== b[it]);
        });
        expect("text" in merged).toBe(clashes.every((all) => all.length === 0));
        mine.forEach((a, n) => {
          const b = theirs[n] ?? same;
          const [left, right] = [one, two].map(
            (text) => recordsIn("a.yaml", text)?.get(`claims c${n}`)?.fields,
          );
          if (clashes[n]?.includes("whole")) {
            expect([left === undefined, right === undefined]).toEqual([a.gone, b.gone]);
            return;
          }
          if (a.gone || b.gone) return expect([left, right]).toEqual([undefined, undefined]);
          const said = (it: "text" | "note", side: Claim, otherwise: Claim): string =>
            side[it] || otherwise[it];
          for (const [fields, side, otherwise] of [
            [left, a, b],
            [right, b, a],
          ] as const) {
            const text = said("text", side, otherwise);
            expect(fields?.["text"]).toBe(`Claim ${n}${text === "" ? "" : ` ${text}`}`);
            const note = said("note", side, otherwise);
            expect(fields?.["note"]).toBe(note === "" ? undefined : `${note} ${n}`);
          }
        });
        for (const text of [one, two])
          for (const comment of `${own}${other}`.match(/# by .*/gu) ?? []) expect(text).toContain(comment);
        if (!("text" in merged)) expect(readBack(merged)).toEqual({ mine: one, theirs: two });
      }),
      { numRuns: 100 },
    );
  });

  const file = (lines: string): string => `measurements:\n${lines}`;
  const table = (rows: string): string => `id,of,dimension,value,unit\n${rows}`;

  test("keeps a comment behind a value, or leaves the lines apart", () => {
    const base = file("  - { of: ring, dimension: gap, value: 5 m }\n");
    const [mine, theirs] = [
      base.replace("5 m }", "5 m, n: 3 }"),
      base.replace("5 m }", "5 m, basis: cast } # by eye"),
    ];
    const merged = mergedVersions("a.yaml", base, mine, theirs);
    expect(JSON.stringify(merged)).toContain("# by eye");
    if (!("text" in merged)) expect(readBack(merged)).toEqual({ mine, theirs });
  });

  test("makes no quantity of one side's value and the other's unit", () => {
    const base = table("m1,ring,gap,5,m\n");
    const merged = mergedVersions("t.csv", base, table("m1,ring,gap,520,m\n"), table("m1,ring,gap,5,ft\n"));
    expect(merged).toEqual({
      base,
      mine: table("m1,ring,gap,520,m\n"),
      theirs: table("m1,ring,gap,5,ft\n"),
    });
    const apart = mergedVersions("t.csv", base, table("m1,ring,gap,520,cm\n"), table("m1,ring,width,5,m\n"));
    expect(apart).toEqual({ text: table("m1,ring,width,520,cm\n") });
  });

  test("takes out what each side took out of records that only their order tells apart", () => {
    const of = (...values: readonly string[]): string =>
      file(values.map((one) => `  - { of: ring, dimension: gap, value: ${one} m }\n`).join(""));
    expect(mergedVersions("a.yaml", of("1", "2", "3"), of("2", "3"), of("1", "2"))).toEqual({
      text: of("2"),
    });
  });

  test("is left in its lines where a version cannot be read", () => {
    const base = "claims:\n  - { id: a, text: One. }\n";
    const merged = mergedVersions(
      "a.yaml",
      base,
      base.replace("One. }", "Two."),
      base.replace("One.", "Three."),
    );
    expect(merged).toEqual({
      base,
      mine: base.replace("One. }", "Two."),
      theirs: base.replace("One.", "Three."),
    });
  });
});

describe("a bibliography that both sides changed is merged entry by entry", () => {
  const bib = (key: string, year: string): string =>
    `@book{${key},\n  title = {The ring},\n  year = {${year}},\n}\n`;
  const ris = (key: string, year: string): string =>
    `TY  - BOOK\nID  - ${key}\nTI  - The ring\nPY  - ${year}\nER  - \n`;
  const csl = (key: string, year: string): string =>
    `{ "id": "${key}", "type": "book", "title": "The ring", "issued": { "date-parts": [[${year}]] } }`;
  const list = (...items: readonly string[]): string => `[\n  ${items.join(",\n  ")}\n]\n`;
  const lines = (...items: readonly string[]): string => items.join("\n");

  test.each([
    ["a.bib", bib, lines],
    ["a.ris", ris, lines],
    ["a.json", csl, list],
  ] as const)("%s: what both add behind the last entry, and what one takes out", (path, entry, all) => {
    const [a, b] = [entry("a", "1901"), entry("b", "1902")];
    const base = all(a, b);
    const [mine, theirs] = [all(a, b, entry("m", "1911")), all(b, entry("t", "1912"))];
    expect(mergedVersions(path, base, mine, theirs)).toEqual({
      text: all(b, entry("t", "1912"), entry("m", "1911")),
    });
  });

  test.each([
    ["a.bib", bib, lines],
    ["a.ris", ris, lines],
    ["a.json", csl, list],
  ] as const)(
    "%s: one key that both add with other years stays apart, and no key is there twice",
    (path, entry, all) => {
      const base = all(entry("a", "1901"));
      const with_ = (year: string): string => all(entry("a", "1901"), entry("b", year));
      const merged = mergedVersions(path, base, with_("1911"), with_("1912"));
      expect(merged).toMatchObject({ mine: with_("1911"), theirs: with_("1912") });
      if ("text" in merged) return;
      expect(readBack(merged)).toEqual({ mine: with_("1911"), theirs: with_("1912") });
    },
  );

  test("comments above an entry come with it, and abbreviations stay", () => {
    const base = `@string{merrow = {Merrow}}\n\n${bib("a", "1901")}`;
    const [m, t] = [bib("m", "1911"), `% from the library\n% of the town\n${bib("t", "1912")}`];
    expect(mergedVersions("a.bib", base, `${base}\n${m}`, `${base}\n${t}`)).toEqual({
      text: `${base}\n${t}\n${m}`,
    });
  });
});

describe("own words in place of both readings", () => {
  const settings = "title: The ring\nwithhold: [trench-9]\n";
  const base =
    "claims:\n  - id: a\n    text: One.\n    about: [ring]\nartefacts:\n  - { id: trench-9, name: A }\n  - { id: b, coordinates: 1 N, name: B }\n";
  const versions = mergedVersions(
    "a.yaml",
    base,
    base
      .replace("One.", "Two.")
      .replace("[ring]", "[ring, b]")
      .replace("name: A", "name: C")
      .replace("1 N", "2 N"),
    base
      .replace("One.", "Three.")
      .replace("[ring]", "[ring, c]")
      .replace("name: A", "name: D")
      .replace("1 N", "3 N"),
  );
  const text = "text" in versions ? versions.text : withMarks(versions, marking);
  const asked = (answers: string, own: ReadonlyMap<number, string>, byLines = false) => {
    const texts = new Map([
      ["corpus.yaml", settings],
      ["a.yaml", text],
    ]);
    return mergePage(texts, null, { file: "a.yaml", answers, own: ownWritten(own), byLines })?.marked;
  };

  test("are asked for where a field takes one value that may be shown, and written as they are typed", () => {
    const marked = asked("", new Map());
    expect(
      marked?.clashes.map(({ field, choices, typed }) => [field, choices.includes("own"), typed]),
    ).toEqual([
      ["text", true, "Two."],
      ["about", false, null],
      ["name", false, null],
      ["coordinates", false, null],
    ]);
    const said = "Two: or three, # not four.";
    const made = asked("ottt", new Map([[0, said]]));
    const [edit] = made?.change?.edits ?? [];
    const written = edit ? `${text.slice(0, edit.start)}${edit.text}${text.slice(edit.end)}` : "";
    expect(recordsIn("a.yaml", written)?.get("claims a")?.fields).toEqual({
      id: "a",
      text: said,
      about: ["ring", "c"],
    });
  });

  test("stand in the lines as well, but not where a line is not shown", () => {
    const marked = asked("", new Map(), true);
    expect(marked?.withheld).toBe(true);
    expect(marked?.clashes.every(({ typed }) => typed === null)).toBe(true);
  });

  test.each(["true", "yes", "[true]"])("nor where a thing was found that says so by %s", (word) => {
    const thing = (place: string): string =>
      `artefacts:\n  - id: b\n    name: B\n    found-at: ${place}\n    withhold-location: ${word}\n`;
    const apart = mergedVersions("a.yaml", thing("a mill"), thing("umbra one"), thing("umbra two"));
    const marks = "text" in apart ? "" : withMarks(apart, marking);
    const texts = new Map([
      ["corpus.yaml", "title: The ring\n"],
      ["a.yaml", marks],
    ]);
    for (const byLines of [false, true]) {
      const page = mergePage(texts, null, { file: "a.yaml", answers: "", own: "", byLines });
      expect(page?.marked?.clashes.length).toBe(1);
      expect(JSON.stringify(page?.marked?.clashes)).not.toMatch(/umbra|mill/u);
    }
  });

  test("are read from an address, whatever it says", () => {
    for (const odd of ["", "x", "[1]", "null", '{"a":"b","1":2}', '{"__proto__":"x"}'])
      expect(ownIn(odd).size).toBe(0);
    expect(ownIn(ownWritten(new Map([[3, "a & b = ü"]])))).toEqual(new Map([[3, "a & b = ü"]]));
  });
});
