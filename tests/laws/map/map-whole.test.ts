import { expect, test } from "vitest";
import { mapPage } from "../../../src/show/map/page.ts";
import type { MapView } from "../../../src/show/map/scene.ts";
import { wholeWords } from "../../../src/show/map/whole.ts";
import { withheldIn } from "../../../src/show/withhold.ts";
import { demoFiles, modelOf, viewOf } from "./section-corpora.ts";

const model = modelOf(demoFiles);
const { graph } = model;

function wordsIn(view: Partial<MapView>) {
  const page = mapPage({ model, under: () => model }, viewOf(view));
  return { page, ...wholeWords(graph, page) };
}

test("every claim on the map has its whole text, however much of it the box shows", () => {
  const { page, whole } = wordsIn({});
  const claims = page.scene.boxes.filter((box) => box.look.as === "claim" || box.look.as === "answer");
  expect(claims.length).toBeGreaterThan(5);
  for (const { id, records } of claims) {
    const record = graph.records.get(records[0] ?? "");
    expect(record?.list).toBe("claims");
    if (record?.list === "claims") expect(whole[id]?.text).toBe(record.values.text);
  }
});

test("a focus is called by its name; one that is withheld, or unknown, by none", () => {
  const [claim] = graph.list("claims");
  expect(claim).toBeDefined();
  expect(wordsIn({ focus: claim?.id ?? "" }).focus).not.toBeNull();
  expect(wordsIn({ focus: "nobody-of-that-name" }).focus).toBeNull();
  const [hidden] = graph.settings.withhold;
  expect(hidden).toBeDefined();
  const { scene, view } = wordsIn({}).page;
  expect(wholeWords(graph, { scene, view: { ...view, focus: hidden ?? "" } }).focus).toBeNull();
});

test("nothing withheld, no exact place and no withheld place of finding is told", () => {
  const told = JSON.stringify(wordsIn({}).whole);
  const withheld = withheldIn(graph);
  const secrets = [
    ...[...graph.records.values()]
      .filter((one) => withheld(one.id))
      .flatMap((one) => ("name" in one.values ? [one.values.name] : [])),
    ...graph
      .list("artefacts")
      .flatMap(({ values }) => [
        ...(values.coordinates === undefined ? [] : [values.coordinates]),
        ...(values["withhold-location"] && values["found-at"] !== undefined ? [values["found-at"]] : []),
      ]),
  ].filter((text) => text !== undefined);
  expect(secrets.length).toBeGreaterThan(1);
  for (const secret of secrets) expect(told).not.toContain(secret);
});
