import { expect, test } from "vitest";
import { layOut } from "../../../src/show/map/layout/layout.ts";
import type {
  Attack,
  BandName,
  Box,
  Line,
  Look,
  Rivals,
  Scene,
  Section,
} from "../../../src/show/map/scene.ts";

const words = (text: string) => ({ lines: [text], rtl: false, lang: null });

const claimLook: Look = { as: "claim", text: words("a claim"), short: words("a claim"), hangs: false };

function box(id: string, row: number, look: Look, [width, height]: readonly [number, number]): Box {
  const bands: Readonly<Record<string, BandName>> = { thing: "things", pile: "seen", answer: "answers" };
  const band = bands[look.as] ?? "claims";
  return { id, records: [id], title: `the ${id}`, band, row, width, height, ports: [], folded: null, look };
}

const claim = (id: string, row = 1, hangs = false): Box => box(id, row, { ...claimLook, hangs }, [280, 60]);
const answer = (id: string): Box => box(id, 4, { ...claimLook, as: "answer" }, [320, 66]);
const thing = (id: string): Box =>
  box(id, -1, { as: "thing", name: words(id), parts: [] }, [160, id === "deep" ? 160 : 100]);
const pile = (id: string): Box =>
  box(id, 0, { as: "pile", labels: [], count: 1, conflict: false }, [136, 44]);
const beam = (id: string, row: number): Box =>
  box(id, row, { as: "beam", length: 24, words: words("from the plan"), tick: false }, [120, 24]);

const line = (from: string, to: string, circle = false): Line => ({
  id: `${from} to ${to}`,
  from: { box: from, port: "" },
  to: { box: to, port: "" },
  circle,
});

interface Parts {
  readonly lines?: readonly Line[];
  readonly attacks?: readonly Attack[];
  readonly rivals?: readonly Rivals[];
  readonly conflicts?: readonly Rivals[];
}

function section(boxes: readonly Box[], parts: Parts): Section {
  return { boxes, lines: [], attacks: [], rivals: [], conflicts: [], ...parts };
}

const placed = (scene: Scene, id: string) => scene.boxes.find((one) => one.id === id)!;
const middle = ({ x, width }: { readonly x: number; readonly width: number }): number => x + width / 2;
const marksIn = (scene: Scene) =>
  scene.boxes.flatMap(({ look }) =>
    look.as === "mark" ? [`${look.letter}: ${look.words.lines.join(" ")}`] : [],
  );

test("what rests on one thing stands over it, its lines straight", () => {
  const boxes = [thing("posts"), pile("depth"), beam("step", 0.75), claim("shallow"), thing("deep")];
  const lines = [line("posts", "depth"), line("depth", "step"), line("step", "shallow")];
  const scene = layOut(section(boxes, { lines }));
  for (const { points } of scene.routes) expect(points).toHaveLength(2);
  expect(placed(scene, "posts").x).toBeLessThan(placed(scene, "deep").x);
});

test("things hang from the turf line, all else stands on its row", () => {
  const scene = layOut(section([thing("posts"), thing("deep"), pile("depth"), claim("a"), claim("b")], {}));
  for (const id of ["posts", "deep"]) expect(placed(scene, id).y).toBe(scene.ground);
  expect(scene.bands.map(({ name }) => name)).toEqual(["claims", "seen", "things"]);
  for (const [at, band] of scene.bands.entries()) {
    expect(band.bottom).toBe(scene.bands[at + 1]?.top ?? scene.height);
    for (const one of scene.boxes.filter(({ band: name }) => name === band.name)) {
      expect(one.y).toBeGreaterThanOrEqual(band.top);
      expect(one.y + one.height).toBeLessThanOrEqual(band.bottom);
    }
  }
  expect(scene.bands.find(({ name }) => name === "things")?.top).toBe(scene.ground);
});

test("between ranks of claims runs a hairline, none between a beam and what it bears", () => {
  const boxes = [claim("low", 1), beam("step", 1.75), claim("high", 2)];
  const scene = layOut(section(boxes, { lines: [line("low", "step"), line("step", "high")] }));
  const [band] = scene.bands;
  expect(band?.hairlines).toHaveLength(1);
  const [height = 0] = band?.hairlines ?? [];
  expect(height).toBeLessThan(placed(scene, "low").y);
  expect(height).toBeGreaterThan(placed(scene, "step").y + 24);
});

test("beams hang 24 px under what they bear, side by side about its middle", () => {
  const beams = ["one", "two"].map((id) => beam(id, 1.75));
  const boxes = [claim("a", 1), claim("b", 1), ...beams, claim("top", 2)];
  const lines = [line("a", "one"), line("b", "two"), line("one", "top"), line("two", "top")];
  const scene = layOut(section(boxes, { lines }));
  const top = placed(scene, "top");
  for (const { id } of beams) {
    expect(placed(scene, id).y).toBe(top.y + top.height + 24);
    expect(Math.abs(middle(placed(scene, id)) - middle(top))).toBeLessThan(140);
  }
});

test("an attack on the neighbour runs level, from side to 6 px before the side", () => {
  const boxes = [beam("one", 1.5), beam("two", 1.5)];
  const scene = layOut(section(boxes, { attacks: [{ id: "no", from: "two", to: "one" }] }));
  const [left, right] = [placed(scene, "one"), placed(scene, "two")];
  const y = left.y + 12;
  expect(scene.attacks.map(({ points }) => points)).toEqual([
    [
      { x: right.x, y },
      { x: left.x + left.width + 6, y },
    ],
  ]);
});

test("two that attack each other do not run over each other, nor do their bars", () => {
  const boxes = [beam("one", 1.5), claim("two", 1.5)];
  const attacks = [
    { id: "no", from: "one", to: "two" },
    { id: "nay", from: "two", to: "one" },
  ];
  const heights = layOut(section(boxes, { attacks })).attacks.map(({ points }) => points.map(({ y }) => y));
  expect(heights.every(([from, to]) => from === to)).toBe(true);
  expect(new Set(heights.map(([from]) => from)).size).toBe(2);
});

test("rivals of one row have one bow over all of them, its crown above the highest", () => {
  const ids = ["a", "b", "c"];
  const scene = layOut(section(ids.map(answer), { rivals: [{ id: "either", boxes: ids }] }));
  const [bow, ...others] = scene.bows;
  expect(others).toEqual([]);
  expect(bow?.boxes).toHaveLength(3);
  expect(bow?.crown).toBeLessThan(Math.min(...ids.map((id) => placed(scene, id).y)));
  expect(marksIn(scene)).toEqual([]);
});

test("rivals stand side by side, where nothing else tells them from the others", () => {
  const ids = ["a", "b", "c", "d"];
  const scene = layOut(section(ids.map(answer), { rivals: [{ id: "either", boxes: ["a", "d"] }] }));
  expect(Math.abs(placed(scene, "a").x - placed(scene, "d").x)).toBe(360);
});

test("rivals of two rows name each other in marks", () => {
  const scene = layOut(
    section([claim("low", 1), claim("high", 2)], { rivals: [{ id: "either", boxes: ["low", "high"] }] }),
  );
  expect(scene.bows).toEqual([]);
  expect(marksIn(scene)).toEqual(["A: not both: the high", "A: not both: the low"]);
  expect(scene.routes.map(({ kind }) => kind)).toEqual(["rivals", "rivals"]);
});

test("measurements in conflict are joined level, side to side", () => {
  const scene = layOut(
    section([pile("a"), pile("b")], { conflicts: [{ id: "surveys", boxes: ["a", "b"] }] }),
  );
  const [left, right] = [placed(scene, "a"), placed(scene, "b")];
  const y = left.y + 22;
  expect(scene.bows).toEqual([
    {
      id: "surveys",
      kind: "conflict",
      boxes: ["a", "b"],
      from: { x: left.x + 136, y },
      to: { x: right.x, y },
      crown: y,
    },
  ]);
});

test("a line that closes a circle is cut, with a stub of 40 px at least at either end", () => {
  const boxes = [claim("low", 1), beam("step", 1.75), claim("high", 2)];
  const lines = [line("low", "step"), line("step", "high"), line("high", "low", true)];
  const scene = layOut(section(boxes, { lines }));
  expect(marksIn(scene)).toEqual(["A: circle: the low", "A: circle: the high"]);
  const stubs = scene.routes.filter(({ line: id }) => id === "high to low");
  expect(stubs).toHaveLength(2);
  for (const { points } of stubs) expect(points[0]!.y - points.at(-1)!.y).toBeGreaterThanOrEqual(40);
});

test("a line over more than a screen is cut; several from one end share its mark and letter", () => {
  const row = Array.from({ length: 24 }, (_, at) => pile(`label ${at}`));
  const lines = row.map(({ id }) => line("posts", id));
  const scene = layOut(section([thing("posts"), ...row], { lines }));
  const marks = marksIn(scene);
  const shared = marks.filter((mark) => mark.includes("+"));
  expect(shared).toHaveLength(1);
  expect(shared[0]).toMatch(new RegExp(`^A: the label \\d+ \\+${marks.length - 2}$`));
  expect(marks.filter((mark) => mark === "A: the posts")).toHaveLength(marks.length - 1);
});

test("under a claim that hangs there is room for its tail", () => {
  const scene = layOut(section([pile("depth"), claim("held"), claim("hangs", 1, true)], {}));
  const { y, height } = placed(scene, "hangs");
  expect(placed(scene, "depth").y - y - height).toBeGreaterThanOrEqual(40);
});

test("an empty section is an empty scene", () => {
  const scene = layOut(section([], {}));
  expect([scene.boxes, scene.routes, scene.attacks, scene.bows, scene.bands]).toEqual([[], [], [], [], []]);
  expect(Number.isFinite(scene.width) && Number.isFinite(scene.height)).toBe(true);
});

test("a line to a box that is not there is our own mistake, and told", () => {
  expect(() => layOut(section([claim("a")], { lines: [line("a", "gone")] }))).toThrow("gone");
});
