import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { drawnPlates } from "../../../src/host/telling/text/drawn.ts";
import { setText } from "../../../src/write/telling/set/set.ts";
import { referencesFor, square } from "./manuscript-cases.ts";

const corpus = `format: 1
title: Pictures
withhold: [second]
`;
const things = `artefacts:
  - { id: first, name: the first peg }
  - { id: second, name: the second peg }
images:
  - { id: shown, of: first, file: images/shown.png, kind: photograph, publish: true }
  - { id: kept, of: first, file: images/kept.png, kind: photograph }
  - { id: hidden, of: second, file: images/hidden.png, kind: photograph, publish: true }
`;
const names = ["shown", "kept", "hidden", "nobodys"];
let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "variorum-pictures-"));
  mkdirSync(join(folder, "images"));
  for (const name of names) writeFileSync(join(folder, "images", `${name}.png`), square.raster?.bytes ?? "");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("only pictures that may be published, of things that are not withheld, come into a text", async () => {
  const files = [
    { path: "corpus.yaml", text: corpus },
    { path: "things.yaml", text: things },
  ];
  const { model, findings } = build(files, [], emptyMemo());
  if (!model) throw new Error("the corpus cannot be read");
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  const plate = (file: string) =>
    ({ is: "plate", picture: { is: "image", file, credit: null }, caption: ["c"], alt: "a" }) as const;
  const blocks = [...names.map((name) => plate(`images/${name}.png`)), plate("images/missing.png")];
  const set = setText(
    { title: "T", authors: [], language: "en", computations: [], blocks },
    await referencesFor("antiquity"),
  );
  const drawn = await drawnPlates({ folder, model }, set, true);
  expect([...drawn.keys()]).toEqual([1]);
  expect(drawn.get(1)?.raster?.type).toBe("png");
});
