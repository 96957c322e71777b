import { beforeEach, describe, expect, test } from "vitest";
import { aboutBox, marksOf, withTurned } from "../../../src/app/map/arguing/boxes.ts";
import { takeLine } from "../../../src/app/map/arguing/drawn.ts";
import { changeInHand, inHand, letGo } from "../../../src/app/map/arguing/hand.ts";
import { waysFor } from "../../../src/app/map/arguing/ways.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { against, leadingTo, nothingInHand, withPremise } from "../../../src/show/map/arguing/draft.ts";
import { inHandTold } from "../../../src/show/map/arguing/told.ts";
import { rememberedTried } from "../../../src/show/map/arguing/trial.ts";
import { mapPage } from "../../../src/show/map/page.ts";
import type { PlacedBox } from "../../../src/show/map/scene.ts";
import { plugins } from "../../../plugins/index.ts";
import { modelOf, viewOf } from "./section-corpora.ts";

const files = [
  { path: "corpus.yaml", text: "title: T\n" },
  {
    path: "all.yaml",
    text: JSON.stringify({
      artefacts: [{ id: "ring", name: "The ring" }],
      questions: [{ id: "q", text: "What was it?", answers: ["roofed", "open"] }],
      claims: [
        { id: "roofed", text: "It was roofed." },
        { id: "open", text: "It stood open." },
      ],
      observations: [
        { id: "daub", of: "ring", text: "Daub lay in it.", feature: "daub", basis: "autopsy" },
        { id: "grass", of: "ring", text: "Grass grew in it.", feature: "grass", basis: "report" },
      ],
      arguments: [
        { id: "by-daub", because: "daub", therefore: "roofed" },
        { id: "by-grass", because: "grass", therefore: "open", strength: "weak" },
      ],
    }),
  },
];
const memo = emptyMemo();
const model = modelOf(files, plugins, {}, memo);
const page = mapPage({ model, under: () => model }, viewOf({ question: "q" }));

function boxOf(record: string): PlacedBox {
  const found = page.scene.boxes.find((box) => aboutBox(box) !== null && box.records.includes(record));
  if (!found) throw new Error(`Missing ${record}, expected it on the map`);
  return found;
}

describe("the map under an argument in hand", () => {
  const draft = against(withPremise(nothingInHand, "grass"), "roofed", true);
  const ground = { files, read: memo.read, graph: model.graph, model };
  const { turned } = inHandTold(ground, draft, rememberedTried());

  test("shows the standings that would be others, and moves nothing", () => {
    const shown = withTurned(page, turned);
    expect(shown.scene).toBe(page.scene);
    expect(model.judgement.standings.get("roofed")).toBe("stands");
    expect(shown.states[boxOf("roofed").id]).toMatchObject({ standing: "open", was: "stands" });
    const others = Object.keys(page.states).filter((id) => !turned?.some((one) => one.id === id));
    for (const id of others) expect(shown.states[id]).toBe(page.states[id]);
    expect(withTurned(page, [])).toBe(page);
    expect(withTurned(page, null)).toBe(page);
  });

  test("marks its premises, and what it leads to or is against", () => {
    const [grass, roofed, open] = ["grass", "roofed", "open"].map((id) => boxOf(id).id);
    expect(marksOf(page.scene, draft)).toEqual({ premises: [grass], conclusion: null, attacked: [roofed] });
    expect(marksOf(page.scene, leadingTo(draft, "open")).conclusion).toBe(open);
  });
});

describe("a line drawn from box to box", () => {
  beforeEach(letGo);
  const draft = () => inHand()?.draft;

  test("up to a conclusion is a premise for it; a second joins the first, another conclusion is another argument", () => {
    takeLine(boxOf("daub"), "top", boxOf("open"));
    takeLine(boxOf("grass"), "top", boxOf("open"));
    expect(draft()).toMatchObject({ because: ["daub", "grass"], aim: { to: "claim", id: "open" } });
    takeLine(boxOf("grass"), "top", boxOf("roofed"));
    expect(draft()).toMatchObject({ because: ["grass"], aim: { to: "claim", id: "roofed" } });
  });

  test("from a side is against a claim, an argument or what was seen", () => {
    takeLine(boxOf("grass"), "side", boxOf("daub"));
    takeLine(boxOf("grass"), "side", boxOf("by-daub"));
    expect(draft()).toMatchObject({ because: ["grass"], aim: { to: "against", ids: ["by-daub"] } });
    takeLine(boxOf("daub"), "side", boxOf("open"));
    expect(draft()).toMatchObject({ because: ["daub"], aim: { ids: ["open"], claim: true } });
  });

  test("leads nowhere where no argument could", () => {
    takeLine(boxOf("daub"), "top", boxOf("grass"));
    const ring = page.scene.boxes.find((box) => box.look.as === "thing");
    if (ring) takeLine(boxOf("daub"), "side", ring);
    expect([ring?.look.as, draft()]).toEqual(["thing", undefined]);
  });
});

test("what can be done with a record follows from its kind and from what is in hand", () => {
  letGo();
  const claim = { id: "open", list: "claims", answer: true } as const;
  expect(waysFor(claim, null).map(({ key }) => key)).toEqual(["p", "t", "x", "n"]);
  expect(waysFor({ id: "ring", list: "artefacts", answer: false }, null)).toEqual([]);
  expect(waysFor({ id: "by-daub", list: "arguments", answer: false }, null).map(({ key }) => key)).toEqual([
    "p",
    "x",
  ]);
  changeInHand((one) => leadingTo(one, "open"));
  const on = waysFor(claim, inHand()?.draft ?? null).filter((way) => way.on === true);
  expect(on.map(({ key }) => key)).toEqual(["t"]);
});
