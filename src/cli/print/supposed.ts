import type { Model } from "../../build.ts";
import { withoutStop } from "../../link/label.ts";
import { paint } from "./paint.ts";

/** What is supposed, before everything that follows from it; nothing where nothing is. */
export function supposedText({ graph }: Model): readonly string[] {
  if (graph.supposed === null) return [];
  const { outcome, examination } = graph.supposed;
  return [
    `${paint.bold("Supposed:")} ${withoutStop(outcome.text)} (${withoutStop(examination.method)}). Nothing of this has been found.`,
    "",
  ];
}
