import type { PlacedBox, Point, Scene } from "../../../show/map/scene.ts";
import type { Pen } from "../../../write/pen/pen.ts";
import { arabicFigure } from "../../words/reader/figures.ts";
import type { Marks } from "./boxes.ts";

/** A line that is being drawn by hand, in px of the scene. */
export interface Pulled {
  readonly from: Point;
  readonly to: Point;
  /** From an upper edge to a conclusion, or from a side to what is attacked. */
  readonly by: "top" | "side";
}

/** Marks the argument in hand on the map: a numbered post on each premise, a beam under the conclusion, a bar before what is attacked. */
export function drawMarks(pen: Pen, scene: Scene, marks: Marks, zoom: number): void {
  const px = (n: number): number => n / zoom;
  const boxes = new Map(scene.boxes.map((box) => [box.id, box]));
  marks.premises.forEach((id, place) => {
    const box = boxes.get(id);
    if (!box) return;
    // Of two premises in one pile the posts stand side by side.
    const before = marks.premises.slice(0, place).filter((one) => one === id).length;
    const x = middle(box) + px(26) * before;
    pen.line([at(x, box.y), at(x, box.y - px(18))], { colour: "ink", width: px(3) });
    pen.text(arabicFigure(place + 1), at(x + px(6), box.y - px(6)), {
      face: "sans",
      size: px(13),
      weight: 600,
      colour: "ink",
      anchor: "start",
      rtl: false,
      lang: null,
    });
  });
  const conclusion = boxes.get(marks.conclusion ?? "");
  if (conclusion) {
    const [x, y] = [middle(conclusion), conclusion.y + conclusion.height];
    pen.line([at(x, y), at(x, y + px(12))], { colour: "ink", width: px(1.5) });
    pen.line([at(x - px(18), y + px(12)), at(x + px(18), y + px(12))], { colour: "ink", width: px(3) });
  }
  for (const id of marks.attacked) {
    const box = boxes.get(id);
    if (box) drawBar(pen, at(box.x - px(8), box.y + box.height / 2), px, px(34));
  }
}

/** Draws the line that follows the hand: solid to a beam, or dashed to an upright bar. */
export function drawPulled(pen: Pen, { from, to, by }: Pulled, zoom: number): void {
  const px = (n: number): number => n / zoom;
  if (by === "top") {
    const turn = (from.y + to.y) / 2;
    pen.line([from, at(from.x, turn), at(to.x, turn), to], { colour: "ink", width: px(1.5) }, px(8));
    pen.line([at(to.x - px(14), to.y), at(to.x + px(14), to.y)], { colour: "ink", width: px(3) });
  } else {
    const dash = [px(6), px(4)];
    pen.line([from, at(to.x, from.y), to], { colour: "ink", width: px(1.5), dash }, px(8));
    pen.line([at(to.x, to.y - px(11)), at(to.x, to.y + px(11))], { colour: "ink", width: px(4) });
  }
}

function drawBar(pen: Pen, end: Point, px: (n: number) => number, length: number): void {
  const dash = [px(6), px(4)];
  pen.line([at(end.x - length, end.y), end], { colour: "ink", width: px(1.5), dash });
  pen.line([at(end.x, end.y - px(11)), at(end.x, end.y + px(11))], { colour: "ink", width: px(4) });
}

const at = (x: number, y: number): Point => ({ x, y });
const middle = (box: PlacedBox): number => box.x + box.width / 2;
