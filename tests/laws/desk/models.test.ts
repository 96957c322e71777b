import fc from "fast-check";
import { expect, test } from "vitest";
import { modelsBeside } from "../../../src/app/worker/models/models.ts";
import type { Models } from "../../../src/app/worker/models/models.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Memo, Model, Outcome, Run, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { plugins } from "../../../plugins/index.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";
import { inOneFile } from "../../bench/one-file.ts";
import { changedBy, wayTaken } from "../editing/edit-ways.ts";

/** Models with the turns that they take in between, which are given when they are asked for. */
function modelsHere(memo: Memo): Models & { readonly turns: () => void } {
  let next: (() => void) | null = null;
  const later = (turn: () => void): void => {
    next = turn;
  };
  // A clock on which a slice is over after a step or two.
  let clock = 0;
  const models = modelsBeside(memo, () => plugins, { now: () => (clock += 5), later });
  const turns = (): void => {
    for (let turn = next; turn !== null; turn = next) {
      next = null;
      turn();
    }
  };
  return { ...models, turns };
}

function whole(models: ReturnType<typeof modelsHere>): Checked<Model> {
  models.shown({}, () => undefined);
  models.turns();
  expect(models.shown({}, () => undefined)).toBe("whole");
  return models.now({});
}

/** All that is told of a model, and the runs it waits for. */
function told({ model, findings }: Checked<Model>): string {
  if (!model) return JSON.stringify(findings);
  return JSON.stringify([
    reportOf(model, findings, model.files),
    findings,
    model.missing.map((run) => run.key),
    [...model.graph.records.values()].map((one) => [one.id, one.list, one.file, one.node]),
  ]);
}

const many = corpusOf({ records: 100, seed: 4 });
const one = inOneFile(corpusOf({ records: 130, seed: 5 }));
const other: readonly SourceFile[] = [{ path: "corpus.yaml", text: "format: 1\ntitle: Another\n" }];

/** An outcome of a run that hangs on nothing but its key, so that numbers are there at once. */
function made({ key, plugin }: Run): Outcome {
  const part = (at: number): number => Number.parseInt(key.slice(at, at + 4), 16) / 65_536;
  const declared = plugins.find((one) => one.id === plugin)?.numbers ?? [];
  const numbers = declared.map(({ name }, at) => {
    const value = part(at) ** 2;
    return [name, { value, low: value * 0.9, high: value * 1.1 }] as const;
  });
  return { status: "computed", numbers: Object.fromEntries(numbers), leftOut: [], warnings: [], data: {} };
}

test("after any edits a model is what it is when it is built from nothing, its numbers with it", () => {
  let changed = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(many, one),
      fc.array(wayTaken, { minLength: 3, maxLength: 5 }),
      fc.boolean(),
      (start, changes, isComputed) => {
        const memo = emptyMemo();
        const compute = (model: Model | null): boolean => {
          if (!isComputed) return false;
          const missing = model?.derivations.missing ?? [];
          for (const run of missing) memo.compute.set(run.key, made(run));
          return missing.length > 0;
        };
        const states: {
          readonly files: readonly SourceFile[];
          readonly compute: Memo["compute"];
          readonly told: string;
        }[] = [];
        const models = modelsHere(memo);
        const state = (files: readonly SourceFile[]): void => {
          models.take(files);
          while (compute(whole(models).model)) models.renumber();
          states.push({ files, compute: new Map(memo.compute), told: told(whole(models)) });
        };
        let files = start;
        state(files);
        for (const change of changes) {
          const next = changedBy(files, change);
          if (next === files) continue;
          files = next;
          changed++;
          state(files);
        }
        for (const { files: those, compute: known, told: then } of states) {
          build(other, plugins, emptyMemo());
          const fresh = those.map((file) => ({ ...file }));
          expect(told(build(fresh, plugins, { read: new Map(), compute: known })) === then).toBe(true);
        }
      },
    ),
    { numRuns: 5, seed: 8 },
  );
  expect(changed).toBeGreaterThan(10);
});

test("what refers to a record is told when that goes, and is whole again when it comes back", () => {
  const settings = { path: "corpus.yaml", text: "format: 1\ntitle: Rings\n" };
  const claims = { path: "a.yaml", text: "claims:\n  - { id: roofed, text: It was roofed }\n" };
  const without = { path: "a.yaml", text: "claims: []\n" };
  const others = {
    path: "b.yaml",
    text: "claims:\n  - { id: thatched, text: It was thatched }\narguments:\n  - { id: by-posts, because: [roofed], therefore: thatched }\n",
  };
  const models = modelsHere(emptyMemo());
  const rules = (...files: readonly SourceFile[]): readonly string[] => {
    models.take(files);
    return whole(models).findings.map(({ rule }) => rule);
  };
  expect(rules(settings, claims, others)).not.toContain("unknown-reference");
  expect(rules(settings, without, others)).toContain("unknown-reference");
  expect(models.now({}).model?.graph.records.has("by-posts")).toBe(false);
  expect(rules(settings, claims, others)).not.toContain("unknown-reference");
  expect(models.now({}).model?.graph.records.has("by-posts")).toBe(true);
});

test("an argument on one observation is silent as soon as that passes the thing over", () => {
  const others: readonly SourceFile[] = [
    { path: "corpus.yaml", text: "format: 1\ntitle: Rings\n" },
    {
      path: "a.yaml",
      text: "artefacts:\n  - { id: ring, name: The ring }\nclaims:\n  - { id: roofed, text: It was roofed }\narguments:\n  - { id: by-posts, because: [seen], therefore: roofed }\n",
    },
  ];
  const standing = (models: Models, present: string): string | undefined => {
    const text = `observations:\n  - { id: seen, of: [ring], text: Post-pipes, present: ${present} }\n`;
    models.take([...others, { path: "b.yaml", text }]);
    return models.now({}).model?.judgement.standings.get("roofed");
  };
  const models = modelsHere(emptyMemo());
  for (const present of ["true", "not-reported", "true"])
    expect(standing(models, present)).toBe(standing(modelsHere(emptyMemo()), present));
  expect(standing(models, "true")).not.toBe(standing(models, "not-reported"));
});

test("what is carried over an edit stands in the texts as they are, and is gone once all is known", () => {
  const models = modelsHere(emptyMemo());
  models.take(many);
  expect(models.shown({}, () => undefined)).toBe(null);
  const before = whole(models);
  const file = many.find(({ text }) => text.includes("measurements:") && /value: \d/.test(text));
  if (!file) throw new Error("no measurement");
  const text = `# One line more.\n${file.text.replace(/value: (\d+)/, "value: 1$1")}`;
  models.take(many.map((it) => (it === file ? { ...it, text } : it)));
  expect(models.shown({}, () => undefined)).toBe("meanwhile");
  const { model, findings } = models.now({});
  expect(findings.length).toBeGreaterThan(before.findings.length / 2);
  for (const { at, rule } of findings) {
    if (!at) continue;
    const now = model?.files.get(at.file) ?? "";
    expect(at.end, rule).toBeLessThanOrEqual(now.length);
    const was = before.findings.filter((it) => it.rule === rule && it.at?.file === at.file);
    const same = was.some((it) => textAt(before.model, it.at) === now.slice(at.start, at.end));
    if (at.file === file.path)
      expect(same || now.slice(at.start, at.end).includes("value: 1"), rule).toBe(true);
  }
  models.turns();
  expect(models.shown({}, () => undefined)).toBe("whole");
  expect(told(models.now({}))).toBe(
    told(build(models.now({}).model ? [...filesIn(models)] : [], plugins, emptyMemo())),
  );
});

test("when the settings change nothing is carried on: they may withhold what was said", () => {
  const models = modelsHere(emptyMemo());
  models.take(many);
  whole(models);
  const settings = many.map((it) =>
    it.path === "corpus.yaml" ? { ...it, text: `${it.text}withhold: []\n` } : it,
  );
  models.take(settings);
  expect(models.shown({}, () => undefined)).toBe(null);
});

test("nor where another record is withheld now than was", () => {
  const settings = { path: "corpus.yaml", text: "format: 1\ntitle: Rings\nwithhold: [barrow]\n" };
  const things = {
    path: "a.yaml",
    text: "artefacts:\n  - { id: barrow, name: The barrow }\n  - { id: ring, name: The ring }\n",
  };
  const seen = (of: string): SourceFile => ({
    path: "b.yaml",
    text: `measurements:\n  - { id: dug, of: ${of}, dimension: depth, value: 3 m }\n`,
  });
  const models = modelsHere(emptyMemo());
  models.take([settings, things, seen("ring")]);
  whole(models);
  models.take([settings, things, { ...seen("ring"), text: `# More.\n${seen("ring").text}` }]);
  expect(models.shown({}, () => undefined)).toBe("meanwhile");
  whole(models);
  models.take([settings, things, seen("barrow")]);
  expect(models.now({}).model?.graph.records.get("dug")?.values).toMatchObject({ of: "barrow" });
  expect(models.shown({}, () => undefined)).toBe(null);
});

function textAt(model: Model | null, at: Checked<Model>["findings"][number]["at"]): string | undefined {
  return at ? model?.files.get(at.file)?.slice(at.start, at.end) : undefined;
}

function filesIn(models: Models): readonly SourceFile[] {
  return [...(models.now({}).model?.files ?? [])].map(([path, text]) => ({ path, text }));
}
