import type { BoxState, Setting } from "../../../show/map/scene.ts";
import type { Letters, Pen } from "../../pen/pen.ts";
import { fitted, widthOf } from "../measure.ts";
import { atInnerEdge, inward, letterSize, lineWidth, toneOf } from "../sight.ts";
import type { BoxAs, Frame, Sight } from "../sight.ts";
import { drawCrease } from "./folded.ts";
import { rectangle } from "./shapes.ts";

const sans = { face: "sans", weight: 400 } as const;
const strong = { face: "sans", weight: 600 } as const;

/** Draws what is folded up: what it holds in words, over a line with a crease. */
export function drawFold(pen: Pen, sight: Sight, box: BoxAs<"fold">, state: BoxState): void {
  if (toneOf(state) === "later") return;
  pen.outline(rectangle(box), "paper", null);
  drawCrease(pen, sight, { x: box.x, y: box.y + box.height, length: box.width }, state.lit);
  if (sight.distance === "far") return;
  const { words } = box.look;
  const size = sight.distance === "near" ? letterSize(sight, 13) : 11 / sight.scale;
  const lines = sight.distance === "near" ? words.lines : [words.lines.join(" ")];
  const leading = 16;
  const first = box.y + box.height / 2 + size * 0.3 - ((lines.length - 1) * leading) / 2;
  lines.forEach((line, n) =>
    drawLine(pen, sight, box, { ...words, lines: [line] }, first + n * leading, size),
  );
}

function drawLine(pen: Pen, sight: Sight, box: Frame, words: Setting, y: number, size: number): void {
  const line = fitted(words.lines.join(" "), sans, size * sight.scale, (box.width - 12) * sight.scale);
  const letters = { ...sans, size, colour: "soft", lang: words.lang } as const;
  if (line !== "") pen.text(line, { x: inward(sight, box, 8), y }, atInnerEdge(sight, words.rtl, letters));
}

/** Draws the lettered mark where a line is cut: its letter, and the name of the line's other end. */
export function drawMark(pen: Pen, sight: Sight, box: BoxAs<"mark">, state: BoxState): void {
  if (sight.distance === "far" || state.later) return;
  const { lit } = state;
  const { letter, words } = box.look;
  const size = sight.distance === "near" ? letterSize(sight, 13) : 11 / sight.scale;
  const y = box.y + box.height / 2 + size * 0.34;
  const set = (from: { face: "sans"; weight: 400 | 600 }, rtl: boolean): Letters =>
    atInnerEdge(sight, rtl, {
      ...from,
      size,
      colour: from.weight === 600 && lit ? "ink" : "soft",
      lang: from.weight === 600 ? null : words.lang,
    });
  if (sight.distance !== "near") {
    // Without its words the letter stands where the line ends.
    const x = box.x + box.width / 2;
    return pen.text(letter, { x, y }, { ...set(strong, false), anchor: "middle" });
  }
  pen.text(letter, { x: inward(sight, box, 4), y }, set(strong, sight.mirrored));
  const start = 4 + widthOf(letter, strong, size) + 6;
  const room = (box.width - start) * sight.scale;
  const line = fitted(words.lines.join(" "), sans, size * sight.scale, room + 2);
  if (line === "") return;
  const x = inward(sight, box, start);
  pen.text(line, { x, y }, set(sans, words.rtl));
  const end = x + (sight.mirrored ? -1 : 1) * widthOf(line, sans, size);
  pen.line(
    [
      { x, y: y + 3 },
      { x: end, y: y + 3 },
    ],
    { colour: "line", width: lineWidth(sight, 1) },
  );
}
