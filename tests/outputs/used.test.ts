import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import type { Model } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import type { Told } from "../../src/host/telling/kind.ts";
import { kinds } from "../../src/host/telling/kinds.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { dispute, errorsOf, modelOf, register, written } from "../laws/reading/use-cases.ts";

const place = mkdtempSync(join(tmpdir(), "variorum-used-"));
const folder = join(place, "post-rings");
const made = new Map<string, string>();
let model: Model;

beforeAll(async () => {
  written(join(place, "merrow-register"), register);
  written(folder, {
    ...dispute,
    "seen.yaml":
      "observations:\n  - { id: rim, of: down/trench-9/sherd, text: A rim in the ninth., from: down/hale-1896 p. 1 }\n" +
      "claims:\n  - { id: pots, text: Pots were buried here., about: [down/trench-9, down/ring-b] }\n",
  });
  const files = readCorpusFolder(folder);
  const memo = emptyMemo();
  const under: Told["under"] = (lens, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens, reach });
  const { model: one, findings } = await under({}, { plan: true });
  if (!one) throw new Error("no model");
  model = one;
  const told: Told = { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
  for (const [name, format] of [
    ["review", "md"],
    ["tables", "csv"],
    ["data", "zip"],
  ] as const) {
    const kind = await kinds[name]?.();
    const files = await kind?.make(told, format, name, {});
    if (!files || "refused" in files) throw new Error(files ? inEnglish(files.refused) : `no ${name}`);
    for (const { path, content } of files)
      made.set(`${name}: ${path}`, Buffer.from(content as string).toString());
  }
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

test("what the other corpus withholds is in no output, and no exact place", () => {
  const secret = ["trench-9", "ninth", "A sherd of the trench", "51.23", "The secret field"];
  expect(made.size).toBeGreaterThan(10);
  for (const [path, text] of made)
    for (const word of secret) expect(text.includes(word), `${path} has ${word}`).toBe(false);
  expect(made.get("data: corpus/artefacts.yaml")).toContain("The north slope");
});

test("of the bibliography that is used, references name what is cited alone", () => {
  const review = [...made].find(([path]) => path.startsWith("review: "))?.[1] ?? "";
  expect(review).toContain("The Rings");
  expect(review).not.toMatch(/Down and barrow/i);
});

test("the corpus that is given out is whole by itself, and says whose its things are", () => {
  const given = [...made].flatMap(([name, text]) => {
    const path = name.startsWith("data: corpus/") ? name.slice("data: corpus/".length) : null;
    return path === null ? [] : [{ path, text }];
  });
  expect(given.map(({ path }) => path).filter((path) => path.includes(".."))).toEqual([]);
  expect(errorsOf(given)).toEqual([]);
  const again = modelOf(given);
  expect(again.graph.companions).toEqual([]);
  expect(again.graph.records.get("down/ring-a")?.values).toMatchObject({ name: "Ring A" });
  expect(again.graph.sources.get("down/vane-1968")?.label).toBe(
    model.graph.sources.get("down/vane-1968")?.label,
  );
  expect([...again.judgement.standings].filter(([id]) => id !== "pots")).toEqual(
    [...model.judgement.standings].filter(([id]) => again.graph.records.has(id) && id !== "pots"),
  );
  expect(again.restsOn).toEqual(model.restsOn);
  expect(made.get("data: README.md")).toContain(
    "“The Merrow register”. What may be done with it is said there: CC-BY-4.0.",
  );
});
