import { textWidth } from "../../map/letters/letters.ts";
import type { Event } from "./events.ts";
import type { Look } from "./looks.ts";

/** A mark on the line of years with its label; px from the line's start, lanes counted away from the line. */
export interface LineMark {
  /** Place among the events or looks it was made from. */
  readonly of: number;
  readonly from: number;
  readonly to: number;
  /** An end that is not known goes on, broken, to the edge. */
  readonly brokenStart: boolean;
  readonly brokenEnd: boolean;
  readonly vague: boolean;
  readonly label: string;
  readonly labelAt: number;
  readonly labelWidth: number;
  readonly lane: number;
}

/** The years of a thing's history to scale: what was seen above the line, what befell it below. */
export interface HistoryLine {
  readonly width: number;
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  readonly above: readonly LineMark[];
  readonly below: readonly LineMark[];
  readonly lanesAbove: number;
  readonly lanesBelow: number;
}

const labelSize = 13;
const gap = 12;
const margin = 14;

/** Lays a history along a line of a width in px; labels give way outwards until none meets another. */
export function historyLine(
  events: readonly Event[],
  looks: readonly Look[],
  width: number,
  label: {
    readonly event: (event: Event) => string;
    readonly look: (look: Look) => string;
    readonly year: (astronomical: number) => string;
  },
): HistoryLine | null {
  const years = [...events.flatMap(({ low, high }) => [low, high]), ...looks.map((look) => look.year)].filter(
    (year) => year !== null,
  );
  if (years.length === 0) return null;
  const step = stepFor(Math.max(...years) - Math.min(...years), width);
  const first = Math.floor(Math.min(...years) / step) * step;
  const last = Math.max(first + step, Math.ceil(Math.max(...years) / step) * step);
  const place = (year: number): number => margin + ((width - 2 * margin) * (year - first)) / (last - first);
  const below = inLanes(
    events.map((event, of) => ({
      of,
      from: event.low === null ? 0 : place(event.low),
      to: event.high === null ? width : place(event.high),
      brokenStart: event.low === null,
      brokenEnd: event.high === null,
      vague: event.vague,
      label: label.event(event),
    })),
    width,
  );
  const above = inLanes(
    looks.map((look, of) => ({
      of,
      from: place(look.year),
      to: place(look.year),
      brokenStart: false,
      brokenEnd: false,
      vague: false,
      label: label.look(look),
    })),
    width,
  );
  const count = Math.round((last - first) / step);
  return {
    width,
    ticks: Array.from({ length: count + 1 }, (_, n) => ({
      at: place(first + n * step),
      label: label.year(first + n * step),
    })),
    above,
    below,
    lanesAbove: Math.max(0, ...above.map((mark) => mark.lane + 1)),
    lanesBelow: Math.max(0, ...below.map((mark) => mark.lane + 1)),
  };
}

/** Years between two ticks: 1, 2 or 5 times a power of ten, so that labels keep apart. */
function stepFor(span: number, width: number): number {
  const least = Math.max(1, (span * 64) / width);
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((one) => one * power).find((one) => one >= least) ?? 10 * power;
}

type Bare = Omit<LineMark, "labelAt" | "labelWidth" | "lane">;

interface Laid {
  readonly lane: number;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Later marks lie nearer to the line; a label stands right of its leader, or is pushed left at the end. */
function inLanes(marks: readonly Bare[], width: number): readonly LineMark[] {
  const laid: Laid[] = [];
  const placed = marks.toReversed().map((mark): LineMark => {
    const labelWidth = Math.min(width, Math.ceil(textWidth(mark.label, "sans", labelSize)));
    const at = (mark.from + mark.to) / 2;
    const labelAt = Math.max(0, Math.min(at + 5, width - labelWidth));
    const span = { at, from: labelAt, to: labelAt + labelWidth };
    const free = (lane: number, leaders: boolean): boolean =>
      laid.every(
        (other) => !meet({ ...span, lane }, other) && (!leaders || !crosses({ ...span, lane }, other)),
      );
    const lanes = Array.from({ length: marks.length + 1 }, (_, lane) => lane);
    const lane =
      lanes.find((one) => free(one, true)) ?? lanes.find((one) => free(one, false)) ?? marks.length;
    laid.push({ ...span, lane });
    return { ...mark, labelAt, labelWidth, lane };
  });
  return placed.reverse();
}

function meet(one: Laid, other: Laid): boolean {
  return one.lane === other.lane && one.from < other.to + gap && other.from < one.to + gap;
}

/** Whether the leader of one, on its way out, runs through the label of the other. */
function crosses(one: Laid, other: Laid): boolean {
  const through = (leader: Laid, label: Laid): boolean =>
    label.lane < leader.lane && leader.at > label.from - 3 && leader.at < label.to + 3;
  return through(one, other) || through(other, one);
}
