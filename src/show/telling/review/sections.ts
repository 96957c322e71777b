import { nearest } from "../../../base/nearest.ts";
import { coded, row, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import { suchAs } from "../../../read/decode/named.ts";
import { sectionNames } from "../../../read/prose/sections.ts";
import type { SectionName } from "../../../read/prose/sections.ts";

/** What each section is headed with. */
export const sectionHeadings: Readonly<Record<SectionName, Said>> = {
  question: say`The question`,
  searches: say`How the literature was searched`,
  course: say`The course of the dispute`,
  answers: say`The answers and what is said for and against them`,
  positions: say`Who holds what`,
  evidence: say`The evidence, artefact by artefact`,
  numbers: say`What was computed`,
  contradictions: say`Where the record contradicts itself`,
  unsupported: say`What is held without support`,
  single: say`What rests on a single artefact or source`,
  next: say`What to examine next`,
  computations: say`How the numbers were computed`,
  references: say`References`,
};

/** Names of a scholar's own sections that open a text, by common practice. */
const opening: readonly string[] = ["abstract", "summary", "preface", "introduction", "background"];

/** Whether a section is one of the program's; any other is a scholar's own, named after its file. */
export function isSection(name: string): name is SectionName {
  return (sectionNames as readonly string[]).includes(name);
}

/**
 * All sections in their usual order, with the scholar's own ones among them: what opens a text stands first, all else
 * before the computations and the references.
 */
export function usualSections(own: Iterable<string>): readonly string[] {
  const others = [...own].filter((name) => !isSection(name));
  const first = opening.filter((name) => others.includes(name));
  const last = others.filter((name) => !opening.includes(name));
  const end = sectionNames.indexOf("computations");
  return [...first, ...sectionNames.slice(0, end), ...last, ...sectionNames.slice(end)];
}

/**
 * The names of sections as they are asked for, each once; `own` are the scholar's own ones. A name that is neither is told
 * with the nearest there are.
 */
export function sectionsAsked(
  names: readonly string[],
  own: Iterable<string>,
): { readonly sections: readonly string[]; readonly unknown: readonly UnknownSection[] } {
  const known = [...new Set([...sectionNames, ...own])];
  const asked = [...new Set(names)];
  return {
    sections: asked.filter((name) => known.includes(name)),
    unknown: asked
      .filter((name) => !known.includes(name))
      .map((name) => {
        const near = nearest(name, known);
        const due = near.length > 0 ? suchAs(say`a section`, near) : say`one of ${row(known, "comma")}`;
        return { name, near, said: say`Unknown section ${coded(name)}, expected ${due}` };
      }),
  };
}

/** A name that no section has, those most like it, and the two in a sentence. */
export interface UnknownSection {
  readonly name: string;
  readonly near: readonly string[];
  readonly said: Said;
}
