import { isRightToLeft } from "../../../show/map/letters/letters.ts";
import type { BoxState, Point } from "../../../show/map/scene.ts";
import { standingWords } from "../../../show/map/states.ts";
import { apart } from "../../../show/map/section/boxes/words.ts";
import type { Letters, Pen } from "../../pen/pen.ts";
import { fitted, linesOf, widthOf, wordsIn } from "../measure.ts";
import type { Cut } from "../measure.ts";
import { atInnerEdge, inward, letterSize, lineWidth, toneOf } from "../sight.ts";
import type { BoxAs, Sight, Tone } from "../sight.ts";
import type { Gaps } from "../lines/traced.ts";
import { drawStanding, standingColour } from "../standing-line.ts";
import { changeWords } from "../words.ts";
import { farBowTop } from "../lines/bows.ts";
import { drawFolded } from "./folded.ts";
import { rectangle } from "./shapes.ts";

type Sentence = BoxAs<"claim" | "answer">;

const sans = { face: "sans", weight: 400 } as const;
const strong = { face: "sans", weight: 600 } as const;

/** Draws a claim or an answer: white under its text, the line of its standing at the inner edge or below, no outline. */
export function drawSentence(pen: Pen, sight: Sight, box: Sentence, state: BoxState, gaps: Gaps): void {
  const tone = toneOf(state);
  const outline = tone === "later" ? ({ colour: "hair", width: lineWidth(sight, 1) } as const) : null;
  // Far off an answer's name stands over its place: nothing is left to be white under.
  const white = sight.distance !== "far" || box.look.as === "claim";
  if (white || outline !== null) pen.outline(rectangle(box), white ? "paper" : null, outline);
  drawLine(pen, sight, box, state, tone);
  if (box.look.hangs && sight.distance !== "far") drawTail(pen, sight, box, tone);
  if (tone === "later") return;
  if (sight.distance === "near") drawNear(pen, sight, box, state, tone);
  else if (sight.distance === "middle" || box.look.as === "answer") drawShort(pen, sight, box, tone, gaps);
}

function drawLine(pen: Pen, sight: Sight, box: Sentence, { standing }: BoxState, tone: Tone): void {
  if (standing === null) return;
  const answer = box.look.as === "answer";
  const edge = inward(sight, box, 3.5);
  const foot = box.y + box.height - 3.5;
  const [from, to] = answer
    ? [
        { x: box.x, y: foot },
        { x: box.x + box.width, y: foot },
      ]
    : [
        { x: edge, y: box.y },
        { x: edge, y: box.y + box.height },
      ];
  drawStanding(pen, sight, { standing, from, to, heavy: answer ? 4 : 5, tone, turned: sight.mirrored });
}

/** The tail of what nothing supports: it ends in the air. */
function drawTail(pen: Pen, sight: Sight, box: Sentence, tone: Tone): void {
  const x = box.x + box.width / 2;
  const top = box.y + box.height + 3;
  const colour = tone === "ink" ? "ink" : tone === "unlit" ? "line" : "hair";
  const stroke = { colour, width: lineWidth(sight, 2), dash: [0.1, 5.4], round: true } as const;
  const points: readonly Point[] = [
    { x, y: top },
    { x, y: top + 37 },
  ];
  pen.line(points, stroke);
}

function drawNear(pen: Pen, sight: Sight, box: Sentence, state: BoxState, tone: Tone): void {
  const { text, as } = box.look;
  const answer = as === "answer";
  const [natural, leading] = answer ? [18, 24] : [16, 21];
  const letters = {
    face: "serif",
    size: letterSize(sight, natural),
    weight: answer ? 600 : 400,
    colour: tone === "ink" ? "ink" : "soft",
    lang: text.lang,
  } as const;
  const at = { x: inward(sight, box, answer ? 8 : 14), y: box.y + (answer ? 24 : 23) };
  text.lines.forEach((line, n) => {
    pen.text(line, { x: at.x, y: at.y + n * leading }, atInnerEdge(sight, text.rtl, letters));
  });
  const y = box.y + box.height - (answer ? 16 : 10);
  const room = box.width - (answer ? 16 : 24);
  // What is folded up has its place even beside a long list of holders, but not before a change.
  const change = state.was === null ? null : sight.told(changeWords(state.standing, state.was));
  const left = change === null ? room * 0.7 : room - widthOf(change, strong, letterSize(sight, 13)) - 14;
  const taken =
    box.folded === null
      ? 0
      : drawFolded(pen, sight, box, { words: box.folded, y, inset: 10, room: left, lit: state.lit });
  drawSaid(pen, sight, state, { x: at.x, y }, taken === 0 ? room : room - taken - 14);
}

/** The line of words under the text: the standing's own word in its colour, then who holds it; after a change, the change. */
function drawSaid(pen: Pen, sight: Sight, state: BoxState, at: Point, room: number): void {
  const said = state.was === null ? state.said : sight.told(changeWords(state.standing, state.was));
  const size = letterSize(sight, 13);
  const short = fitted(said, state.was === null ? sans : strong, size * sight.scale, room * sight.scale);
  // Where no holder's name has room, nothing is left of them.
  const line = short.endsWith(`${apart.trimEnd()}…`) ? short.slice(0, -apart.length) : short;
  const set = (weight: 400 | 600, colour: Letters["colour"], rtl: boolean): Letters =>
    atInnerEdge(sight, rtl, { face: "sans", size, weight, colour, lang: null });
  const { standing } = state;
  const own = standing === null ? "" : sight.told(standingWords[standing]);
  const marked = own !== "" && state.lit && standing !== "open" && state.was === null && line.startsWith(own);
  const word = marked ? own : "";
  const rest = line.slice(word.length);
  if (word === "") {
    const changed = state.was !== null && state.lit;
    return pen.text(line, at, set(changed ? 600 : 400, changed ? "ink" : "soft", isRightToLeft(line)));
  }
  const first = widthOf(word, strong, size);
  const rtl = isRightToLeft(word);
  const letters = set(600, standing === null ? "soft" : standingColour[standing], rtl);
  if (rest === "") return pen.text(word, at, letters);
  const gap = size * 0.14;
  const other = widthOf(rest.trim(), sans, size);
  const way = sight.mirrored ? -1 : 1;
  // The word comes first in its own direction, whatever edge the line keeps to.
  const [near, far] = sight.mirrored === rtl ? [0, first] : [other, 0];
  pen.text(word, { x: at.x + way * (near === 0 ? 0 : near + gap), y: at.y }, letters);
  pen.text(rest.trim(), { x: at.x + way * (far === 0 ? 0 : far + gap), y: at.y }, set(400, "soft", rtl));
}

/** The short text at 13 px, as many lines as the box has room for; an answer's name far off stands on its line. */
function drawShort(pen: Pen, sight: Sight, box: Sentence, tone: Tone, gaps: Gaps): void {
  const { short, as } = box.look;
  const answer = as === "answer";
  if (box.folded !== null && sight.distance === "middle") {
    drawFolded(pen, sight, box, { words: box.folded, y: box.y, inset: 8, room: 0, lit: tone === "ink" });
  }
  const cut = { face: "serif", weight: answer ? 600 : 400 } as const;
  const size = 13;
  const far = sight.distance === "far";
  const height = box.height * sight.scale;
  // Lines close up where two of them would else have no room.
  const close = !far && height < 2 + 2 * 16;
  const leading = close ? 14 : 16;
  const inset = far ? 0 : answer ? 4 : 12;
  // Names far off may rise above their box, where nothing stands higher than an answer.
  const beyond = far ? Math.min(200, (sight.mirrored ? gaps.left : gaps.right) * sight.scale) - 2 : 0;
  const room = box.width * sight.scale - inset - 4 + beyond;
  const lines = far
    ? 4
    : Math.max(1, Math.min(3, Math.floor((height - (answer ? 8 : close ? 0 : 2)) / leading)));
  const width = far ? Math.floor(room) : Math.floor(room / 8) * 8;
  if (width < 40) return;
  const set = (far ? wordsIn : linesOf)(short.lines.join(" "), cut, { size, width, lines });
  if (set.length === 0) return;
  const letters = {
    face: "serif",
    size: letterSize(sight, size),
    weight: cut.weight,
    colour: tone === "ink" ? "ink" : "soft",
    lang: short.lang,
  } as const;
  const block = set.length * leading;
  const top = far
    ? height - farBowTop - block
    : answer
      ? Math.max(0, height - 10 - block)
      : Math.max(0, (height - block) / 2);
  if (far) drawUnderName(pen, sight, box, { set, top, leading, cut });
  set.forEach((line, n) => {
    const at = {
      x: inward(sight, box, inset / sight.scale),
      y: box.y + (top + n * leading + 12) / sight.scale,
    };
    pen.text(line, at, atInnerEdge(sight, short.rtl, letters));
  });
}

/** The film under a name far off, so that it reads over a line that leads up to a mark. */
function drawUnderName(
  pen: Pen,
  sight: Sight,
  box: Sentence,
  name: {
    readonly set: readonly string[];
    readonly top: number;
    readonly leading: number;
    readonly cut: Cut;
  },
): void {
  const px = (screen: number): number => screen / sight.scale;
  const width = px(Math.max(0, ...name.set.map((line) => widthOf(line, name.cut, 13))) + 4);
  const edge = inward(sight, box, px(2));
  const x = sight.mirrored ? edge - width : edge;
  const height = px(name.set.length * name.leading);
  pen.outline(rectangle({ x, y: box.y + px(name.top), width, height }), "sheet", null);
}
