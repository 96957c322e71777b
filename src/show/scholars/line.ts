import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Stance } from "../../judge/argument.ts";
import type { Graph } from "../../link/graph.ts";
import { citationPieces } from "../pages/fields.ts";
import type { Piece } from "../pages/pieces.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import type { Left, StanceName, Taken } from "./taken.ts";

/** One position as it was taken: when, in what words, how sure, where it is said. */
export interface Point {
  readonly position: Id;
  readonly stance: StanceName;
  readonly year: number | null;
  /** Until the next position on the claim, or until a rival was held; null while it is the present one. */
  readonly until: number | null;
  readonly words: string | null;
  readonly lang: string | null;
  readonly certainty: string | null;
  /** Where it is said, each with its place. */
  readonly from: readonly (readonly Piece[])[];
  /** The source it was really read in, where that is another. */
  readonly via: readonly Piece[];
}

/** A scholar's positions on one claim, in the order of years. */
export interface Track {
  readonly claim: Id;
  readonly text: string;
  readonly standing: Standing;
  readonly points: readonly Point[];
  readonly left: Left | null;
}

/** A scholar's positions over time: the span of years to draw to scale, and a track for each claim. */
export interface DatedLine {
  /** Null when no position has a year. */
  readonly span: { readonly from: number; readonly to: number } | null;
  /** Round years to mark along it. */
  readonly marks: readonly number[];
  readonly tracks: readonly Track[];
}

/** The positions of one scholar as tracks, by the year in which each begins; `end` is the year looked from. */
export function datedLine(model: Reported, own: readonly Taken[], end: number | null): DatedLine {
  const { graph, judgement } = model;
  const tracks = own
    .map((one): Track => ({
      claim: one.claim,
      text: claimText(graph, one.claim),
      standing: judgement.standings.get(one.claim) ?? "unsupported",
      points: one.stances.map((stance, place) => pointOf(graph, stance, untilOf(one, place))),
      left: one.left,
    }))
    .toSorted((a, b) => byYear("first")(beginOf(a), beginOf(b)));
  const years = tracks.flatMap((track) => track.points.flatMap((point) => point.year ?? []));
  if (years.length === 0) return { span: null, marks: [], tracks };
  const first = Math.min(...years);
  const span = { from: first, to: Math.max(end ?? first, ...years, first + 1) };
  return { span, marks: roundYears(span.from, span.to), tracks };
}

function beginOf(track: Track): number | null {
  return track.points[0]?.year ?? null;
}

function untilOf({ stances, left }: Taken, place: number): number | null {
  const next = stances[place + 1];
  return next ? next.year : (left?.year ?? null);
}

function pointOf(graph: Graph, { position, stance, year }: Stance, until: number | null): Point {
  const record = graph.records.get(position);
  const values = record?.list === "positions" ? record.values : undefined;
  const from = values?.from ?? [];
  const [first] = from;
  return {
    position,
    stance,
    year,
    until,
    words: values?.words ?? null,
    lang: first ? languageOf(graph, first.key) : null,
    certainty: values?.certainty ?? null,
    from: from.map((one) => citationPieces(graph, one)).filter((pieces) => pieces.length > 0),
    via: values?.via ? citationPieces(graph, values.via) : [],
  };
}

/** The language of a passage, else of the source it is in; null where neither is known or they may not be shown. */
function languageOf(graph: Graph, key: Id): string | null {
  if (withheldIn(graph)(key)) return null;
  const passage = graph.records.get(key);
  if (passage?.list !== "passages") return graph.sources.get(key)?.csl.language ?? null;
  const [source] = graph.provenance(key).sources;
  return (
    passage.values.lang ?? (source === undefined ? null : (graph.sources.get(source)?.csl.language ?? null))
  );
}

/** Years at an even step that is 1, 2 or 5 times a power of ten, at most eight of them, within a span. */
export function roundYears(from: number, to: number): readonly number[] {
  const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
  const step = steps.find((one) => (to - from) / one <= 7) ?? 10_000;
  const marks: number[] = [];
  for (let year = Math.ceil(from / step) * step; year <= to; year += step) marks.push(year);
  return marks;
}
