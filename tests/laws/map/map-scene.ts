import { broken } from "../../../src/show/map/letters/letters.ts";
import type { BoxState, Look, PlacedBox, Route, Scene, Setting } from "../../../src/show/map/scene.ts";

/** A text as it is set. */
export function setting(
  text: string,
  { width = 256, size = 16, lang = "en", rtl = false, lines = 3, weight = 400 as 400 | 600 } = {},
): Setting {
  return { lines: broken(text, { face: "serif", size, weight, width, lines }), rtl, lang };
}

const short = (text: string, lang = "en", rtl = false): Setting => ({ lines: [text], rtl, lang });

function box(id: string, band: PlacedBox["band"], at: readonly number[], look: Look, title = id): PlacedBox {
  const [x = 0, y = 0, width = 0, height = 0] = at;
  return { id, records: [id], title, band, row: 0, x, y, width, height, ports: [], folded: null, look };
}

const answer = (id: string, x: number, text: string): PlacedBox =>
  box(
    id,
    "answers",
    [x, 50, 320, 36 + 24 * setting(text, { width: 296, size: 18, weight: 600 }).lines.length],
    {
      as: "answer",
      text: setting(text, { width: 296, size: 18, weight: 600 }),
      short: short(text),
      hangs: false,
    },
    text,
  );

const claim = (id: string, x: number, text: string, hangs = false): PlacedBox =>
  box(
    id,
    "claims",
    [x, 232, 280, 36 + 21 * setting(text).lines.length],
    { as: "claim", text: setting(text), short: short(text), hangs },
    text,
  );

const beam = (id: string, x: number, y: number, length: number, words: readonly string[]): PlacedBox =>
  box(
    id,
    "claims",
    [x, y, length + 150, 16 * words.length],
    { as: "beam", length, words: { lines: words, rtl: false, lang: "en" }, tick: false },
    words.join(" "),
  );

const pile = (
  id: string,
  x: number,
  labels: readonly (readonly [string, string])[],
  more: { readonly count?: number; readonly conflict?: boolean } = {},
): PlacedBox => {
  const behind = Math.min(3, Math.max(labels.length, more.count ?? 1)) - 1;
  return box(id, "seen", [x, 500 - 4 * behind, 136 + 4 * behind, 44 + 4 * behind], {
    as: "pile",
    labels: labels.map(([value, under], n) => ({ id: `${id}-${n}`, value, under })),
    count: more.count ?? labels.length,
    conflict: more.conflict ?? false,
  });
};

const arabic = "الحلقة الداخلية كانت مسقوفة";
const greek = "Ὁ κύκλος ὁ ἐντὸς ἀνοικτὸς ἦν.";

const boxes: readonly PlacedBox[] = [
  answer("roofed", 40, "The inner ring carried a roof."),
  answer("open-ring", 620, "The inner ring stood open."),
  answer("windbreak", 1020, "It was a windbreak, roofed on one side."),
  beam("by-experiment", 164, 150, 48, ["by experiment,", "Lindqvist 2021"]),
  beam("against-step", 492, 150, 24, ["against this step:", "Ferrant 1951"]),
  beam("from-absence", 768, 150, 24, ["from absence, Hale 1896"]),
  claim("could-bear", 40, "The posts could bear the span of a roof."),
  claim("too-shallow", 360, "Posts 7–11 are too shallow, at 0.58 m, to bear −4 kN from above."),
  { ...claim("no-fire", 680, "No fire burned inside."), folded: "12 claims, 2 fall, 1 hangs" },
  claim("later-roof", 1000, "A later roof.", true),
  claim("arabic", 1320, arabic),
  claim("greek", 1640, greek),
  beam("by-function", 164, 346, 24, ["by function, Oyelaran 2004"]),
  beam("from-the-plan", 492, 346, 24, ["from the plan"]),
  beam("looked-for", 768, 346, 24, ["looked for, 1998"]),
  box("span", "computed", [112, 408, 176, 48], {
    as: "number",
    value: "span 6.1–7.4 m",
    under: "scaling, from depth",
  }),
  pile("depth", 60, [["0.84 m deep", "1998, on site"]]),
  pile(
    "depths",
    236,
    [
      ["0.97 ± 0.04 m", "1998, on site"],
      ["0.95 m", "1998, on site"],
      ["0.91 m", "1998, on site"],
    ],
    { conflict: true },
  ),
  pile("plan", 440, [["0.58–0.66 m", "1937, from a plan"]]),
  pile("burnt", 712, [["no burnt earth", "1998, looked for"]]),
  pile("diameters", 1000, [["24 diameters", "0.97–7.41 m, 1998"]], { count: 24 }),
  box("more", "claims", [1320, 346, 150, 24], {
    as: "fold",
    words: { lines: ["4 more arguments"], rtl: false, lang: "en" },
  }),
  box("mark-a", "claims", [1500, 346, 170, 20], {
    as: "mark",
    letter: "A",
    words: { lines: ["daub never reported"], rtl: false, lang: "en" },
    to: "no-fire",
    collision: null,
  }),
  thing("posts-1-6", 52, 130, 120, ["posts 1–6"]),
  thing("posts-7-11", 270, 180, 160, ["posts 7–11"]),
  thing("centre", 720, 124, 92, ["centre"]),
  thing("ring-b", 1000, 240, 150, ["outer ring"], true),
];

function thing(
  id: string,
  x: number,
  width: number,
  height: number,
  lines: string[],
  parts = false,
): PlacedBox {
  const name: Setting = { lines, rtl: false, lang: "en" };
  const part = (
    n: number,
  ): { id: string; name: Setting; x: number; y: number; width: number; height: number } => ({
    id: `${id}/hole-${n}`,
    name: { lines: [`hole ${n}`], rtl: false, lang: "en" },
    x: 26 + 66 * (n - 1),
    y: 52,
    width: 56,
    height: 64,
  });
  return box(
    id,
    "things",
    [x, 616, width, height],
    {
      as: "thing",
      name,
      parts: parts ? [part(1), part(2), part(3)] : [],
    },
    lines.join(" "),
  );
}

function route(line: string, from: string, to: string, ...flat: readonly number[]): Route {
  const points = flat.flatMap((x, n) => (n % 2 === 0 ? [{ x, y: flat[n + 1] ?? 0 }] : []));
  return { line, from, to, points };
}

/** A small map by hand, after a drawing of intent: every kind of box, several scripts, a minus sign. */
export const scene: Scene = {
  width: 1960,
  height: 800,
  ground: 616,
  bands: [
    { name: "answers", top: 10, bottom: 130, hairlines: [] },
    { name: "claims", top: 130, bottom: 392, hairlines: [] },
    { name: "computed", top: 392, bottom: 472, hairlines: [] },
    { name: "seen", top: 472, bottom: 580, hairlines: [] },
    { name: "things", top: 616, bottom: 800, hairlines: [] },
  ],
  boxes,
  routes: [
    route("l1", "by-experiment", "roofed", 188, 150, 188, 110),
    route("l2", "could-bear", "by-experiment", 176, 232, 176, 170),
    route("l3", "from-absence", "open-ring", 780, 150, 780, 110),
    route("l4", "no-fire", "from-absence", 780, 232, 780, 170),
    route("l5", "too-shallow", "against-step", 504, 232, 504, 170),
    route("l6", "by-function", "could-bear", 176, 346, 176, 314),
    route("l7", "span", "by-function", 176, 408, 176, 366),
    route("l8", "from-the-plan", "too-shallow", 504, 346, 504, 314),
    route("l9", "plan", "from-the-plan", 504, 500, 504, 366),
    route("l10", "looked-for", "no-fire", 780, 346, 780, 314),
    route("l11", "burnt", "looked-for", 780, 500, 780, 366),
    route("l12", "depth", "span", 120, 500, 120, 478, 150, 478, 150, 458),
    route("l13", "depths", "span", 300, 492, 300, 478, 230, 478, 230, 458),
    route("l14", "posts-1-6", "depth", 117, 616, 117, 544),
    route("l15", "posts-7-11", "depths", 340, 616, 340, 580, 300, 580, 300, 544),
    route("l16", "posts-7-11", "plan", 380, 616, 380, 580, 504, 580, 504, 544),
    route("l17", "centre", "burnt", 780, 616, 780, 544),
    route("l18", "ring-b", "diameters", 1070, 616, 1070, 544),
    route("l19", "mark-a", "arabic", 1585, 346, 1585, 330, 1460, 330, 1460, 314),
  ],
  attacks: [route("a1", "against-step", "by-experiment", 492, 160, 404, 160)],
  bows: [
    {
      id: "rivals",
      kind: "rivals",
      boxes: ["roofed", "open-ring"],
      from: { x: 364, y: 64 },
      to: { x: 616, y: 64 },
      crown: 40,
    },
    {
      id: "surveys",
      kind: "conflict",
      boxes: ["depths", "plan"],
      from: { x: 384, y: 522 },
      to: { x: 436, y: 522 },
      crown: 522,
      words: "two surveys disagree",
    },
  ],
};

/** A state in ink, with what differs. */
export function state(more: Partial<BoxState>): BoxState {
  return { standing: null, said: "", later: false, was: null, lit: true, ...more };
}

/** How its boxes stand. */
export const states: Readonly<Record<string, BoxState>> = {
  roofed: state({ standing: "open", said: "open · Oyelaran, Lindqvist" }),
  "open-ring": state({ standing: "open", said: "open · Hale, Ferrant since 1951, حداد" }),
  windbreak: state({ standing: "falls", said: "falls · Brandt" }),
  "by-experiment": state({ standing: "open" }),
  "against-step": state({ standing: "open" }),
  "from-absence": state({ standing: "stands" }),
  "could-bear": state({ standing: "open", said: "open · Oyelaran", was: "stands" }),
  "too-shallow": state({ standing: "falls", said: "falls · Ferrant since 1998" }),
  "no-fire": state({ standing: "stands", said: "stands · Hale, Moss +3" }),
  "later-roof": state({ standing: "unsupported", said: "unsupported · Costa" }),
  arabic: state({ standing: "stands", said: "stands · حداد" }),
  greek: state({ standing: "open", said: "open · Σταύρου" }),
  "by-function": state({ standing: "falls" }),
  "from-the-plan": state({ standing: "unsupported" }),
  "looked-for": state({ standing: "stands" }),
};
