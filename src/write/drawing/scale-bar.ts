import type { Bar } from "../../show/artefacts/drawing/bar.ts";
import type { Point } from "../../show/map/scene.ts";
import type { Letters, Pen, Step } from "../pen/pen.ts";

const height = 7;
const letters: Letters = {
  face: "sans",
  size: 12,
  weight: 400,
  colour: "ink",
  anchor: "middle",
  rtl: false,
  lang: null,
};

/** Draws a scale bar like a ranging rod, its divisions filled in turn; where its unit is uncertain its end is a comb of ticks, one standard uncertainty either way. */
export function drawScaleBar(pen: Pen, bar: Bar, at: Point): void {
  const division = (from: number, to: number): readonly Step[] => [
    { go: "move", to: { x: at.x + from, y: at.y } },
    { go: "line", to: { x: at.x + to, y: at.y } },
    { go: "line", to: { x: at.x + to, y: at.y + height } },
    { go: "line", to: { x: at.x + from, y: at.y + height } },
    { go: "close" },
  ];
  for (const { from, to, filled } of bar.divisions) {
    pen.outline(division(from, to), filled ? "ink" : "paper", { colour: "ink", width: 1 });
  }
  if (bar.u > 0) pen.lines(comb(bar, at), { colour: "ink", width: 1 });
  const tick = (x: number): readonly Point[] => [
    { x: at.x + x, y: at.y + height },
    { x: at.x + x, y: at.y + height + 4 },
  ];
  pen.lines(
    bar.ticks.map((one) => tick(one.at)),
    { colour: "ink", width: 1 },
  );
  pen.text("0", { x: at.x, y: at.y + height + 17 }, letters);
  for (const one of bar.ticks.filter(({ at: place }) => place > 0)) {
    const last = one === bar.ticks.at(-1);
    const x = last ? at.x + one.at - 4 : at.x + one.at;
    pen.text(one.label, { x, y: at.y + height + 17 }, last ? { ...letters, anchor: "start" } : letters);
  }
}

/** Ticks from one standard uncertainty before the end to one after it, highest at the end itself; as many as stand clear of each other. */
function comb({ length, u }: Bar, at: Point): readonly (readonly Point[])[] {
  const shares = u >= 6 ? [-1, -0.5, 0, 0.5, 1] : u >= 3 ? [-1, 0, 1] : [-1, 1];
  return shares.map((share) => {
    const x = at.x + length + share * u;
    return [
      { x, y: at.y - 12 + 6 * Math.abs(share) },
      { x, y: at.y - 1 },
    ];
  });
}
