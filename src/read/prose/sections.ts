/** The sections that a review can have, in their usual order. */
export const sectionNames = [
  "question",
  "searches",
  "course",
  "answers",
  "positions",
  "evidence",
  "numbers",
  "contradictions",
  "unsupported",
  "single",
  "next",
  "computations",
  "references",
] as const;

/** A section by its name. */
export type SectionName = (typeof sectionNames)[number];
