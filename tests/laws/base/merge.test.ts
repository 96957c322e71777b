import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergedText, mergePieces } from "../../../src/base/text/merging/merge.ts";

const line = fc.constantFrom("a", "b", "c", "  - id: x", "", "# said", "ring", "=======");
const end = fc.constantFrom("\n", "\r\n");
const lines = fc.array(line, { maxLength: 14 });
const text = fc
  .tuple(lines, end, fc.boolean(), fc.boolean())
  .map(([all, nl, last, mark]) => `${mark ? "\ufeff" : ""}${all.join(nl)}${last ? nl : ""}`);

/** A text's lines without what is only its manner. */
const linesOf = (whole: string): readonly string[] =>
  whole
    .replace(/^\ufeff/u, "")
    .split(/\r?\n/u)
    .filter((one) => one !== "");

describe("texts are merged line by line", () => {
  test("a text that one side left alone becomes the other side's, to the byte", () => {
    fc.assert(
      fc.property(text, text, (base, made) => {
        fc.pre(base !== "");
        expect(mergedText(base, base, made)).toEqual({ text: made });
        expect(mergedText(base, made, base)).toEqual({ text: made });
      }),
      {
        numRuns: 2000,
        examples: [
          ["a\nb\n", ""],
          ["a", "a\n"],
          ["\ufeffa\r\n", "a\nb"],
          ["a\r\nb\n", "a\nb\r\n"],
        ],
      },
    );
  });

  test("the same change on both sides is made once", () => {
    fc.assert(
      fc.property(text, text, (base, made) => {
        expect(mergedText(base, made, made)).toEqual({ text: made });
      }),
      { numRuns: 1000 },
    );
  });

  test("it is all one which side is which", () => {
    fc.assert(
      fc.property(text, text, text, (base, mine, theirs) => {
        const one = mergedText(base, mine, theirs);
        const two = mergedText(base, theirs, mine);
        if ("text" in one) expect(two).toEqual(one);
        else {
          expect("conflicts" in two).toBe(true);
          if (!("conflicts" in two)) return;
          expect(two.conflicts.map((it) => ({ ...it, mine: it.theirs, theirs: it.mine }))).toEqual(
            one.conflicts,
          );
        }
      }),
      { numRuns: 3000 },
    );
  });

  test("no line that a side put in is lost", () => {
    fc.assert(
      fc.property(text, text, text, (base, mine, theirs) => {
        const pieces = mergePieces(base, mine, theirs);
        const kept = pieces.flatMap((one) =>
          linesOf(one.is === "agreed" ? one.text : `${one.mine}\n${one.theirs}`),
        );
        const old = linesOf(base);
        for (const side of [mine, theirs]) {
          const own = linesOf(side);
          const count = (all: readonly string[], put: string): number =>
            all.filter((it) => it === put).length;
          for (const put of new Set(own))
            if (!old.includes(put)) expect(count(kept, put)).toBeGreaterThanOrEqual(count(own, put));
        }
      }),
      { numRuns: 3000 },
    );
  });

  test("changes of different lines give the text with both made", () => {
    const numbered = fc
      .integer({ min: 2, max: 20 })
      .chain((n) =>
        fc.tuple(
          fc.constant(Array.from({ length: n }, (_, place) => `line ${place}`)),
          fc.array(fc.constantFrom("mine", "theirs", "nobody"), { minLength: n, maxLength: n }),
          end,
        ),
      );
    fc.assert(
      fc.property(numbered, ([all, who, nl]) => {
        const with_ = (...sides: readonly string[]): string =>
          all.map((one, place) => (sides.includes(who[place] ?? "") ? `${one}, changed` : one)).join(nl) + nl;
        expect(mergedText(with_(), with_("mine"), with_("theirs"))).toEqual({
          text: with_("mine", "theirs"),
        });
      }),
      { numRuns: 1000 },
    );
  });

  test("changes of one line clash, with its number and all three readings", () => {
    expect(mergedText("a\nb\nc\n", "a\nmine\nc\n", "a\ntheirs\nc\n")).toEqual({
      conflicts: [{ line: 2, base: "b\n", mine: "mine\n", theirs: "theirs\n" }],
    });
  });

  test("line ends and a byte-order mark that one side changed are changed throughout", () => {
    expect(mergedText("a\nb\nc\n", "a\r\nb\r\nc\r\n", "a\nB\nc\n")).toEqual({ text: "a\r\nB\r\nc\r\n" });
    expect(mergedText("a\nb\n", "\ufeffa\nb\n", "A\nb\n")).toEqual({ text: "\ufeffA\nb\n" });
    expect(mergedText("a\nb", "a\nb\nc", "A\nb")).toEqual({ text: "A\nb\nc" });
    expect(mergedText("a\nb", "a\nb\n", "a\nb\nc")).toEqual({ text: "a\nb\nc\n" });
  });

  test("lines put in beside lines that went clash, unless that is asked for", () => {
    const [base, mine, theirs] = ["a\nb\nc\n", "a\nc\n", "a\nb\nof b\nc\n"] as const;
    expect(mergedText(base, mine, theirs)).toHaveProperty("conflicts");
    const pieces = mergePieces(base, mine, theirs, true);
    expect(pieces.map((one) => (one.is === "agreed" ? one.text : "!")).join("")).toBe("a\nof b\nc\n");
  });

  test("nothing at all merges with nothing", () => {
    expect(mergedText("", "", "")).toEqual({ text: "" });
    expect(mergedText("", "a\n", "")).toEqual({ text: "a\n" });
  });
});
