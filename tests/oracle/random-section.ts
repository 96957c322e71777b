import * as fc from "fast-check";
import { randomFrom } from "../../src/base/outcome/random.ts";
import type { Attack, Box, Line, Look, Port, Rivals, Section, Setting } from "../../src/show/map/scene.ts";

/** The shape of an invented section; shares are of one in a hundred. */
export interface Shape {
  readonly seed: number;
  readonly boxes: number;
  /** Ranks of claims over what was seen. */
  readonly ranks: number;
  readonly attacks: number;
  readonly rivals: number;
  readonly circles: number;
  /** How many of the lines lead over more than one rank. */
  readonly long: number;
  /** How far from straight below the premises lie, as a part of the whole row. */
  readonly scatter: number;
}

/** Shapes wide and deep, tidy and tangled. */
export function randomShape(least: number, most: number): fc.Arbitrary<Shape> {
  return fc.record({
    seed: fc.nat(1_000_000),
    boxes: fc.integer({ min: least, max: most }),
    ranks: fc.integer({ min: 1, max: 8 }),
    attacks: fc.integer({ min: 0, max: 40 }),
    rivals: fc.integer({ min: 0, max: 20 }),
    circles: fc.integer({ min: 0, max: 15 }),
    long: fc.integer({ min: 0, max: 40 }),
    scatter: fc.constantFrom(0.02, 0.1, 1),
  });
}

interface Draw {
  readonly below: (end: number) => number;
  readonly chance: (share: number) => boolean;
}

function drawFrom(seed: number): Draw {
  const { below } = randomFrom(seed);
  return { below, chance: (share) => below(100) < share };
}

/** A section like a dispute's: things, labels on them, claims on beams on what lies under them, attacks, rivals, circles. */
export function sectionOf(shape: Shape): Section {
  const draw = drawFrom(shape.seed);
  const claims = Math.max(1, Math.floor(shape.boxes / 4));
  const floors: Box[][] = [
    Array.from({ length: Math.max(1, Math.floor(claims / 3)) }, (_, at) => thing(at, draw)),
    Array.from({ length: Math.max(1, Math.floor(claims / 2)) }, (_, at) => label(at)),
  ];
  const lines: Line[] = [];
  const [things = [], labels = []] = floors;
  for (const [at, { id }] of labels.entries()) {
    const on = near(things, at / labels.length, shape.scatter, draw);
    if (on) lines.push(line(`on ${id}`, on.id, id));
  }
  const beams: Box[] = [];
  const ranks = Math.min(shape.ranks, claims);
  for (let rank = 1; rank <= ranks; rank++) {
    const count = Math.ceil(claims / ranks);
    const floor = Array.from({ length: count }, (_, at) => claim(rank, at, rank === ranks, draw));
    for (const [at, box] of floor.entries()) {
      if (beams.length + floors.flat().length >= shape.boxes) break;
      for (let beam = draw.below(3); beam >= 0; beam--) {
        beams.push(rest(box, beam, { at: at / count, floors, rank, shape, draw, lines }));
      }
    }
    floors.push(floor);
  }
  const boxes = [...floors.flat(), ...beams];
  const last = floors.at(-1) ?? [];
  return {
    boxes,
    lines: [...lines, ...circlesAmong(floors.slice(2).flat(), beams, shape, draw)],
    attacks: attacksAmong(beams, boxes, shape, draw),
    rivals: [
      ...groups("rivals", last, shape.rivals, draw),
      ...groups("distant", boxes, shape.rivals / 4, draw),
    ],
    conflicts: groups("conflict", labels, shape.rivals / 2, draw),
  };
}

interface Resting {
  readonly at: number;
  readonly floors: readonly (readonly Box[])[];
  readonly rank: number;
  readonly shape: Shape;
  readonly draw: Draw;
  readonly lines: Line[];
}

/** A beam under a claim on one to three premises, with its lines. */
function rest(claimed: Box, number: number, { at, floors, rank, shape, draw, lines }: Resting): Box {
  const id = `beam ${number} of ${claimed.id}`;
  const premises = new Set<string>();
  for (let count = 1 + draw.below(3); count > 0; count--) {
    const depth = draw.chance(shape.long) ? 1 + draw.below(rank) : 1;
    const premise = near(floors[rank + 1 - depth] ?? [], at, shape.scatter, draw);
    if (premise) premises.add(premise.id);
  }
  const names = [...premises];
  for (const name of names) lines.push(line(`${name} in ${id}`, name, id, name));
  lines.push({ ...line(id, id, claimed.id), from: { box: id, port: "up" } });
  return beam(id, claimed.row - 0.25, names, draw);
}

function near(floor: readonly Box[], at: number, scatter: number, draw: Draw): Box | undefined {
  const off = Math.floor((draw.below(1001) / 1000 - 0.5) * floor.length * scatter * 2 + draw.below(3) - 1);
  const place = Math.floor(at * floor.length) + off;
  return floor[Math.max(0, Math.min(floor.length - 1, place))];
}

function circlesAmong(
  claims: readonly Box[],
  beams: readonly Box[],
  shape: Shape,
  draw: Draw,
): readonly Line[] {
  return claims.flatMap((box): readonly Line[] => {
    const back = draw.chance(shape.circles) ? beams[draw.below(beams.length)] : undefined;
    return back ? [{ ...line(`back ${box.id}`, box.id, back.id), circle: true }] : [];
  });
}

function attacksAmong(
  beams: readonly Box[],
  boxes: readonly Box[],
  shape: Shape,
  draw: Draw,
): readonly Attack[] {
  return beams.flatMap((from): readonly Attack[] => {
    if (!draw.chance(shape.attacks)) return [];
    const close = beams[Math.min(beams.length - 1, beams.indexOf(from) + draw.below(4))];
    const to = draw.chance(70) ? close : boxes[draw.below(boxes.length)];
    return to ? [{ id: `attack of ${from.id}`, from: from.id, to: to.id }] : [];
  });
}

function groups(name: string, boxes: readonly Box[], share: number, draw: Draw): readonly Rivals[] {
  return boxes.flatMap((box, at): readonly Rivals[] => {
    if (!draw.chance(share)) return [];
    const others = boxes.slice(at + 1, at + 2 + draw.below(3)).map(({ id }) => id);
    return others.length > 0 ? [{ id: `${name} ${box.id}`, boxes: [box.id, ...others] }] : [];
  });
}

function line(id: string, from: string, to: string, port = ""): Line {
  return { id, from: { box: from, port: "" }, to: { box: to, port }, circle: false };
}

function setting(text: string): Setting {
  return { lines: [text], rtl: false, lang: "en" };
}

interface Outline {
  readonly id: string;
  readonly band: Box["band"];
  readonly row: number;
  readonly width: number;
  readonly height: number;
  readonly look: Look;
  readonly ports?: readonly Port[];
}

function box({ id, ports = [], ...rest }: Outline): Box {
  return { id, records: [id], title: `the ${id}`, folded: null, ports, ...rest };
}

function thing(at: number, draw: Draw): Box {
  const look: Look = { as: "thing", name: setting(`thing ${at}`), parts: [] };
  const width = 104 + 8 * draw.below(18);
  return box({ id: `thing ${at}`, band: "things", row: -1, width, height: 100 + 8 * draw.below(8), look });
}

function label(at: number): Box {
  const id = `label ${at}`;
  const look: Look = {
    as: "pile",
    labels: [{ id, value: "0.84 m", under: "1998" }],
    count: 1,
    conflict: false,
  };
  return box({ id, band: "seen", row: 0, width: 136, height: 44, look });
}

function claim(rank: number, at: number, isAnswer: boolean, draw: Draw): Box {
  const id = `claim ${rank}.${at}`;
  const text = setting(`what ${id} says`);
  const look: Look = { as: isAnswer ? "answer" : "claim", text, short: text, hangs: draw.chance(5) };
  const band = isAnswer ? "answers" : "claims";
  return box({ id, band, row: rank, width: isAnswer ? 320 : 280, height: 46 + 21 * draw.below(3), look });
}

function beam(id: string, row: number, premises: readonly string[], draw: Draw): Box {
  const length = 24 * Math.max(1, premises.length);
  const tick = premises.length === 1 && draw.chance(50);
  const ports: readonly Port[] = premises.map((name, at) => ({
    name,
    edge: "bottom",
    from: 24 * at,
    to: 24 * at + 24,
  }));
  const up: Port = { name: "up", edge: "top", from: 0, to: length };
  const look: Look = { as: "beam", length, words: setting(tick ? "" : "from the plan"), tick };
  const width = length + (tick ? 0 : 60 + 8 * draw.below(8));
  return box({ id, band: "claims", row, width, height: 24, look, ports: [...ports, up] });
}
