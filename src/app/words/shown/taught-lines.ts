/** The lines of an argument from something seen. */
export const taughtArgument = `observations:
  - id: deep
    of: post-1
    text: The post stood deep in the chalk.
arguments:
  - id: deep-so-roofed
    because: deep
    therefore: roofed`;

/** The lines that would fill an empty page, as a person would write them into a YAML file of the corpus. */
export const taughtLines = {
  questions: `questions:
  - id: what-was-it
    text: What was the ring for?
    answers: [roofed, open-ring]
claims:
  - id: roofed
    text: The ring carried a roof.
  - id: open-ring
    text: The ring stood open.`,
  artefacts: `artefacts:
  - id: ring
    name: The ring
  - id: ring/post-2
    name: Post 2
measurements:
  - of: ring/post-2
    dimension: depth
    value: 0.84 ± 0.04 m`,
  scholars: `scholars:
  - id: tom-hale
    name: Tom Hale
positions:
  - who: tom-hale
    claim: open-ring
    stance: holds
    year: 1896`,
  outline: `artefacts:
  - id: post-1
    name: Post 1
${taughtArgument}`,
  examinations: `examinations:
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
  records: `# corpus.yaml
bibliography: [sources.bib]

# scholars.yaml
scholars:
  - id: ada-vane
    name: Ada Vane`,
} as const;

/** The lines of a derivation, and of the unit that it takes. */
export const taughtDerivation = `units:                        # in corpus.yaml
  span: { is: 22.5 ± 0.3 cm, from: hale-1896 p. 3 }

derivations:                  # in any other YAML file
  - id: rims-in-spans
    plugin: unit-fit
    inputs: { values: { of: [bowl-1, bowl-2, bowl-3], dimension: rim } }
    parameters: { unit: span }
    bears-on:
      - claim: measured-in-spans
        supports: { p: "< 0.01" }`;
