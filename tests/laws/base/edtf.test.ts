import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { edtfText, edtfYear, parseEdtf } from "../../../src/base/date/edtf.ts";
import { parseYear, yearText } from "../../../src/base/date/year.ts";

type Row = readonly [text: string, low: number | null, high: number | null, marks?: string];

/** Examples of ISO 8601-2:2019 (levels 0 and 1, sets of level 2) and of the format, with the years they cover. */
const dates: readonly Row[] = [
  ["1850", 1850, 1850],
  ["1850~", 1850, 1850, "~"],
  ["1850?", 1850, 1850, "?"],
  ["1850%", 1850, 1850, "%"],
  ["18XX", 1800, 1899],
  ["185X", 1850, 1859],
  ["1XXX", 1000, 1999],
  ["0000", 0, 0],
  ["-0299", -299, -299],
  ["-01XX", -199, -100],
  ["-0299/-0199", -299, -199],
  ["-0049/0079", -49, 79],
  ["1850~/1860", 1850, 1860, "~"],
  ["1850~/1860?", 1850, 1860, "%"],
  ["../1850", null, 1850],
  ["1850/..", 1850, null],
  ["1984-06/", 1984, null],
  ["/1850", null, 1850],
  ["1984-05", 1984, 1984],
  ["1984-05-01", 1984, 1984],
  ["2004-02-29", 2004, 2004],
  ["1984-21", 1984, 1984],
  ["1984-XX", 1984, 1984],
  ["1984-05-XX?", 1984, 1984, "?"],
  ["1964-05-01/2008-06", 1964, 2008],
  ["1985-04-12T23:20:30Z", 1985, 1985],
  ["[1667,1668]", 1667, 1668],
  ["[1667, 1670..1672]", 1667, 1672],
  ["[..1760]", null, 1760],
  ["{1960,1961~}", 1960, 1961, "~"],
  ["Y-17000", -17000, -17000],
  ["Y170000", 170000, 170000],
];

test.each(dates.map((row) => ({ text: row[0], row })))("$text", ({ row: [text, low, high, marks = ""] }) => {
  const approximate = marks === "~" || marks === "%";
  const uncertain = marks === "?" || marks === "%";
  expect(parseEdtf(text)).toEqual({ ok: { low, high, approximate, uncertain } });
});

test.each([
  ["480 BC", "-0479"],
  ["AD 60", "0060"],
  ["850", "0850"],
  ["c. 200", "0200~"],
  ["about 480 BC", "-0479~"],
  ["1850-1860", "1850/1860"],
  ["1850–1860", "1850/1860"],
  ["300–200 BC", "-0299/-0199"],
  ["50 BC to AD 79", "-0049/0079"],
  ["ca. 1850–1860", "1850~/1860~"],
  ["−0299", "-0299"],
])("%s is no EDTF, but is certainly %s", (text, expected) => {
  const read = parseEdtf(text);
  expect(read).toMatchObject({ problem: { replacement: expected } });
  expect(parseEdtf(expected)).toHaveProperty("ok");
});

test.each([
  "",
  "..",
  "../..",
  "/",
  "-300",
  "18X0",
  "XXXX",
  "1984-13",
  "1984-02-30",
  "1900-02-29",
  "1860/1850",
  "1850/1860/1870",
  "-0000",
  "1st century",
  "Y1850",
  "[]",
  "[1667",
  "1850~~",
  "1984-5",
])("%s is no date and has no certain cure", (text) => {
  const read = parseEdtf(text);
  if ("ok" in read) throw new Error(`${text} was read`);
  expect(read.problem.replacement).toBeUndefined();
  expect(inEnglish(read.problem.message)).not.toBe("");
});

describe("laws", () => {
  const year = fc.integer({ min: -20000, max: 20000 });

  test("a span printed is read as the same span", () => {
    const span = fc
      .tuple(fc.option(year), fc.option(year), fc.boolean(), fc.boolean())
      .filter(([a, b]) => a !== null || b !== null)
      .map(([a, b, approximate, uncertain]) => {
        const backwards = a !== null && b !== null && a > b;
        return { low: backwards ? b : a, high: backwards ? a : b, approximate, uncertain };
      });
    fc.assert(fc.property(span, (one) => void expect(parseEdtf(edtfText(one))).toEqual({ ok: one })));
  });

  test("a year printed as text is read as the same year, and as EDTF too", () => {
    fc.assert(
      fc.property(year, (one) => {
        expect(parseYear(yearText(one))).toEqual({ ok: one });
        expect(parseEdtf(edtfYear(one))).toMatchObject({ ok: { low: one, high: one } });
      }),
    );
  });

  test("no text throws or hangs", () => {
    const pieces = fc.constantFrom(
      "1850",
      "-",
      "/",
      "..",
      "X",
      "~",
      "[",
      "]",
      ",",
      "BC",
      " ",
      "Y",
      "–",
      "T",
      "to",
    );
    const any = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(any, (text) => {
        const [date, one] = [parseEdtf(text), parseYear(text)];
        if ("ok" in date) expect((date.ok.low ?? -Infinity) <= (date.ok.high ?? Infinity)).toBe(true);
        if ("ok" in one) expect(Number.isInteger(one.ok)).toBe(true);
      }),
      { numRuns: 3000 },
    );
    for (const piece of ["1", "X", "-", "/", ".", "[", ",", " ", "1850,", "1850 - ", "to "]) {
      const text = piece.repeat(20_000);
      expect("problem" in parseEdtf(text)).toBe(true);
      expect("problem" in parseYear(text)).toBe(true);
      expect("ok" in parseEdtf(`[${text}]`)).toBe(false);
    }
  });
});

describe("years of texts", () => {
  test.each([
    ["1998", 1998],
    ["480 BC", -479],
    ["480 BCE", -479],
    ["480 B.C.", -479],
    ["1 bc", 0],
    ["AD 60", 60],
    ["60 AD", 60],
    ["60 CE", 60],
    ["A.D. 60", 60],
    ["١٩٩٨", 1998],
  ])("%s", (text, astronomical) => {
    expect(parseYear(text)).toEqual({ ok: astronomical });
  });

  // Case G6-years of the check values.
  test("1 BC is 0, and 480 BC to AD 79 is 558 years", () => {
    const [from, to] = [parseYear("480 BC"), parseYear("AD 79")];
    expect("ok" in from && "ok" in to ? to.ok - from.ok : null).toBe(558);
    expect(["1 BC", "2 BC", "AD 1", "509 BC"].map((text) => parseYear(text))).toEqual(
      [0, -1, 1, -508].map((ok) => ({ ok })),
    );
  });

  test.each(["", "0", "0 BC", "-480", "3500 BP", "98-05", "AD 60 BC", "about 1850", "1998.5", "next year"])(
    "%s is none",
    (text) => {
      expect(parseYear(text)).toHaveProperty("problem");
    },
  );

  test("a year below 0 is shown with both meanings", () => {
    const read = parseYear("-480");
    expect("ok" in read ? read : inEnglish(read.problem.message)).toBe(
      "Unexpected year below 0 `-480`, expected `480 BC` or `481 BC`",
    );
  });
});
