import { yearWords } from "../../../../base/date/year-words.ts";
import { count, row, say } from "../../../../base/text/said/said.ts";
import type { Cited, Part, Pictured, Slide, Slides } from "../slides.ts";
import { columnIn } from "./column.ts";
import type { Room, Told } from "./column.ts";
import { gridIn } from "./grid.ts";
import type { Box, Leaf, LeafRun, Paragraph } from "./leaf.ts";
import { heightOf, linesIn, paragraph, sizeOf } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { pictureIn } from "./picture.ts";
import { referenceLeaves } from "./references.ts";
import { foot, margin, smallest } from "./room.ts";
import { opening } from "./opening.ts";
import { ownRun, wordsRun } from "./words.ts";

/**
 * A talk laid out: every slide in order, one that does not fit followed by those on which it goes on, and the references
 * at the end where there are any.
 */
export function leavesOf(
  talk: Slides,
  setup: Setup,
  references: readonly (readonly LeafRun[])[] = [],
): readonly Leaf[] {
  const leaves = [
    ...talk.slides.flatMap((slide, at) => leavesOfSlide(talk, slide, at, setup)),
    ...referenceLeaves(references, setup),
  ];
  return leaves.map((leaf, place) => {
    const boxes = [...leaf.boxes, ...footOf(talk, setup, place + 1)];
    return { ...leaf, boxes: setup.mirrored ? boxes.map((box) => mirroredIn(setup, box)) : boxes };
  });
}

function mirroredIn(setup: Setup, box: Box): Box {
  return { ...box, x: sizeOf(setup).width - box.x - box.width };
}

function leavesOfSlide(talk: Slides, slide: Slide, at: number, setup: Setup): readonly Leaf[] {
  const title = setup.told(slide.title.text);
  if (slide.step === null) return [{ slide: at, nth: 0, title, boxes: opening(talk, setup), notes: null }];
  const head = headOf(slide, setup);
  const cited = citedBox(slide.cited, setup);
  const size = sizeOf(setup);
  const top = Math.max(...head.map((box) => box.y + box.height)) + 20;
  const bottom = size.height - foot - (cited.length > 0 ? 32 : 8);
  const room: Room = { x: margin, y: top, width: size.width - 2 * margin, height: bottom - top };
  const bodies = bodiesOf(slide.parts, setup, room);
  return (bodies.length === 0 ? [[]] : bodies).map((body, nth) => ({
    slide: at,
    nth,
    title,
    boxes: [...head, ...body, ...cited],
    notes: slide.notes,
  }));
}

/** The parts of a slide on as many leaves as they need: words together, each picture and table by itself. */
function bodiesOf(parts: readonly Part[], setup: Setup, room: Room): readonly (readonly Box[])[] {
  const bodies: (readonly Box[])[] = [];
  let words: readonly Told[] = [];
  const flush = (): void => {
    while (words.length > 0) {
      const column = columnIn(setup, words, room);
      bodies.push(column.boxes);
      words = column.rest;
    }
  };
  for (const part of parts) {
    if (part.is === "statement" || part.is === "remark") {
      words = [...words, part];
      continue;
    }
    flush();
    if (part.is === "columns") bodies.push(...gridIn(setup, part, room));
    else bodies.push(...pictured(setup, part, room));
  }
  flush();
  return bodies;
}

function pictured(setup: Setup, part: Pictured, room: Room): readonly (readonly Box[])[] {
  const first = pictureIn(setup, part, room);
  const more: (readonly Box[])[] = [];
  for (let rest = first.rest; rest.length > 0;) {
    const column = columnIn(setup, rest, room, 24);
    more.push(column.boxes);
    rest = column.rest;
  }
  return [first.boxes, ...more];
}

/** The sentence of a slide, smaller where it is long, and the year as of which it is told. */
function headOf({ title, asOf }: Slide, setup: Setup): readonly Box[] {
  const width = sizeOf(setup).width - 2 * margin;
  const set = (size: number): Paragraph => paragraph([wordsRun(setup, title)], size);
  const size = [34, 30, 26].find((one) => linesIn(setup, set(one), width) <= 2) ?? 22;
  const year =
    asOf === null
      ? []
      : [paragraph([ownRun(setup, say`As known in ${yearWords(asOf)}`, "soft", 600)], 20, { before: 4 })];
  const lines = [set(size), ...year];
  const height = heightOf(setup, lines, width);
  return [{ is: "text", role: "title", lines, x: margin, y: 30, width, height }];
}

/** The sources of a slide in one line, author and year; of more than fit, how many. */
function citedBox(cited: readonly Cited[], setup: Setup): readonly Box[] {
  if (cited.length === 0) return [];
  const size = sizeOf(setup);
  const width = size.width - 2 * margin;
  const line = (shown: number): Paragraph => {
    const labels = cited.slice(0, shown).map((one) => one.label);
    const text =
      shown === cited.length
        ? say`${row(labels, "comma")}`
        : say`${row(labels, "comma")} and ${count(cited.length - shown)} more`;
    return paragraph([ownRun(setup, text)], smallest);
  };
  let shown = cited.length;
  while (shown > 1 && linesIn(setup, line(shown), width) > 1) shown--;
  const lines = [line(shown)];
  const [{ leading } = { leading: 23 }] = lines;
  return [
    {
      is: "text",
      role: "cited",
      lines,
      x: margin,
      y: size.height - foot - leading - 4,
      width,
      height: leading,
    },
  ];
}

/** What every slide ends with: a hairline, the corpus, and its number. */
function footOf({ corpus }: Slides, setup: Setup, number: number): readonly Box[] {
  const { width, height } = sizeOf(setup);
  const y = height - foot + 8;
  const inner = width - 2 * margin;
  const names = paragraph([ownRun(setup, corpus)], smallest);
  const figure = paragraph([ownRun(setup, String(number))], smallest, { align: "end" });
  const fits = linesIn(setup, names, inner - 70) === 1;
  return [
    { is: "hairline", x: margin, y: height - foot + 2, width: inner, height: 0 },
    ...(fits ? [textBox("corpus", names, { x: margin, y, width: inner - 70 })] : []),
    textBox("number", figure, { x: width - margin - 60, y, width: 60 }),
  ];
}

function textBox(
  role: "corpus" | "number",
  line: Paragraph,
  place: { readonly x: number; readonly y: number; readonly width: number },
): Box {
  return { is: "text", role, lines: [line], ...place, height: line.leading };
}
