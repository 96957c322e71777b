import { rect, ruleX, ruleY, text } from "@observablehq/plot";
import type { Markish } from "@observablehq/plot";
import type { Bar, Mark } from "./figure.ts";
import { cutTo, letters, widthOf } from "./ground.ts";
import type { Ground } from "./ground.ts";

type Bars = Extract<Mark, { readonly mark: "bars" }>;

/** Heights about the middle of a row, in rows, downwards: its words, what is between, the piece, the floor of the opening. */
const at = { words: -0.38, between: -0.16, top: -0.04, piece: 0.12, floor: 0.3, ends: 0.38 } as const;

/** Lengths to scale in rows: a piece is a shaded block, an opening two walls and a floor, what is between a line with its words. */
export function barMarks({ role, bars }: Bars, ground: Ground): readonly Markish[] {
  const { palette } = ground;
  const reach = { x1: (bar: Bar) => bar.from, x2: (bar: Bar) => bar.to };
  const dashed = { strokeDasharray: "4 4" } as const;
  const [shut, open] = [bars.filter((bar) => bar.open === null), bars.filter((bar) => bar.open !== null)];
  const level = (to: number) => (bar: Bar) => bar.row + to;
  if (role === "piece") {
    const block = {
      ...reach,
      y1: level(at.top),
      y2: level(at.floor - 0.03),
      stroke: palette.ink,
      strokeWidth: 1,
    };
    const shade = { fill: palette.hair, fillOpacity: 0.7 };
    return [
      rect(shut, { ...block, ...shade }),
      rect(open, { ...block, ...shade, ...dashed }),
      ...endsOf(bars, at.piece, palette.ink),
    ];
  }
  const line = { ...reach, stroke: palette.ink, strokeWidth: role === "opening" ? 1.8 : 1 };
  const y = level(role === "opening" ? at.floor : at.between);
  const walls = bars.flatMap((bar) => [
    ...(bar.open === "less" && role === "between" ? [] : [{ ...bar, to: bar.from }]),
    ...(bar.open === "more" ? [] : [bar]),
  ]);
  const wall =
    role === "opening"
      ? { y1: level(at.top - 0.06), y2: level(at.floor), strokeWidth: 2.4 }
      : { y1: level(at.between - 0.07), y2: level(at.between + 0.07), strokeWidth: 1 };
  return [
    ruleY(shut, { ...line, y }),
    ruleY(open, { ...line, y, ...dashed }),
    ruleX(walls, { x: (bar: Bar) => bar.to, stroke: palette.ink, ...wall }),
    ...(role === "opening" ? endsOf(bars, at.ends, palette.ink) : []),
    ...wordsOf(bars, ground),
  ];
}

/** The words of each, above its line from where it begins, or up to where it ends where there is no room for them. */
function wordsOf(bars: readonly Bar[], { palette, px, width, right }: Ground): readonly Markish[] {
  const said = bars.filter((bar) => bar.label !== "");
  const fits = (bar: Bar): boolean => px(bar.from) + widthOf(bar.label, letters.mark) <= width - right;
  return (["start", "end"] as const).map((textAnchor) =>
    text(
      said.filter((bar) => fits(bar) === (textAnchor === "start")),
      {
        x: (bar: Bar) => (textAnchor === "start" ? bar.from : bar.to),
        y: (bar: Bar) => bar.row + at.words,
        text: (bar: Bar) => cutTo(bar.label, width - right, letters.mark),
        textAnchor,
        fill: palette.ink,
        fontSize: letters.mark,
        fontVariant: "tabular-nums",
      },
    ),
  );
}

/** The interval of the further end, as a fine line with its ends marked. */
function endsOf(bars: readonly Bar[], height: number, stroke: string): readonly Markish[] {
  const known = bars.flatMap(({ row, ends }) => (ends === undefined ? [] : [{ row, ends }]));
  type Known = (typeof known)[number];
  const ticks = known.flatMap(({ row, ends }) => ends.map((end) => ({ row, end })));
  type Tick = (typeof ticks)[number];
  return [
    ruleY(known, {
      x1: (one: Known) => one.ends[0],
      x2: (one: Known) => one.ends[1],
      y: (one: Known) => one.row + height,
      stroke,
      strokeWidth: 1,
    }),
    ruleX(ticks, {
      x: (one: Tick) => one.end,
      y1: (one: Tick) => one.row + height - 0.05,
      y2: (one: Tick) => one.row + height + 0.05,
      stroke,
      strokeWidth: 1,
    }),
  ];
}
