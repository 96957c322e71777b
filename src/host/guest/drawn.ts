import * as z from "zod";
import { clean, largest, line, prose } from "./contract.ts";

/** Most points and dots in one figure: each is a sign on the sheet and a row of its table. */
const mostPoints = 5_000;

const label = clean(200);
// On an axis what is all but nothing beside what is there divides as nothing does.
const place = z
  .number()
  .min(-largest)
  .max(largest)
  .refine((value) => value === 0 || Math.abs(value) >= 1 / largest, "expected a size that can be drawn");
const pair = z.tuple([place, place]);
const mark = z.discriminatedUnion("mark", [
  z.object({
    mark: z.literal("line"),
    points: z.array(pair).max(mostPoints),
    role: z.enum(["main", "other", "null"]),
    label,
  }),
  z.object({
    mark: z.literal("band"),
    points: z.array(z.tuple([place, place, place])).max(mostPoints),
    label,
  }),
  z.object({ mark: z.literal("reach"), axis: z.enum(["x", "y"]), from: place, to: place, label }),
  z.object({
    mark: z.literal("dots"),
    dots: z
      .array(
        z.object({
          at: pair,
          xEnds: pair.optional(),
          yEnds: pair.optional(),
          label,
          open: z.boolean().optional(),
        }),
      )
      .max(mostPoints),
    label,
  }),
  z.object({ mark: z.literal("strokes"), points: z.array(pair).max(mostPoints), label }),
  z.object({
    mark: z.literal("rule"),
    axis: z.enum(["x", "y"]),
    at: place,
    role: z.enum(["main", "null", "zero"]),
    label,
    each: z.literal(true).optional(),
  }),
]);
const axis = z
  .object({
    label,
    unit: clean(40),
    scale: z.literal("log").optional(),
    from: place.optional(),
    to: place.optional(),
    names: z.array(label).min(1).max(500).optional(),
  })
  .refine(({ from, to }) => from === undefined || to === undefined || from < to, "expected `from` below `to`")
  .refine(
    ({ scale, from = 1, to = 1 }) => scale === undefined || (from > 0 && to > 0),
    "expected ends above 0 on a log scale",
  );

/** A figure of a guest: panels of curves, bands, dots, strokes and rules; what it shows counts as single measurements. */
export const figureSchema = z
  .object({
    title: line,
    panels: z
      .array(
        z.object({
          title: line,
          caption: prose,
          shows: z.enum(["each", "together"]).transform(() => "each" as const),
          x: axis,
          y: axis,
          marks: z.array(mark).max(200),
        }),
      )
      .max(6),
  })
  .refine(
    ({ panels }) =>
      panels.flatMap((panel) => panel.marks).reduce((sum, mark) => sum + pointsIn(mark), 0) <= mostPoints,
    `expected at most ${mostPoints} points`,
  );

function pointsIn(given: z.output<typeof mark>): number {
  return "points" in given ? given.points.length : "dots" in given ? given.dots.length : 1;
}
