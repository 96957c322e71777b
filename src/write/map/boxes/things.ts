import type { BoxState, Point, Setting, ThingPart } from "../../../show/map/scene.ts";
import type { Letters, Pen } from "../../pen/pen.ts";
import type { Gaps } from "../lines/traced.ts";
import { fitted, widthOf, wordsIn } from "../measure.ts";
import type { Cut } from "../measure.ts";
import { letterSize, lineWidth, outlineStroke, toneOf } from "../sight.ts";
import type { BoxAs, Frame, Sight, Tone } from "../sight.ts";
import { drawCrease } from "./folded.ts";
import { cut, cutShape, rectangle } from "./shapes.ts";

type Thing = BoxAs<"thing">;

const sans = { face: "sans", weight: 400 } as const;

/** Draws a thing as a cut in the ground: its outline, its fill in dots, its name, its parts as cuts within it. */
export function drawThing(pen: Pen, sight: Sight, box: Thing, state: BoxState, gaps: Gaps): void {
  const tone = toneOf(state);
  pen.outline(cut(box), "paper", outlineStroke(sight, tone, 2.2));
  const cuts = cutsOf(sight, box);
  if (tone !== "later" && sight.distance !== "far") drawFill(pen, sight, box, tone);
  if (sight.distance !== "far") {
    for (const part of cuts) {
      pen.part(part.id, part.name.lines.join(" "), () => {
        pen.outline(cut(part), null, outlineStroke(sight, tone, 1.5));
        if (tone !== "later" && sight.distance === "near") drawPartName(pen, sight, part, part.name, tone);
      });
    }
  }
  if (tone !== "later") drawName(pen, sight, box, tone, gaps);
}

const placedCuts = new WeakMap<Thing, readonly ThingPart[]>();
const placedMirrored = new WeakMap<Thing, readonly ThingPart[]>();

/** The parts in their place on the map; kept, so that their fills are too. */
function cutsOf(sight: Sight, box: Thing): readonly ThingPart[] {
  const kept = sight.mirrored ? placedMirrored : placedCuts;
  const cuts = kept.get(box) ?? box.look.parts.map((part) => ({ ...part, ...placed(sight, box, part) }));
  kept.set(box, cuts);
  return cuts;
}

function placed({ mirrored }: Sight, whole: Frame, part: Frame): Frame {
  const { x, y, width, height } = part;
  return { x: whole.x + (mirrored ? whole.width - x - width : x), y: whole.y + y, width, height };
}

function drawName(pen: Pen, sight: Sight, box: Thing, tone: Tone, gaps: Gaps): void {
  const { name } = box.look;
  const near = sight.distance === "near";
  const letters = {
    face: "serif",
    weight: near ? 600 : 400,
    size: letterSize(sight, 16),
    colour: tone === "ink" ? "ink" : "soft",
    anchor: "middle",
    rtl: name.rtl,
    lang: name.lang,
  } as const;
  const x = box.x + box.width / 2;
  if (near) {
    name.lines.forEach((line, n) => pen.text(line, { x, y: box.y + 30 + n * 21 }, letters));
    if (box.folded !== null) drawParts(pen, sight, box, box.folded, tone);
    return;
  }
  // Farther off it stands under the cut, and reaches half into the gaps beside it.
  const room = box.width * sight.scale + Math.min(120, Math.min(gaps.left, gaps.right) * sight.scale) - 6;
  drawShortName(pen, sight, box, letters, linesIn(name.lines.join(" "), letters, room));
}

/** A name's lines at 13 px; none where there is no room for a word. */
function linesIn(name: string, cut: Cut, room: number): readonly string[] {
  if (widthOf(name, cut, 13) <= room) return [name];
  return wordsIn(name, cut, { size: 13, width: Math.floor(room / 8) * 8, lines: 3 });
}

function drawShortName(pen: Pen, sight: Sight, box: Thing, letters: Letters, lines: readonly string[]): void {
  if (lines.length === 0) return;
  const px = (screen: number): number => screen / sight.scale;
  const [x, top] = [box.x + box.width / 2, box.y + box.height + px(3)];
  const half = px(Math.max(...lines.map((line) => widthOf(line, letters, 13))) / 2 + 2);
  const patch = { x: x - half, y: top, width: 2 * half, height: px(15 * lines.length + 1) };
  pen.outline(rectangle(patch), "sheet", null);
  lines.forEach((line, n) => pen.text(line, { x, y: top + px(12 + 15 * n) }, letters));
}

/** How many parts are folded up in a thing, under its name. */
function drawParts(pen: Pen, sight: Sight, box: Thing, words: string, tone: Tone): void {
  const size = letterSize(sight, 13);
  const width = widthOf(words, sans, size);
  const y = box.y + 30 + box.look.name.lines.length * 21 - 2;
  const at = { x: box.x + box.width / 2, y };
  pen.text(words, at, { ...sans, size, colour: "soft", anchor: "middle", rtl: false, lang: null });
  drawCrease(pen, sight, { x: at.x - width / 2, y: y + 5, length: width }, tone === "ink");
}

function drawPartName(pen: Pen, sight: Sight, part: Frame, name: Setting, tone: Tone): void {
  const size = letterSize(sight, 13);
  const letters = {
    ...sans,
    size,
    colour: tone === "ink" ? "ink" : "soft",
    anchor: "middle",
    rtl: name.rtl,
    lang: name.lang,
  } as const;
  const { lean } = cutShape(part);
  name.lines.forEach((line, n) => {
    // The cut narrows towards its foot.
    const room = part.width - 2 - 2 * lean * ((16 + n * 15) / part.height);
    const words = fitted(line, letters, size * sight.scale, room * sight.scale);
    if (words !== "") pen.text(words, { x: part.x + part.width / 2, y: part.y + 16 + n * 15 }, letters);
  });
}

const fills = new WeakMap<object, readonly (readonly Point[])[]>();

/** The fill of a cut: rows of dots 8 px apart in its lower part, each row a dotted line. */
function drawFill(pen: Pen, sight: Sight, frame: Frame, tone: Tone): void {
  const rows = fills.get(frame) ?? rowsOf(frame);
  fills.set(frame, rows);
  pen.lines(sight.distance === "near" ? rows : rows.filter((_, n) => n % 2 === 0), {
    colour: tone === "ink" ? "soft" : "line",
    width: lineWidth(sight, 1.5),
    dash: [0.1, sight.distance === "near" ? 7.9 : 15.9],
    round: true,
  });
}

function rowsOf(frame: Frame): readonly (readonly Point[])[] {
  const { x, y, width, height } = frame;
  const { lean, round } = cutShape(frame);
  const shoulder = y + height - round;
  const rows: (readonly Point[])[] = [];
  for (let n = 0, at = y + Math.max(height * 0.5, height - 46); at < y + height - 5; n++, at += 8) {
    const wall = lean * Math.min(1, (at - y) / (height - round));
    const below = Math.max(0, (at - shoulder) / round);
    const half = (width / 2 - wall) * Math.sqrt(Math.max(0, 1 - below)) - 6;
    const middle = x + width / 2;
    if (half < 4) continue;
    // Dots of every second row stand between those of the row before.
    const reach = Math.floor(half / 8) * 8 - (n % 2 === 0 ? 0 : 4);
    rows.push([
      { x: middle - reach, y: at },
      { x: middle + reach + 0.2, y: at },
    ]);
  }
  return rows;
}
