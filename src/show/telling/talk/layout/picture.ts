import type { Pictured } from "../slides.ts";
import { columnIn } from "./column.ts";
import type { Room, Told } from "./column.ts";
import type { Box } from "./leaf.ts";
import { heightOf } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { smallest } from "./room.ts";
import { remarkLines } from "./words.ts";

/** What part of the width a picture takes that has words beside it. */
const pictureShare = 0.56;
const gap = 28;

/** A picture with its words: beside it where they tell what it shows, in a line below it where they only remark on it. */
export function pictureIn(
  setup: Setup,
  part: Pictured,
  room: Room,
): { readonly boxes: readonly Box[]; readonly rest: readonly Told[] } {
  const { picture, beside } = setup.shape === "4:3" ? { ...part, ...part.upright } : part;
  const alt = setup.told(part.alt);
  if (beside.some((one) => one.is === "statement")) return withWords(setup, { ...part, alt }, room);
  const remarks = beside.flatMap((one) => (one.is === "remark" ? remarkLines(setup, one, smallest) : []));
  const high = remarks.length === 0 ? 0 : heightOf(setup, remarks, room.width);
  const height = room.height - (high === 0 ? 0 : high + 10);
  if (picture.is === "drawing" && height < leastDrawing)
    return { boxes: [{ is: "picture", picture, alt, ...room }], rest: beside };
  const whole: Box = { is: "picture", picture, alt, x: room.x, y: room.y, width: room.width, height };
  if (high === 0) return { boxes: [whole], rest: [] };
  const below: Box = {
    is: "text",
    role: "beside",
    lines: remarks,
    x: room.x,
    y: room.y + height + 10,
    width: room.width,
    height: high,
  };
  return { boxes: [whole, below], rest: [] };
}

/** Words beside a picture; what they leave over stands across the slide below both, where that is not too much of it. */
function withWords(
  setup: Setup,
  { picture, beside, alt }: Pictured & { readonly alt: string },
  room: Room,
): { readonly boxes: readonly Box[]; readonly rest: readonly Told[] } {
  const width = Math.round((room.width - gap) * pictureShare);
  const words: Room = { ...room, x: room.x + width + gap, width: room.width - width - gap };
  const column = columnIn(setup, beside, words, 21);
  const pictured = (height: number): Box => ({
    is: "picture",
    picture,
    alt,
    x: room.x,
    y: room.y,
    width,
    height,
  });
  if (column.rest.length > 0) {
    const [below] = beside.filter((one) => one.is === "remark").toReversed();
    const lines = below === undefined ? [] : remarkLines(setup, below, smallest);
    const high = heightOf(setup, lines, room.width);
    const shorter = { ...words, height: room.height - high - 12 };
    const again = columnIn(
      setup,
      beside.filter((one) => one !== below),
      shorter,
      21,
    );
    if (below !== undefined && high < room.height * mostBelow && again.rest.length === 0) {
      const foot: Box = {
        is: "text",
        role: "beside",
        lines,
        x: room.x,
        y: room.y + room.height - high,
        width: room.width,
        height: high,
      };
      return { boxes: [pictured(shorter.height), ...again.boxes, foot], rest: [] };
    }
  }
  return { boxes: [pictured(room.height), ...column.boxes], rest: column.rest };
}

/** In less height than this, in points, little is left of a drawing beside its figures. */
const leastDrawing = 280;

/** What part of the height words below a picture may take. */
const mostBelow = 0.3;
