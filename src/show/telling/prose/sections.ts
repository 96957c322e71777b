import type { Graph } from "../../../link/graph.ts";
import { sectionsAsked, usualSections } from "../review/sections.ts";

/** The sections of a corpus's review in their order: those that its settings name, else the usual ones with its own prose. */
export function sectionsOf({ settings, prose }: Graph): readonly string[] {
  const own = prose.map((one) => one.name);
  return settings.review === null ? usualSections(own) : sectionsAsked(settings.review, own).sections;
}
