import { afterEach, expect, test } from "vitest";
import { fill, graphIn, tiesOf } from "../../../src/app/map/stage/graph.ts";
import { boxAlong } from "../../../src/app/map/stage/ways.ts";
import { layOut } from "../../../src/show/map/layout/layout.ts";
import type { Scene, Section } from "../../../src/show/map/scene.ts";
import { sectionOf } from "../../oracle/random-section.ts";

const shape = { ranks: 5, attacks: 30, rivals: 10, circles: 0, long: 30, scatter: 0.1 };
const sections = [12, 60, 300].map((boxes) => sectionOf({ ...shape, boxes, seed: boxes }));
const graph = graphIn(null);

afterEach(() => {
  graph.elements().remove();
});

/** The ties as the section has them, before any line is cut. */
function tiesBefore({ lines, attacks, boxes }: Section): readonly string[] {
  const known = new Set(boxes.map((box) => box.id));
  return [
    ...lines.map(({ from, to }) => ["support", from.box, to.box]),
    ...attacks.map(({ from, to }) => ["attack", from, to]),
  ]
    .filter(([, from = "", to = ""]) => from !== to && known.has(from) && known.has(to))
    .map((tie) => tie.join(" > "));
}

test.each(sections)(
  "every line and attack of a section is a tie of its graph, also where it is cut",
  (section) => {
    const ties = tiesOf(layOut(section)).map(({ way, source, target }) => `${way} > ${source} > ${target}`);
    expect(new Set(ties)).toEqual(new Set(tiesBefore(section)));
    expect(ties.length).toBe(new Set(ties).size);
  },
);

test.each(sections)("keys lead along the lines, and along the row and back", (section) => {
  const scene = layOut(section);
  fill(graph, scene);
  const boxes = new Map(scene.boxes.map((box) => [box.id, box]));
  const ties = new Set(tiesBefore(section));
  for (const { id, row, x, width } of section.boxes.map((box) => boxes.get(box.id) ?? fail(box.id))) {
    const [up, down] = [boxAlong(graph, id, "up"), boxAlong(graph, id, "down")];
    const [on, from] = [boxAlong(graph, id, "attack on"), boxAlong(graph, id, "attack from")];
    expect(up === null || ties.has(`support > ${id} > ${up}`), `up from ${id}`).toBe(true);
    expect(down === null || ties.has(`support > ${down} > ${id}`), `down from ${id}`).toBe(true);
    expect(on === null || ties.has(`attack > ${on} > ${id}`), `the attack on ${id}`).toBe(true);
    expect(from === null || ties.has(`attack > ${id} > ${from}`), `the attack from ${id}`).toBe(true);
    const right = boxAlong(graph, id, "right");
    if (right === null) expect(boxAlong(graph, id, "last")).toBeNull();
    else {
      const other = boxes.get(right) ?? fail(right);
      expect(other.row).toBe(row);
      expect(other.x + other.width / 2).toBeGreaterThanOrEqual(x + width / 2);
      expect(boxAlong(graph, right, "left")).toBe(id);
    }
  }
  const led = section.boxes.filter((box) => boxAlong(graph, box.id, "up") === null).map((box) => box.id);
  const supporting = new Set(section.lines.map((line) => line.from.box));
  expect(led.filter((id) => supporting.has(id))).toEqual([]);
});

test("a scene that takes another's place leaves nothing of it behind", () => {
  const [first, second] = sections.map((section): Scene => layOut(section));
  if (!first || !second) throw new Error("Missing sections, expected two");
  fill(graph, first);
  fill(graph, second);
  expect(
    graph
      .nodes()
      .map((node) => node.id())
      .toSorted(),
  ).toEqual(second.boxes.map((box) => box.id).toSorted());
  expect(graph.edges().length).toBe(tiesOf(second).length);
  for (const { id, x, width } of second.boxes) {
    expect(graph.getElementById(id).position("x")).toBe(x + width / 2);
  }
});

function fail(id: string): never {
  throw new Error(`Missing ${id}, expected it among the boxes`);
}
