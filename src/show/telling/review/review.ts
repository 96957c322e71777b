import type { Id } from "../../../base/finding.ts";
import { yearWords } from "../../../base/date/year-words.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Block, Inlines, Manuscript } from "../blocks/block.ts";
import { withholdingSaid } from "../withholding.ts";
import { answersSection } from "./answers/answers.ts";
import { sightOf } from "./desk.ts";
import type { ReviewDesk, Sight } from "./desk.ts";
import { contradictionsSection } from "./doubts/contradictions.ts";
import { singleSection } from "./doubts/single.ts";
import { unsupportedSection } from "./doubts/unsupported.ts";
import { courseSection } from "./dispute/course.ts";
import { positionsSection } from "./dispute/positions.ts";
import { questionSection } from "./dispute/question.ts";
import { evidenceSection } from "./evidence/evidence.ts";
import { nextSection } from "./next/next.ts";
import { numbersSection } from "./numbers/numbers.ts";
import { computationsIn } from "./pieces/computations.ts";
import { heading, paragraph } from "./pieces/inlines.ts";
import { searchesSection } from "./searches/searches.ts";
import { isSection, sectionHeadings } from "./sections.ts";
import type { SectionName } from "../../../read/prose/sections.ts";

export type { ReviewDesk } from "./desk.ts";

/** What is asked of a review. */
export interface ReviewAsked {
  /** The question it is about; null for all of them. */
  readonly question: Id | null;
  /** Sections in their order: the program's, and the scholar's own by the names of their files. */
  readonly sections: readonly string[];
  /** The scholar's own prose by name: at the head of the section of that name, else a section of its own. */
  readonly prose: ReadonlyMap<string, readonly Block[]>;
}

/** The review of a dispute, as a text that has neither a format nor a citation style yet; empty sections are left out. */
export function reviewOf(desk: ReviewDesk, { question, sections, prose }: ReviewAsked): Manuscript {
  const sight = sightOf(desk, question);
  const { title, language, authors } = sight.graph.settings;
  const told = sections.map((name) => ({ name, blocks: sectionBlocks(sight, name, prose.get(name) ?? []) }));
  const body = told.filter(({ name }) => !isEnd(name)).flatMap(({ blocks }) => blocks);
  const computations = computationsIn(sight, body);
  const end = told
    .filter(
      ({ name }) => isEnd(name) && (name !== "computations" || computations.length > 0 || prose.has(name)),
    )
    .flatMap(({ blocks }) => blocks);
  return {
    title: titleOf(title),
    authors: authors.map(({ name }) => name),
    language,
    blocks: [...underLens(sight), { is: "contents" }, ...body, ...declared(sight), ...end],
    computations,
  };
}

function titleOf(title: string): Text {
  return title === "" ? say`A review of the literature` : say`${title}: a review of the literature`;
}

/** What is listed at the end of a text whatever stands before it. */
function isEnd(name: string): boolean {
  return name === "computations" || name === "references";
}

const contents: Readonly<Record<SectionName, (sight: Sight) => readonly Block[]>> = {
  question: questionSection,
  searches: searchesSection,
  course: courseSection,
  answers: answersSection,
  positions: positionsSection,
  evidence: evidenceSection,
  numbers: numbersSection,
  contradictions: contradictionsSection,
  unsupported: unsupportedSection,
  single: singleSection,
  next: nextSection,
  computations: () => [
    ...paragraph([
      [
        say`Each number printed above comes of one of these computations. The key is a hash of all that went into it, the method with its version, the settings and the readings: who computes on the same comes to the same key.`,
      ],
      [
        say`What stands in brackets after a number is its interval of 95 %, unless its method says otherwise.`,
      ],
    ]),
    { is: "computations" },
  ],
  references: () => [{ is: "references" }],
};

/** A section with its heading: the scholar's prose first; prose that brings a heading of its own needs no other. */
function sectionBlocks(sight: Sight, name: string, own: readonly Block[]): readonly Block[] {
  const blocks = isSection(name) ? contents[name](sight) : [];
  if (own.length + blocks.length === 0) return [];
  const [first] = own;
  const headed = first?.is === "heading" && first.level === 1;
  return [...(headed ? [] : [heading(1, headingOf(name), `section-${name}`)]), ...own, ...blocks];
}

function headingOf(name: string): Inlines {
  if (isSection(name)) return [sectionHeadings[name]];
  const words = name.replace(/[-_/]+/gu, " ").trim();
  return [words.charAt(0).toUpperCase() + words.slice(1)];
}

/** What the text looks at when it is not the record as it is. */
function underLens({ model, graph }: Sight): readonly Block[] {
  const { asOf, without = [], instead = [] } = model.lens;
  const { supposed } = graph;
  return paragraph([
    asOf === undefined
      ? []
      : [
          say`This text tells the dispute as it stood at the end of ${yearWords(asOf)}, on what was then in print.`,
        ],
    supposed === null
      ? []
      : [
          say`It takes as found what has not been found: that “${labelText(graph, supposed.examination.id)}” came out as supposed. What follows is a supposition, not a result.`,
        ],
    without.length + instead.length === 0
      ? []
      : [
          say`It leaves out a part of the record, or takes other readings than the record prefers; it is a trial, not a result.`,
        ],
  ]);
}

/** That something is withheld, never what. */
function declared({ graph }: Sight): readonly Block[] {
  return paragraph(withholdingSaid(graph).map((said) => [said]));
}
