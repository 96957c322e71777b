import type { Tie } from "../../show/pages/ties.ts";
import type { ExplainedRole } from "../../show/pages/explained.ts";
import type { OutlineLine } from "../../show/pages/outline/outline.ts";

/** How a tie is named, seen from above and from below. */
export const tieWords: Readonly<Record<Tie["how"], readonly [below: string, above: string]>> = {
  for: ["argument for it", "argues for"],
  against: ["argument against it", "argues against"],
  premise: ["from", "a premise of"],
  "computed on": ["computed on", "used by"],
  "bears on": ["bears on", "bears on"],
  of: ["of", "of"],
  "seen or measured": ["seen or measured", "seen or measured on it"],
  part: ["part", "its part"],
  whole: ["part of", "whole"],
  "said in": ["said in", "said in"],
  says: ["says", "says"],
  position: ["position", "position"],
};

/** What a line of an explanation is to the line above it. */
export const roleWords: Readonly<Record<ExplainedRole, string>> = {
  for: "argument for it",
  from: "from",
  used: "computed on",
  against: "against it",
  answered: "an objection that fails",
  member: "",
  settler: "",
  lack: "",
};

/** What a line of the outline is to the line above it. */
export const branchWords: Readonly<Record<OutlineLine["role"], string>> = {
  question: "",
  answer: "",
  for: "for:",
  against: "against:",
  from: "from:",
  used: "computed on:",
  thing: "on:",
};

/** What a number says of a claim. */
export const bearingWords = {
  supports: "supports",
  disputes: "disputes",
  inconclusive: "neither supports nor disputes",
} as const;

/** What everything of one kind is called, as a heading. */
export const kindWords: Readonly<Record<string, string>> = {
  scholars: "Scholars",
  questions: "Questions",
  claims: "Claims",
  passages: "Passages",
  positions: "Positions",
  artefacts: "Artefacts",
  images: "Pictures",
  observations: "Observations",
  measurements: "Measurements",
  relations: "Relations",
  arguments: "Arguments",
  derivations: "Computed numbers",
  examinations: "Examinations",
  searches: "Searches of the literature",
  sources: "Sources",
};

/** How far a record's grounds reach. */
export const footingWords: Readonly<Record<string, string>> = {
  observed: "It reaches something seen or measured.",
  silent: "It reaches only what was passed over in silence.",
  attested: "It is held, but reaches nothing seen.",
  bare: "Nobody holds it and nothing is under it.",
};

/** What stands over a record's fields, by its kind, where that is another title than for a claim. */
export const saysWords: Readonly<Record<string, string>> = {
  scholar: "Who they are",
  source: "In the bibliography",
  artefact: "What it is",
  image: "What it is",
  derivation: "How it is computed",
};
