import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";

// Nineteen block dimensions from Pakkanen 2002, Table 1; the expected values were computed outside this program.
const folder = fileURLToPath(new URL("../corpora/erechtheion", import.meta.url));

test("the blocks of the Erechtheion: a foot given, a free search, and a foot found in the same data", async () => {
  const { model, findings } = await evaluate(readCorpusFolder(folder), plugins, emptyMemo(), computingHere(plugins));
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  const of = (id: string) => model?.derivations.byId.get(id);

  const given = of("given");
  expect(given?.used).toHaveLength(19);
  expect(given?.numbers["p"]?.value).toBeGreaterThan(1.1e-4);
  expect(given?.numbers["p"]?.value).toBeLessThan(1.32e-4);
  expect(model?.judgement.standings.get("in-feet")).toBe("stands");

  const searched = of("searched")?.numbers;
  expect(searched?.["q"]?.value).toBeGreaterThan(0.162);
  expect(searched?.["q"]?.value).toBeLessThan(0.164);
  expect(searched?.["p"]?.value).toBeGreaterThan(0.005);
  expect(searched?.["p"]?.value).toBeLessThan(0.04);

  expect(of("found")).toMatchObject({ status: "refused", reason: "unit-from-these-data", numbers: {} });
});
