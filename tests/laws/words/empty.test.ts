import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import { empty } from "../../../src/app/words/shown/empty.ts";

test("the lines that empty pages teach, put into one folder, are a corpus without an error", () => {
  const records = Object.values(empty).map(({ lines }) => lines);
  const setup = /# corpus\.yaml\n(bibliography: .*)\n/;
  const line = records.map((text) => setup.exec(text)?.[1]).find((one) => one !== undefined);
  expect(line).toBeDefined();
  const files = [
    { path: "corpus.yaml", text: `format: 1\ntitle: Taught\n${line}\n` },
    { path: "sources.bib", text: "@book{vane-1968, author = {Ada Vane}, title = {Rings}, year = 1968}\n" },
    ...records.map((text, place) => ({ path: `taught-${place}.yaml`, text: text.replace(setup, "") })),
  ];
  const { model, findings } = build(files, plugins, { read: new Map(), compute: new Map() });
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  expect(model?.judgement.standings.get("roofed")).toBe("stands");
  expect(model?.judgement.standings.get("open-ring")).toBe("unsupported");
});
