import { yearText } from "../../../../base/date/year.ts";
import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { claimText } from "../../../pages/question.ts";
import { listedUnder } from "../../../withhold.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Captioned, FigureDesk, PaperRoom } from "../desk.ts";
import { aroundPicture, questionPicture } from "../map.ts";
import type { MapPart } from "../map.ts";
import { credit, inRow, joined } from "./credits.ts";

/** The map of a question; where its answers have no room side by side, the map around each of them. */
export function questionFigures(desk: FigureDesk, id: Id, room: PaperRoom): readonly Captioned[] {
  const { graph } = desk.model;
  const record = graph.records.get(id);
  if (record?.list !== "questions") return [];
  const whole = questionPicture(desk, id, room.reads);
  const { text, answers } = record.values;
  if (whole !== null) return [figureOf(desk, whole, text, room)];
  const shown = answers.filter(listedUnder(desk.model));
  return shown.flatMap((answer) => {
    const part = aroundPicture(desk, answer, null, room.reads);
    return part === null
      ? []
      : [figureOf(desk, part, say`${text} The answer: ${claimText(graph, answer)}`, room)];
  });
}

/** The map around a record; none where the map has nothing of it. */
export function aroundFigures(
  desk: FigureDesk,
  { id, steps }: { readonly id: Id; readonly steps: number | null },
  room: PaperRoom,
): readonly Captioned[] {
  const part = aroundPicture(desk, id, steps, room.reads);
  if (part === null) return [];
  const title = say`${labelText(desk.model.graph, id)}, with what it rests on and what rests on it`;
  return [figureOf(desk, part, title, room)];
}

/** A part of the map with a caption that says what its lines mean. */
function figureOf({ model }: FigureDesk, part: MapPart, title: Text, room: PaperRoom): Captioned {
  const { graph, lens } = model;
  const { map } = part.picture;
  const year = lens.asOf === undefined ? [] : [say`As it stood in ${yearText(lens.asOf)}.`];
  const supposed = lens.suppose === undefined ? [] : [say`With a supposed outcome of an examination.`];
  const folded = map.scene.boxes.some((box) => box.folded !== null || box.look.as === "fold");
  return {
    title,
    picture: part.picture,
    alt: altOf(part, title),
    caption: joined([
      [{ is: "strong", of: [title, endOf(title)] }],
      year,
      supposed,
      [
        say`Drawn like a section through the ground: things at the bottom, above them what was seen and measured on them, then computed numbers, claims and answers; lines go up from what supports to what it supports.`,
      ],
      linesOf(map),
      marksOf(map.scene),
      folded ? [say`A notch under words: so much more belongs there and is not drawn.`] : [],
      room.reads(map.scene) === "whole" ? [] : [say`Texts are shortened.`],
      part.left > 0 ? [say`Left out, as lying farther off: ${String(part.left)} records.`] : [],
      credit(graph),
    ]),
    cautions: [],
    computation: null,
  };
}

const endOf = (title: Text): string => (/[.?!؟]$/u.test(inEnglish(title)) ? "" : ".");

function altOf({ picture }: MapPart, title: Text): Text {
  const { scene, states } = picture.map;
  const of = (standing: Standing): number =>
    scene.boxes.filter(
      ({ id, look }) => (look.as === "claim" || look.as === "answer") && states[id]?.standing === standing,
    ).length;
  const claims = say`claims that stand ${String(of("stands"))}, open ${String(of("open"))}, that fall ${String(of("falls"))}, unsupported ${String(of("unsupported"))}`;
  return say`Part of the map: ${title}; ${claims}.`;
}

const lineWords: Readonly<Record<Standing, Said>> = {
  stands: say`one heavy line: stands`,
  open: say`two dashed lines: open`,
  falls: say`a line that steps: falls`,
  unsupported: say`a row of dots: unsupported`,
};

/** What those lines mean that are in it. */
function linesOf({ scene, states }: MapPart["picture"]["map"]): Inlines {
  const met = new Set(scene.boxes.map(({ id }) => states[id]?.standing));
  const standings = (["stands", "open", "falls", "unsupported"] as const).filter((one) => met.has(one));
  const collided = scene.bows.some(({ kind }) => kind === "rivals");
  const conflict = scene.bows.some(({ kind }) => kind === "conflict");
  return joined([
    standings.length === 0 ? [] : [say`Standing: ${inRow(standings.map((one) => lineWords[one]))}.`],
    scene.attacks.length === 0 ? [] : [say`A dashed line that ends in a bar: an argument against.`],
    collided ? [say`A bow: of these not both can be right.`] : [],
    conflict ? [say`Dots between measurements: they are in conflict.`] : [],
  ]);
}

/** What the letters stand for at which lines are cut. */
function marksOf({ boxes }: MapPart["picture"]["map"]["scene"]): Inlines {
  const told = new Map(
    boxes.flatMap(({ look }) =>
      look.as === "mark" ? [[look.letter, look.words.lines.join(" ")] as const] : [],
    ),
  );
  const all = [...told].map(([letter, words]) => say`${letter}: ${words}`);
  return all.length === 0 ? [] : [say`Lines are cut at letters and go on at the same letter: ${inRow(all)}.`];
}
