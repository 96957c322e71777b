import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { randomFrom } from "../../../src/base/outcome/random.ts";
import { median, studentQuantile } from "../../../src/base/numeric/index.ts";
import { declaredBy } from "../../../src/host/guest/guest.ts";
import { answer } from "../../../src/host/guest/numerics.ts";
import { standInFor } from "../../../src/host/guest/stand-in.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import {
  engine,
  evaluatedWith,
  filesWith,
  guestOf,
  guestText,
  outcomeOf,
  short,
  told,
} from "./guest-corpus.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { ownTime } from "../base/processor.ts";

const good = guestText();

describe("a plug-in of the corpus that is allowed", () => {
  test("computes, bears on its claim, and says and draws what it found", async () => {
    const { model, findings } = await evaluatedWith(filesWith(good), [guestOf(good)]);
    const derived = model?.derivations.byId.get("how-wide");
    expect(derived?.status).toBe("computed");
    expect(derived?.numbers["widest"]).toEqual({ value: 7.5, low: 7.4, high: 7.6, unit: "m", kind: "input" });
    expect(derived?.numbers["share"]?.value).toBeCloseTo(20 / 4 / 7.5, 12);
    expect(derived?.bearings.map((one) => one.bearing)).toEqual(["supports"]);
    expect(model?.judgement.standings.get("wide")).toBe("stands");
    expect(findings.filter((one) => one.level === "error")).toEqual([]);

    const all = [...plugins, standInFor(await declaredBy(engine, guestOf(good)))];
    const page = model && numberPage(model, all, new Map(), "how-wide");
    expect(page?.sentence).toBe("The widest is The barn with 7.5 m.");
    expect(page?.figure?.figure.panels[0]?.marks[0]).toMatchObject({
      mark: "dots",
      dots: [{ at: [0, 4.2], label: "The barn" }, { at: [1, 7.5] }, { at: [2, 5] }, { at: [3, 3.3] }],
    });
    expect(page?.cautions.met).toEqual(["The widest says little of the rest."]);
    expect(page?.notAllowed).toBeNull();
  });

  test("draws its chance from the run, and nothing else", async () => {
    const one = await outcomeOf(good);
    expect(await outcomeOf(good)).toEqual(one);
    const { outcomes } = await evaluatedWith(filesWith(good), [guestOf(good)]);
    const seed = Number.parseInt([...outcomes.keys()][0]?.slice(0, 8) ?? "", 16) | 0;
    const random = randomFrom(seed);
    const [normal, uniform] = [random.normal(), random.uniform()];
    const third = [random.uniform(), random.uniform(), random.uniform()][2] ?? 0;
    // The interpreter's exp may differ from the host's in the last digit.
    const value = one.status === "computed" ? one.numbers["drawn"]?.value : undefined;
    expect(value).toBeCloseTo(normal + uniform + Math.exp(third), 12);
  });

  test("has the host's numerics, which take only what they are made for", async () => {
    expect(await told("studentQuantile(0.95, 4)")).toBe(String(studentQuantile(0.95, 4)));
    // Printed in tables of Student's t: 2.776 for 4 degrees of freedom.
    expect(Number(await told("studentQuantile(0.95, 4)"))).toBeCloseTo(2.776, 3);
    expect(await told("median([3, 1, 2, 10])")).toBe(String(median([3, 1, 2, 10])));
    for (const [name, given] of [
      ["mean", "[[]]"],
      ["mean", '[["1"]]'],
      ["mean", "[[null]]"],
      ["quantile", "[[1,2],2]"],
      ["studentQuantile", "[1,4]"],
      ["choose", "[1e9,5e8]"],
      ["linearRegression", "[[[1,2,3]],[1,2]]"],
      ["linearRegression", `[[[${"1,".repeat(20_000)}1]],[1,2]]`],
      ["constructor", "[]"],
      ["__proto__", "[]"],
      ["mean", "{"],
    ] as const) {
      expect(Object.keys(JSON.parse(answer(name, given)) as object), `${name} ${given}`).toEqual(["trouble"]);
    }
  });
});

test("settings, looks and what has no quantity come in as they do for the program's own plug-ins", async () => {
  expect(await told("settings.times.value + ' ' + settings.times.kind + ' ' + looks")).toBe("2 number 1");
  const text = guestText({
    more: 'inputs: [{ name: "seen", kind: "observations", doc: "what was seen" }],',
    compute: `return refuse("told", recorded.observations.seen.map((one) => one.id + " " + one.present).join(", "));`,
  });
  const observed = {
    artefacts: [{ id: "hut", name: "The hut" }],
    observations: [
      { id: "soot", of: "hut", text: "Soot on a beam.", feature: "soot" },
      { id: "no-ash", of: "hut", text: "No ash below it.", feature: "ash", present: "false" },
    ],
    derivations: [{ id: "how-wide", plugin: "widest", inputs: { seen: ["soot", "no-ash"] } }],
  };
  const files = filesWith(text).map((file) =>
    file.path === "records.yaml" ? { ...file, text: JSON.stringify(observed) } : file,
  );
  const { model } = await evaluatedWith(files, [guestOf(text)]);
  expect(model?.derivations.byId.get("how-wide")?.why).toBe("soot true, no-ash false");
});

test("the plug-in that README prints works as it stands", async () => {
  const readme = readFileSync(new URL("../../../README.md", import.meta.url), "utf8");
  const text = /```js\n([\s\S]*?)```/.exec(readme)?.[1] ?? "";
  expect(text.trim().split("\n").length).toBeLessThanOrEqual(25);
  const files = filesWith(text).map((file) => ({
    ...file,
    text: file.text.replace('"values":', '"widths":'),
  }));
  const { model } = await evaluatedWith(files, [guestOf(text)]);
  const derived = model?.derivations.byId.get("how-wide");
  expect(derived?.numbers["widest"]?.value).toBe(7.5);
  expect(derived?.numbers["share"]?.value).toBeCloseTo(20 / 4 / 7.5, 12);
  expect(derived?.bearings.map((one) => one.bearing)).toEqual(["supports"]);
});

describe("a plug-in of the corpus that is not allowed", () => {
  test("is told by its name and hash, and nothing of it runs", async () => {
    const text = `for (;;);\n${good}`;
    const { model, findings } = await evaluatedWith(filesWith(text), []);
    const derived = model?.derivations.byId.get("how-wide");
    expect(derived?.status).toBe("withheld");
    expect(inEnglish(derived?.why ?? "")).toContain(guestOf(text).hash);
    expect(inEnglish(derived?.why ?? "")).toContain("--allow-plugin widest");
    expect(model?.judgement.standings.get("wide")).toBe("unsupported");
    expect(model?.missing).toEqual([]);
    expect(findings.map((one) => one.rule)).toContain("withheld-derivation");
    const page = model && numberPage(model, plugins, new Map(), "how-wide");
    expect(page?.notAllowed).toEqual({ ...guestOf(text) });
    expect(model && reportOf(model, [], new Map()).numbers["how-wide"]?.status).toBe("withheld");
  });
});

/** What a misbehaving guest does, and what is said of it. */
const misbehaving: Readonly<Record<string, readonly [string, RegExp]>> = {
  loops: ["for (;;);", /stopped after 0\.8 s/],
  "loops and catches": ["for (;;) { try { for (;;); } catch {} }", /stopped after/],
  "loops at its end": ["try { for (;;); } finally { for (;;); }", /stopped after/],
  "matches without end": ['return /(a+)+$/.test("a".repeat(40) + "b");', /stopped after/],
  recurses: ["const f = () => f() + 1; return f();", /stack overflow/],
  "recurses while it tells": [
    "const o = { toJSON() { return JSON.stringify(o); } }; return o;",
    /stack overflow/,
  ],
  "nests its result": [
    "let a = []; for (let i = 0; i < 100000; i++) a = [a]; return a;",
    /broke off|overflow|stopped/,
  ],
  "fills memory with lists": ["const a = []; for (;;) a.push(new Array(1000).fill(1));", /memory|stopped/],
  "fills memory with a text": ['let s = "xxxxxxxx"; for (;;) s += s;', /too long|memory/],
  "fills memory with texts": [
    'const a = []; for (let i = 0; ; i++) a.push("x".repeat(1e5) + i);',
    /memory|stopped/,
  ],
  "fills memory with typed lists": ["const a = []; for (;;) a.push(new Float64Array(1e6));", /memory/],
  "fills memory with small typed lists": [
    "const a = []; for (;;) a.push(new Float64Array(1e4));",
    /memory|stopped/,
  ],
  "fills memory and catches": [
    "const a = []; for (;;) { try { for (;;) a.push(new Float64Array(1e5)); } catch {} }",
    /memory|stopped/,
  ],
  "fills memory with a sparse list": [
    "const a = []; a[1e8] = 1; for (let i = 0; ; i += 1000) a[i] = 1;",
    /memory|stopped/,
  ],
  "asks for one huge buffer": ["return new ArrayBuffer(2 ** 31);", /memory|invalid/i],
  "says too much": ['return refuse("long", "x".repeat(2e6));', /said more than 1024 kB/],
  throws: ['throw new Error("no\\u001b[31m more\\u202e");', /gave no result: Error: no \[31m more$/],
  "throws what cannot be told": ["throw { toString() { throw 1; } };", /cannot be told/],
  "throws nothing": ["throw undefined;", /undefined/],
};

describe("a plug-in that misbehaves is told of and harms nothing", () => {
  test.each(Object.entries(misbehaving))("%s", async (_, [compute, why]) => {
    const spent = ownTime();
    // Whoever is to be stopped is so soon; the others have their time on a busy machine, too.
    const outcome = await outcomeOf(
      guestText({ compute }),
      why.source.includes("stopped") ? short : undefined,
    );
    expect(outcome.status).toBe("failed");
    expect(outcome.status === "failed" && inEnglish(outcome.why)).toMatch(why);
    expect(spent()).toBeLessThan(10_000);
  });

  test("and the next one is as it was", async () => {
    expect((await outcomeOf(good)).status).toBe("computed");
  });

  test("as it is loaded or drawn, too", async () => {
    const declared = await declaredBy(engine, guestOf("for (;;);"), short);
    expect(inEnglish(declared.trouble ?? "")).toMatch(/stopped after/);
    const drawn = await outcomeOf(guestText({ figure: "for (;;);" }), short);
    expect(drawn.status === "failed" && inEnglish(drawn.why)).toMatch(/stopped after/);
  });

  test("before it is even asked", async () => {
    for (const [text, why] of [
      ["throw new Error('at once')", /at once/],
      ["\n\nexport default {{", /line 3/],
      ["export const a = 1;", /no default export/],
      ["export default null;", /no default export/],
      ["await new Promise(() => {}); export default {};", /waits/],
      ["await 1; throw new Error('late'); export default {};", /waits|late/],
      ['import fs from "node:fs"; export default {};', /from “variorum” alone/],
      ['import fs from "./other.js"; export default {};', /from “variorum” alone/],
      [guestText({ id: "another" }), /`another`, expected the name of its file/],
      [guestText({ more: 'inputs: [], get title() { throw new Error("hah"); },' }), /hah/],
      [guestText({ more: 'title: "\\u001b[2J",' }), /`title`: expected no control characters/],
      [guestText({ more: 'title: "a\\u202eb",' }), /`title`: expected no control characters/],
      [guestText({ more: "sentence: 1," }).replace(/sentence\(/, "other("), /`sentence`/],
      [guestText({ more: "doc: 1," }), /`doc`: expected string/],
      [guestText({ more: 'numbers: [{ name: "__proto__", kind: "number", doc: "" }],' }), /small letters/],
      [guestText({ more: 'inputs: new Proxy([], { get() { throw new Error("trap"); } }),' }), /trap/],
    ] as const) {
      const declared = await declaredBy(engine, guestOf(text));
      expect(declared.about, text).toBeNull();
      expect(inEnglish(declared.trouble ?? ""), text).toMatch(why);
      const { model, findings } = await evaluatedWith(filesWith(text), [guestOf(text)]);
      expect(model?.derivations.byId.get("how-wide")?.status).toBe("failed");
      expect(findings.map((one) => one.rule)).toContain("failed-derivation");
    }
  });
});

const number = (value: string): string => `{ numbers: { widest: ${value} } }`;
const sound = "{ value: 1, low: null, high: null }";

/** Results that are none, and what is said of each. */
const nonsense: Readonly<Record<string, readonly [string, RegExp]>> = {
  nothing: ["undefined", /expected object/],
  null: ["null", /expected object/],
  "a text": ['"fine"', /expected object/],
  "a function": ["() => 1", /expected object/],
  "a promise": ["Promise.resolve(1)", /numbers/],
  "no numbers": ["{ numbers: {} }", /expected a number/],
  "a number that is none": [number("{ value: NaN, low: null, high: null }"), /`numbers\.widest\.value`/],
  "an endless number": [number("{ value: 1, low: -Infinity, high: null }"), /`numbers\.widest\.low`/],
  "a bare number": [number("1"), /`numbers\.widest`/],
  "no interval": [number("{ value: 1 }"), /`numbers\.widest\.low`/],
  "an interval that runs backwards": [number("{ value: 1, low: 2, high: 0 }"), /`low` not above `high`/],
  "an unknown number": [`{ numbers: { widest: ${sound}, other: ${sound} } }`, /other/],
  "a number called __proto__": [`{ numbers: { ["__proto__"]: ${sound} } }`, /__proto__|expected a number/],
  "a large whole number": [number("{ value: 10n, low: null, high: null }"), /BigInt/i],
  "an unknown warning": [`{ numbers: { widest: ${sound} }, warnings: ["boo"] }`, /`warnings\.0`/],
  "something left out that was not there": [
    `{ numbers: { widest: ${sound} }, leftOut: [{ id: "nothing", why: "so" }] }`,
    /expected an id of an input/,
  ],
  "a circle": ["(() => { const a = { numbers: {} }; a.a = a; return a; })()", /circular/],
  "a getter that throws": ['{ get numbers() { throw new Error("hah"); } }', /hah/],
  "a proxy that throws": ['new Proxy({}, { get() { throw new Error("trap"); } })', /trap/],
  "a refusal without words": ['{ refused: "so" }', /`message`/],
  "a refusal that steers": ['{ refused: "so", message: "a\\u0007b" }', /control characters/],
};

describe("a result that is none is told of", () => {
  test.each(Object.entries(nonsense))("%s", async (_, [result, why]) => {
    const outcome = await outcomeOf(guestText({ compute: `return ${result};` }));
    expect(outcome.status).toBe("failed");
    expect(outcome.status === "failed" && inEnglish(outcome.why)).toMatch(why);
  });

  test.each([
    [
      "a figure that breaks off",
      { figure: "throw new Error('no ink');" },
      /`figure` broke off: Error: no ink/,
    ],
    ["a figure that is none", { figure: "return 1;" }, /its figure has/],
    [
      "a figure with a number that is none",
      {
        figure: `return { title: "", panels: [{ title: "", caption: "", shows: "each", x: { label: "", unit: "1" }, y: { label: "", unit: "1" },
        marks: [{ mark: "strokes", label: "", points: [[0, NaN]] }] }] };`,
      },
      /its figure has `panels\.0\.marks\.0\.points\.0\.1`/,
    ],

    [
      "a sentence that breaks off",
      { sentence: "throw new Error('no words');" },
      /`sentence` broke off: Error: no words/,
    ],
    ["a sentence that is none", { sentence: "return { toString: () => 'so' };" }, /its sentence has/],
    ["a sentence that steers", { sentence: "return 'a\\u009bb';" }, /control characters/],
  ])("%s", async (_, parts, why) => {
    const outcome = await outcomeOf(guestText(parts));
    expect(outcome.status === "failed" && inEnglish(outcome.why)).toMatch(why);
  });
});
