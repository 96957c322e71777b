/** The lines of an argument from something seen. */
export const taughtArgument = `observations:
  - id: deep
    of: post-1
    text: The post stood deep in the chalk.
arguments:
  - id: deep-so-roofed
    because: deep
    therefore: roofed`;

/** What an empty page teaches: the lines that would fill it, to be written into any YAML file of the corpus. */
export const empty = {
  questions: {
    text: "The corpus asks no question yet. A question and its answers are written so, in any YAML file of the folder; the page follows as soon as the file is saved.",
    lines: `questions:
  - id: what-was-it
    text: What was the ring for?
    answers: [roofed, open-ring]
claims:
  - id: roofed
    text: The ring carried a roof.
  - id: open-ring
    text: The ring stood open.`,
  },
  artefacts: {
    text: "The corpus has no artefacts yet. A thing has an id and a name; its parts name it; what was measured on it names its dimension:",
    lines: `artefacts:
  - id: ring
    name: The ring
  - id: ring/post-2
    name: Post 2
measurements:
  - of: ring/post-2
    dimension: depth
    value: 0.84 ± 0.04 m`,
  },
  scholars: {
    text: "The corpus names no scholar yet. A scholar has a name; a position says what they make of a claim, and where they say it:",
    lines: `scholars:
  - id: tom-hale
    name: Tom Hale
positions:
  - who: tom-hale
    claim: open-ring
    stance: holds
    year: 1896`,
  },
  outline: {
    text: "There is nothing to outline yet. An argument ties a claim to what was seen or measured:",
    lines: `artefacts:
  - id: post-1
    name: Post 1
${taughtArgument}`,
  },
  examinations: {
    text: "No examination is recorded yet. It names the things to look at, how, and what may come of it; what each outcome would speak for and against is all that a plan needs:",
    lines: `examinations:
  - id: casts
    of: post-1
    method: raking light on the cast of the floor
    cost: 1
    permit: reader's ticket
    outcomes:
      - id: round-ends
        text: The marks are round-ended.
        therefore: roofed
      - id: straight-ends
        text: The marks end straight.
        against: roofed`,
  },
  records: {
    text: "Nothing is recorded yet. Records are lists named after their kind; scholars and sources are a good beginning:",
    lines: `# corpus.yaml
bibliography: [sources.bib]

# scholars.yaml
scholars:
  - id: ada-vane
    name: Ada Vane`,
  },
} as const;
