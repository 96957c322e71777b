import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import type { Figure, Mark } from "../../src/write/figure/figure.ts";
import { casesOf } from "../check-values/case-file.ts";
import { wholeInEnglish } from "../laws/base/in-english.ts";

// What a figure shows against values that R, numpy and scipy gave; each case of the file names its oracle.
const cases = casesOf(readFileSync(new URL("check-values.json", import.meta.url), "utf8"));

interface Fields {
  readonly [key: string]: unknown;
}
const caseOf = (id: string): { readonly input: Fields; readonly expected: Fields } => {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return { input: found.input as Fields, expected: found.expected as Fields };
};

/** The figure of one derivation over lists of values, each list the measurements of things of its own. */
async function figureOver(
  lists: Readonly<Record<string, readonly string[]>>,
  plugin: string,
  inputs: (ids: Readonly<Record<string, readonly string[]>>) => object,
  settings: object = {},
): Promise<Figure> {
  const ids = Object.fromEntries(
    Object.entries(lists).map(([name, values]) => [name, values.map((_, i) => `${name}-m${i}`)]),
  );
  const records = {
    artefacts: Object.entries(lists).flatMap(([name, values]) =>
      values.map((_, i) => ({ id: `${name}-${i}`, name: `${name} ${i}` })),
    ),
    measurements: Object.entries(lists).flatMap(([name, values]) =>
      values.map((value, i) => ({ id: `${name}-m${i}`, of: `${name}-${i}`, dimension: `size ${i}`, value })),
    ),
    derivations: [{ id: "d", plugin, inputs: inputs(ids), ...settings }],
  };
  const corpus = { title: "Check", units: { "trial-foot": { is: "0.327 m" } } };
  const files = [
    { path: "corpus.yaml", text: JSON.stringify(corpus) },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
  const { model } = await evaluate(files, plugins, emptyMemo(), computingHere(plugins));
  const derived = model?.derivations.byId.get("d");
  if (derived?.outcome?.status !== "computed" || !derived.run) throw new Error(String(derived?.why));
  const made = plugins.find((one) => one.id === plugin);
  if (!made) throw new Error(`no plug-in ${plugin}`);
  return wholeInEnglish(made.figure(derived.outcome, derived.run.settings, (id) => id));
}

function marksOf<M extends Mark["mark"]>(figure: Figure, panel: number, mark: M) {
  return (figure.panels[panel]?.marks ?? []).filter(
    (one): one is Extract<Mark, { readonly mark: M }> => one.mark === mark,
  );
}

const near = (value: number | undefined, expected: number, tolerance: number): void =>
  expect(Math.abs((value ?? Number.NaN) - expected), `${value} for ${expected}`).toBeLessThanOrEqual(tolerance);

test("the blocks of the Erechtheion: residuals, height at the foot, and the other units on the curve", async () => {
  const { input, expected } = caseOf("A4-erechtheion-0.327");
  const values = (input["x"] as readonly number[]).map((x) => `${x} m`);
  const figure = await figureOver({ block: values }, "unit-fit", (ids) => ({ values: ids["block"] }), {
    parameters: { unit: "trial-foot" },
  });
  const residuals = marksOf(figure, 1, "dots")[0]?.dots ?? [];
  expect(residuals).toHaveLength(19);
  for (const [i, rest] of (expected["residuals"] as readonly number[]).entries()) near(residuals[i]?.at[1], rest, 1e-9);
  const strong = marksOf(figure, 0, "peaks")[0]?.peaks.find((peak) => peak.strong);
  near(strong?.at[1], caseOf("A3-erechtheion-0.327").expected["phi"] as number, 1e-6);
  const heights = caseOf("A1-erechtheion");
  const curve = marksOf(figure, 0, "line")[0]?.points ?? [];
  const within = (heights.input["q"] as readonly number[])
    .map((q, i) => [q, (heights.expected["phi"] as readonly number[])[i] ?? 0] as const)
    .filter(([q]) => q > (curve[0]?.[0] ?? Infinity));
  expect(within.length).toBeGreaterThanOrEqual(2);
  for (const [q, height] of within) near(between(curve, q), height, 0.02);
});

test("fourteen bowls searched: the unit, its half, and their heights", async () => {
  const { input, expected } = caseOf("A2-bowls");
  const values = (input["x"] as readonly number[]).map((x) => `${x.toFixed(1)} cm`);
  const figure = await figureOver({ bowl: values }, "unit-fit", (ids) => ({ values: ids["bowl"] }), {
    parameters: { low: "1.5 cm", high: "12 cm", draws: "200" },
  });
  const [best, half] = expected["peaks"] as readonly { readonly q: number; readonly phi: number }[];
  const peaks = marksOf(figure, 0, "peaks")[0]?.peaks ?? [];
  const strong = peaks.find((peak) => peak.strong);
  near(strong?.at[0], best?.q ?? 0, 1e-4);
  near(strong?.at[1], best?.phi ?? 0, 1e-5);
  const halved = peaks.find((peak) => peak.detail === "half");
  near(halved?.at[0], half?.q ?? 0, 1e-3);
  near(halved?.at[1], half?.phi ?? 0, 0.01);
});

test("two jars: the common factor with its interval, and each ratio with its own", async () => {
  const { input, expected } = caseOf("C3-jars");
  const list = (size: string, error: string): readonly string[] =>
    (input[size] as readonly number[]).map((x, i) => `${x} ± ${(input[error] as readonly number[])[i]} cm`);
  const pairs = (ids: Readonly<Record<string, readonly string[]>>): object => ({
    pairs: ids["big"]?.map((id, i) => [id, ids["small"]?.[i]]),
  });
  const figure = await figureOver({ big: list("a", "ua"), small: list("b", "ub") }, "scaling", pairs);
  const [low, high] = expected["ci95"] as readonly [number, number];
  near(marksOf(figure, 0, "rule")[0]?.at, expected["k"] as number, 1e-8);
  near(marksOf(figure, 0, "reach")[0]?.from, low, 1e-7);
  near(marksOf(figure, 0, "reach")[0]?.to, high, 1e-7);
  const dots = marksOf(figure, 0, "dots")[0]?.dots ?? [];
  for (const [i, ratio] of (expected["logRatios"] as readonly number[]).entries()) {
    const u = (expected["uLog"] as readonly number[])[i] ?? 0;
    near(Math.log(dots[i]?.at[0] ?? 0), ratio, 1e-8);
    near(Math.log(dots[i]?.xEnds?.[1] ?? 0), ratio + 1.96 * u, 1e-8);
  }
});

test("ten vessels: the fitted line and its band", async () => {
  const { input, expected } = caseOf("C5-allometric");
  const list = (size: string): readonly string[] => (input[size] as readonly number[]).map((x) => `${x} ± 0.1 cm`);
  const figure = await figureOver({ tall: list("y"), rim: list("x") }, "scaling", (ids) => ({
    pairs: ids["tall"]?.map((id, i) => [id, ids["rim"]?.[i]]),
  }));
  const fitted = marksOf(figure, 1, "line").find((line) => line.role === "main");
  const band = marksOf(figure, 1, "band")[0]?.points ?? [];
  const [low, high] = (expected["ci95"] as readonly (readonly [number, number])[])[0] ?? [0, 0];
  const at = 13.3;
  near(between(fitted?.points ?? [], at), (expected["y0"] as readonly number[])[0] ?? 0, 0.01);
  near(between(band.map(([x, y]) => [x, y] as const), at), low, 0.01);
  near(between(band.map(([x, , y]) => [x, y] as const), at), high, 0.01);
  expect(fitted?.label).toContain((caseOf("C4-bowls").expected["ols"] as { readonly slope: number }).slope.toFixed(2));
});

test("a row with broken ends: the share of longer gaps falls as in R's survfit", async () => {
  const { input, expected } = caseOf("D4-km-A");
  const seen = input["observed"] as readonly number[];
  const values = (input["gaps"] as readonly number[]).map((gap, i) => `${seen[i] === 1 ? "" : "≥ "}${gap} cm`);
  const figure = await figureOver({ gap: values }, "spacing", (ids) => ({ gaps: ids["gap"] }));
  const steps = marksOf(figure, 1, "line")[0]?.points ?? [];
  for (const [i, time] of (expected["time"] as readonly number[]).entries()) {
    const reached = steps.findLast(([x]) => Math.abs(x - time) < 1e-9);
    near(reached?.[1], (expected["surv"] as readonly number[])[i] ?? 0, 1e-9);
  }
  near(marksOf(figure, 1, "rule")[0]?.at, expected["median"] as number, 1e-9);
  expect(marksOf(figure, 1, "strokes")[0]?.points.map(([x]) => Math.round(x))).toEqual([58, 66]);
});

test("gaps known as ranges: the share is left undetermined exactly where Turnbull's masses lie", async () => {
  const { input, expected } = caseOf("D6-turnbull");
  const high = input["hi"] as readonly (number | null)[];
  const values = (input["lo"] as readonly number[]).map((low, i) =>
    high[i] === null ? `≥ ${low} cm` : `${low}–${high[i]} cm`,
  );
  const figure = await figureOver({ gap: values }, "spacing", (ids) => ({ gaps: ids["gap"] }));
  const bands = marksOf(figure, 1, "band").map((band) => band.points);
  const intervals = expected["intervals"] as readonly (readonly [number, number])[];
  const mass = expected["mass"] as readonly number[];
  for (const [i, [from, to]] of intervals.entries()) {
    const band = bands.find((points) => Math.abs((points[0]?.[0] ?? 0) - from) < 1e-9);
    const [start, end] = band ?? [];
    near(end?.[0], to, 1e-9);
    near((start?.[2] ?? 0) - (start?.[1] ?? 0), mass[i] ?? 0, 0.02);
  }
});

test.each(["E1-snug", "E1-loose", "E2-ranges"])("a pivot and its socket: the clearance of %s with its ends", async (id) => {
  const { input, expected } = caseOf(id);
  const written = (part: "slot" | "peg", error: "uSlot" | "uPeg"): string => {
    const stated = input[part] as number | readonly [number, number];
    return typeof stated === "number" ? `${stated} ± ${String(input[error])} mm` : `${stated.join("–")} mm`;
  };
  const lists = { slot: [written("slot", "uSlot")], peg: [written("peg", "uPeg")] };
  const figure = await figureOver(lists, "clearance", (ids) => ({ pairs: [[ids["slot"]?.[0], ids["peg"]?.[0]]] }));
  const dot = marksOf(figure, 1, "dots")[0]?.dots[0];
  const [low, high] = (expected["ci95"] ?? expected["clearance"]) as readonly [number, number];
  near(dot?.at[0], (low + high) / 2, 1e-9);
  near(dot?.xEnds?.[0], low, 1e-9);
  near(dot?.xEnds?.[1], high, 1e-9);
});

/** The height of a curve between two of its points. */
function between(curve: readonly (readonly [number, number])[], x: number): number {
  const next = curve.findIndex((point) => point[0] >= x);
  const [x0, y0] = curve[Math.max(0, next - 1)] ?? [0, 0];
  const [x1, y1] = curve[next] ?? [0, 0];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
