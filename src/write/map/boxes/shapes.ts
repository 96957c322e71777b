import type { Step } from "../../pen/pen.ts";
import type { Frame } from "../sight.ts";

/** The outline of a rectangle. */
export function rectangle({ x, y, width, height }: Frame): readonly Step[] {
  return [
    { go: "move", to: { x, y } },
    { go: "line", to: { x: x + width, y } },
    { go: "line", to: { x: x + width, y: y + height } },
    { go: "line", to: { x, y: y + height } },
    { go: "close" },
  ];
}

/** The outline of a finds label: a tag that comes to a point at its outer end, 12 px deep. */
export function tag({ x, y, width, height }: Frame, mirrored: boolean): readonly Step[] {
  const [inner, outer] = mirrored ? [x + width, x] : [x, x + width];
  const neck = outer + (mirrored ? 12 : -12);
  return [
    { go: "move", to: { x: inner, y } },
    { go: "line", to: { x: neck, y } },
    { go: "line", to: { x: outer, y: y + height / 2 } },
    { go: "line", to: { x: neck, y: y + height } },
    { go: "line", to: { x: inner, y: y + height } },
    { go: "close" },
  ];
}

/** A hole cut into the ground: how far its sides lean in at the foot, and how deep the round of the foot is. */
export interface CutShape {
  readonly lean: number;
  readonly round: number;
}

/** The shape of a cut of a size. */
export function cutShape({ width, height }: Frame): CutShape {
  return { lean: Math.min(16, width * 0.12), round: Math.min(12, height * 0.12) };
}

/** The outline of a cut, open at its mouth: sloping sides and a rounded foot. */
export function cut(frame: Frame): readonly Step[] {
  const { x, y, width, height } = frame;
  const { lean, round } = cutShape(frame);
  const shoulder = y + height - round;
  return [
    { go: "move", to: { x, y } },
    { go: "line", to: { x: x + lean, y: shoulder } },
    {
      go: "curve",
      by: { x: x + width / 2, y: shoulder + 2 * round },
      to: { x: x + width - lean, y: shoulder },
    },
    { go: "line", to: { x: x + width, y } },
  ];
}
