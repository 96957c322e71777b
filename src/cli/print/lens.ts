import { yearText } from "../../base/date/year.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Model } from "../../build.ts";
import { withoutStop } from "../../link/names/label.ts";
import { paint } from "./paint.ts";

/** What the dispute is looked at through, before everything that follows from it: a year, a supposed outcome, or nothing. */
export function lensText({ graph, lens }: Model): readonly string[] {
  const year = lens.asOf === undefined ? [] : [`As known in ${yearText(lens.asOf)}`, ""];
  if (graph.supposed === null) return year;
  const { outcome, examination } = graph.supposed;
  return [
    ...year,
    `${paint.bold("Supposed:")} ${withoutStop(inEnglish(outcome.text))} (${withoutStop(inEnglish(examination.method))}). Nothing of this has been found.`,
    "",
  ];
}
