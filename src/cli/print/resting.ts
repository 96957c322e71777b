import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Model } from "../../build.ts";
import { linesTo } from "../../judge/resting/lines/lines.ts";
import { labelOf } from "../../link/names/label.ts";
import type { Piece } from "../../show/pages/pieces.ts";
import { restingOf } from "../../show/judged/resting/page.ts";
import { listedUnder } from "../../show/withhold.ts";
import { paint, standingMark } from "./paint.ts";
import { quotedText } from "./quoted.ts";

/** Sets of losses that are printed for one claim. */
const mostPrinted = 12;

/** What claims rest on: single losses, sets of losses, and the lines that lead to those that answer a question. */
export function restingText(model: Model): readonly string[] {
  if (model.lossSets === null) return [];
  const listed = listedUnder(model);
  const claims = [...model.restsOn].filter(
    ([id, alone]) => listed(id) && (alone.length > 0 || model.lossSets?.has(id)),
  );
  if (claims.length === 0) return [];
  return [
    paint.bold("What claims rest on"),
    ...claims.flatMap(([id, alone]) => [...claimText(model, id, alone), ""]),
  ];
}

function claimText(model: Model, id: Id, alone: readonly Id[]): readonly string[] {
  const { graph } = model;
  const names = [...new Set(alone.map((one) => labelOf(graph, one)))];
  return [
    `  ${standingMark("stands")}  ${labelOf(graph, id)}`,
    ...(names.length > 0 ? [`       Would not stand without: ${names.join("; ")}.`] : []),
    ...togetherText(model, id),
  ];
}

function togetherText(model: Model, id: Id): readonly string[] {
  const sets = model.lossSets?.get(id);
  const lines = linesTo(model.graph, model.judgement, id);
  if (!sets || !lines) return [];
  const { gist, together, note, lines: told, yet, paths } = restingOf(model.graph, sets, lines);
  const more = together.length - mostPrinted;
  const quoted = (pieces: readonly Piece[]): string => quotedText(model.graph, pieces);
  return [
    ...(gist === null ? [] : [`       ${inEnglish(gist)}`]),
    ...(together.length > 0 ? ["       It would also fall with these lost together:"] : []),
    ...together.slice(0, mostPrinted).map((pieces) => `         ${quoted(pieces)}`),
    ...(more > 0 ? [`         and ${more} more; --json has them all`] : []),
    ...(note === null ? [] : [`       ${inEnglish(note)}`]),
    `       ${quoted(told)}${yet === null ? "" : ` ${quoted(yet)}`}`,
    ...(paths.length > 1 ? paths.map((path) => `         ${path.map((one) => one.text).join(" — ")}`) : []),
  ];
}
