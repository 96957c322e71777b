import { describe, expect, test } from "vitest";
import * as z from "zod";
import { plugins } from "../../../plugins/index.ts";
import { writtenOut } from "../../../src/base/text/steering.ts";
import { declaredBy, runGuest } from "../../../src/host/guest/guest.ts";
import { readAs } from "../../../src/host/guest/contract.ts";
import { figureSchema } from "../../../src/host/guest/drawn.ts";
import { answer } from "../../../src/host/guest/numerics.ts";
import { standInFor } from "../../../src/host/guest/stand-in.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import type { Figure, Panel } from "../../../src/plugin.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { tablesOf } from "../../../src/show/numbers/panel-table.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { engine, evaluatedWith, filesWith, guestOf, guestText, outcomeOf, told } from "./guest-corpus.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { wholeInEnglish } from "../base/in-english.ts";
import { ownTime } from "../base/processor.ts";

const sound = "{ value: 1, low: null, high: null }";
const result = `return { numbers: { widest: ${sound} } };`;
const plain = { figure: "return null;", sentence: 'return "So.";' };
const whyOf = async (text: string): Promise<string> => {
  const outcome = await outcomeOf(text);
  return outcome.status === "computed" ? "computed" : inEnglish(outcome.why);
};

describe("what a plug-in spoils of its own language", () => {
  test.each(["undefined", "null", "1", '"a"', "[]", "{ about: 1 }", "{ result: 1, figure: 1, sentence: 1 }"])(
    "told as %s is told of",
    async (said) => {
      const spoil = `Object.prototype.toJSON = () => (${said});`;
      expect((await declaredBy(engine, guestOf(guestText({ before: spoil })))).about).toBeNull();
      const late = await outcomeOf(guestText({ ...plain, compute: `${spoil} ${result}` }));
      expect(late.status).toBe("failed");
    },
  );

  test("trouble that cannot be made a text", async () => {
    const spoil = `Object.prototype.toJSON = function () {
      return "made" in this || "trouble" in this ? { trouble: { toString: 1, valueOf: 1 } } : this; };`;
    expect((await outcomeOf(guestText({ ...plain, compute: `${spoil} ${result}` }))).status).toBe("failed");
  });
});

describe("a plug-in that lies about itself", () => {
  test("is held to what it declared when it was asked", async () => {
    const two = (name: string): string => `[{ name: "${name}", kind: "number", doc: "" }]`;
    // Another chance is drawn when it computes than when it is asked.
    const text = guestText({
      ...plain,
      more: `numbers: asked ? ${two("widest")} : ${two("other")},`,
      before: `const asked = Math.random() === ${await firstDraw()};`,
      compute: `return { numbers: { other: ${sound} } };`,
    });
    expect((await declaredBy(engine, guestOf(text))).about?.numbers.map((one) => one.name)).toEqual([
      "widest",
    ]);
    expect(await whyOf(text)).toMatch(/its result has .*other/);
  });

  test("and without a declaration nothing of it is run", async () => {
    const { model } = await evaluatedWith(filesWith(guestText()), [guestOf(guestText())]);
    const run = model?.derivations.byId.get("how-wide")?.run;
    if (!run) throw new Error("there is no run");
    const guest = { ...guestOf("for (;;);"), about: null, trouble: "none" };
    expect(await runGuest(engine, guest, run)).toEqual({ status: "failed", why: "none" });
  });

  test.each([
    ['inputs: [{ name: "constructor", kind: "measurements", doc: "" }],', /another name/],
    ['inputs: [{ name: "pairs", kind: "measurements", doc: "" }],', /`pairs`/],
    ['parameters: [{ name: "constructor", kind: "number", doc: "" }],', /another name/],
    ['numbers: [{ name: "constructor", kind: "number", doc: "" }],', /another name/],
    [
      `inputs: Array.from({ length: 10000 }, (_, i) => ({ name: "n" + i, kind: "number", doc: "" })),`,
      /kB|40/,
    ],
    [`doc: "x".repeat(1e7),`, /said more than 256 kB/],
  ])("%s", async (more, why) => {
    const { about, trouble } = await declaredBy(engine, guestOf(guestText({ more })));
    expect(about).toBeNull();
    expect(inEnglish(trouble ?? "")).toMatch(why);
  });

  test.each([
    ["probability", "2", /numbers\.widest\.value/],
    ["probability", "-0.1", /numbers\.widest\.value/],
    ["count", "-1", /numbers\.widest\.value/],
    ["number", "1e200", /numbers\.widest\.value/],
    ["probability", "1e-300", /computed/],
  ])("a %s of %s", async (kind, value, why) => {
    const more = `numbers: [{ name: "widest", kind: "${kind}", doc: "" }],`;
    const compute = `return { numbers: { widest: { value: ${value}, low: null, high: null } } };`;
    expect(await whyOf(guestText({ ...plain, more, compute }))).toMatch(why);
  });

  test.each([
    'parameters: [{ name: "times", kind: "choice", doc: "" }],',
    'parameters: [{ name: "times", kind: "choice", doc: "", default: "x", choices: [] }],',
    'parameters: [{ name: "times", kind: "unit", doc: "", default: "no such" }],',
    'parameters: [{ name: "times", kind: "quantity", doc: "", default: "lots" }],',
    'parameters: [{ name: "times", kind: "number", doc: "", default: "how-wide.widest" }],',
    'inputs: [{ name: "values", kind: "dates", doc: "", takesBounds: true }],',
    'inputs: [{ name: "values", kind: "number", doc: "", takesObservations: true }],',
    'inputs: [{ name: "values", kind: "measurements", doc: "", pairedWith: "b" }, { name: "b", kind: "observations", doc: "", pairedWith: "values" }],',
  ])("breaks no corpus by declaring %s", async (more) => {
    const text = guestText({ more, compute: result, ...plain });
    const { model } = await evaluatedWith(filesWith(text), [guestOf(text)]);
    const all = [...plugins, standInFor(await declaredBy(engine, guestOf(text)))];
    expect(model && numberPage(model, all, new Map(), "how-wide")?.id).toBe("how-wide");
  });
});

/** The first draw of the stream a plug-in has while it declares itself. */
async function firstDraw(): Promise<string> {
  const { trouble } = await declaredBy(engine, guestOf("throw new Error(Math.random()); export default {};"));
  return /Error: ([\d.e-]+)/.exec(inEnglish(trouble ?? ""))?.[1] ?? "none";
}

test("the host looks at how long a list is before it looks into it", () => {
  for (const [name, given] of [
    ["mean", `[[${"null,".repeat(900_000)}0]]`],
    ["mean", `[[${"0,".repeat(3_000_000)}0]]`],
    ["linearRegression", `[[${"[],".repeat(900_000)}[]],[1]]`],
  ] as const) {
    const said = answer(name, given);
    expect(said, name).toContain('{"trouble":');
    expect(said, name).toMatch(/too much at once|Too big/);
  }
});

test("more that is wrong than there is room to tell of is told of all the same", async () => {
  const many = "Array(170000).fill(0)";
  for (const [parts, why] of [
    [{ compute: `return { numbers: { widest: ${sound} }, leftOut: ${many}.concat(${many}) };` }, /leftOut/],
    [{ compute: `return { numbers: Object.assign({}, Array(60000).fill(0)) };` }, /numbers/],
    [{ figure: `return { title: "", panels: ${many} };` }, /panels/],
    [
      {
        figure: `return { title: "", panels: [{ title: "", caption: "", shows: "each", x: { label: "", unit: "" },
        y: { label: "", unit: "" }, marks: [{ mark: "strokes", label: "", points: ${many} }] }] };`,
      },
      /points/,
    ],
  ] as const)
    expect(await whyOf(guestText({ ...plain, compute: result, ...parts }))).toMatch(why);
  const texts = z.object({ texts: z.array(z.array(z.string())) });
  expect(readAs(texts, { texts: [Array(500_000).fill(0)] })).toEqual({
    trouble: expect.stringContaining("too much"),
  });
});

describe("names and words of what is withheld", () => {
  const withheld = "withhold: [barn]\n";
  const others = (text: string) =>
    filesWith(text, withheld).map((file) => ({
      ...file,
      text: file.text.replace('"of":["hut","barn","byre","shed"]', '"of":["hut","byre","shed"]'),
    }));

  test("a name it was not given is not told to it", async () => {
    const text = guestText({
      compute: result,
      figure: `return { title: name("barn"), panels: [] };`,
      sentence: `return name("hut") + " \\ue000barn\\ue001 " + name("barn") + ".";`,
    });
    const all = [...plugins, standInFor(await declaredBy(engine, guestOf(text)))];
    const { model } = await evaluatedWith(others(text), [guestOf(text)]);
    const page = model && numberPage(model, all, new Map(), "how-wide");
    expect(page?.sentence).toBe("The hut barn barn.");
    expect(JSON.stringify(page)).not.toContain("The barn");
  });

  test("the short word of a refusal tells nothing either", async () => {
    const text = guestText({
      compute: `return refuse("barn-is-" + Math.round(values[1].quantity.value * 10), "no");`,
    });
    const { model, findings } = await evaluatedWith(filesWith(text, withheld), [guestOf(text)]);
    expect(model?.derivations.byId.get("how-wide")?.status).toBe("refused");
    expect(JSON.stringify(model && reportOf(model, findings, new Map()))).not.toContain("barn-is-75");
  });
});

const panelOf = (x: object, y: object, marks: readonly object[]): object => ({
  title: "A figure",
  panels: [
    {
      title: "<b>Panel</b>",
      caption: "Made up.",
      shows: "each",
      x: { label: "<img src=x>", unit: "1", ...x },
      y: { label: "", unit: "1", ...y },
      marks,
    },
  ],
});

const extremes = [0, 1, -1, 1e100, -1e100, 1e-100, -1e-100];
const axes = [
  {},
  { scale: "log" },
  { from: -1e-100, to: 1e-100 },
  { from: -1e100, to: 1e100 },
  { names: ["a"] },
];
const marksAt = (a: number, b: number): readonly object[] => [
  {
    mark: "line",
    role: "main",
    label: "l",
    points: [
      [a, b],
      [b, a],
    ],
  },
  { mark: "band", label: "b", points: [[a, b, a]] },
  { mark: "reach", axis: "x", from: a, to: b, label: "r" },
  { mark: "dots", label: "d", dots: [{ at: [a, b], xEnds: [b, a], label: "<script>" }] },
  { mark: "strokes", label: "s", points: [[a, b]] },
  { mark: "rule", axis: "y", at: b, role: "null", label: "n" },
];

describe("a figure of a plug-in", () => {
  test("can be drawn and put in a table, however far apart its numbers are", () => {
    for (const x of axes)
      for (const y of axes)
        for (const a of extremes)
          for (const b of extremes) {
            const { data } = figureSchema.safeParse(panelOf(x, y, marksAt(a, b)));
            if (!data) throw new Error("the figure was expected to be one");
            const spent = ownTime();
            const drawn = draw(wholeInEnglish(data as Figure), {
              document: svgDocument(),
              width: 700,
              palette: light,
              id: "f",
            });
            expect(drawn.querySelectorAll("script, img, b").length).toBe(0);
            for (const panel of data.panels) expect(tablesOf(panel as Panel).length).toBeGreaterThan(0);
            expect(spent()).toBeLessThan(2_000);
          }
  });

  test.each([
    ["ends the wrong way round", { from: 2, to: 1 }, []],
    ["ends that are one", { from: 1, to: 1 }, []],
    ["a log scale from nothing", { scale: "log", from: 0 }, []],
    ["sizes next to nothing", {}, marksAt(5e-324, 1)],
    ["sizes past all measure", {}, marksAt(1e308, -1e308)],
    ["no rows", { names: [] }, []],
    ["more dots than a sheet holds", {}, [{ mark: "strokes", label: "", points: Array(5001).fill([0, 0]) }]],
  ])("has not %s", (_, x, marks) => {
    expect(figureSchema.safeParse(panelOf(x, {}, marks)).success).toBe(false);
  });
});

describe("the code that is read before it is allowed", () => {
  test.each([
    "\u2028",
    "\u2029",
    "\u200b",
    "\u00ad",
    "\u3164",
    "\ufeff",
    "\u200f",
    "\u{e0041}",
    "\u0000",
    "\r",
    "\u202e",
  ])("hides nothing behind a sign that is not seen (%j)", (sign) => {
    const shown = writtenOut(`// a${sign}b`);
    expect(shown).not.toContain(sign);
    expect(shown).toContain((sign.codePointAt(0) ?? 0).toString(16));
  });

  test("is the code that runs, with every sign of it", async () => {
    // For the interpreter a comment ends at U+2028; and a file goes on after U+0000.
    expect(await told("seen", "let seen = 1; // a\u2028seen = 2;")).toBe("2");
    expect(await told("seen", "let seen = 1; /* \u0000 */ seen = 3;")).toBe("3");
    expect(writtenOut("a\r\n\tb\nc é 𝛼")).toBe("a\r\n\tb\nc é 𝛼");
  });
});
