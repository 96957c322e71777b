import { describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";

describe.each(plugins.map((plugin) => [plugin.id, plugin] as const))("%s", (_, plugin) => {
  test("has a worked example with a source outside this program", () => {
    expect(plugin.examples.length).toBeGreaterThan(0);
    for (const example of plugin.examples) {
      expect(example.source).not.toBe("");
      expect(Object.keys(example.expected).length).toBeGreaterThan(0);
    }
  });

  test.each(plugin.examples.map((example) => [example.title, example] as const))("%s", async (_title, example) => {
    const files = Object.entries(example.files).map(([path, text]) => ({ path, text }));
    const { model, findings } = await evaluate(files, plugins, emptyMemo(), computingHere(plugins));
    expect(findings.filter((one) => one.level === "error")).toEqual([]);
    const derived = model?.derivations.byId.get(example.derivation);
    expect(derived?.why).toBeNull();
    for (const [name, { value, tolerance }] of Object.entries(example.expected)) {
      const got = derived?.numbers[name]?.value ?? Number.NaN;
      expect(Math.abs(got - value), `${name}: ${got}`).toBeLessThanOrEqual(tolerance);
    }
  });

  test("gives the numbers it declares and no others, a figure and a sentence", async () => {
    for (const example of plugin.examples) {
      const files = Object.entries(example.files).map(([path, text]) => ({ path, text }));
      const { model } = await evaluate(files, plugins, emptyMemo(), computingHere(plugins));
      const derived = model?.derivations.byId.get(example.derivation);
      const outcome = derived?.outcome;
      if (outcome?.status !== "computed" || !derived?.run) throw new Error("the example did not compute");
      const declared = plugin.numbers.map((number) => number.name);
      expect(declared).toEqual(expect.arrayContaining(Object.keys(outcome.numbers)));
      for (const warning of outcome.warnings) expect(plugin.cautions.map((one) => one.id)).toContain(warning);
      const called = (id: string): string => id;
      const { panels } = plugin.figure(outcome, derived.run.settings, called);
      expect(panels.length).toBeGreaterThan(0);
      for (const panel of panels) expect(panel.marks.length).toBeGreaterThan(0);
      expect(inEnglish(plugin.sentence(outcome, derived.run.settings, called))).toMatch(/^[A-Z0-9].*\.$/);
    }
  });
});
