import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Lens, Model, SourceFile } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import type { TalkDesk } from "../../../src/show/telling/talk/talk.ts";

/** A fen with two pegs in print in 1990 and 2001, a third under seal, and a talk that shows all that a talk can. */
export const talkFiles: Readonly<Record<string, string>> = {
  "corpus.yaml": `format: 1
title: The pegs of Reed Fen
authors: [{ name: The Reed Fen circle }]
bibliography: [sources.bib]
withhold: [umbra-peg, umbra-claim, umbra-1950, umbra-length, umbra-plate]
dimensions: { length: { kind: length }, spacing: { kind: length } }
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Pegs}, year = {1990}, publisher = {Fen Press}, address = {Ely}}
@book{reed-2001, author = {Reed, Mal}, title = {The Pegs Again}, year = {2001}, publisher = {Fen Press}, address = {Ely}}
@book{umbra-1950, author = {May, Una}, title = {Umbrawords}, year = {1950}}
`,
  "pegs.yaml": `scholars:
  - { id: hale, name: Ada Hale, known-as: ["Hale, Ada"] }
  - { id: reed, name: Mal Reed, known-as: ["Reed, Mal"] }
artefacts:
  - { id: peg-1, name: the first peg, shape: { rectangle: [breadth, length] }, coordinates: 51.1234 -1.5678, found-at: Fennimore hollow, withhold-location: true }
  - { id: peg-2, name: the second peg }
  - { id: umbra-peg, name: the Umbra peg }
measurements:
  - { id: long, of: peg-1, dimension: length, value: 42.7 ± 0.2 cm, from: hale-1990 p. 3 }
  - { id: wide, of: peg-1, dimension: breadth, value: 6.1 cm, from: hale-1990 p. 3 }
  - { id: gap-1, of: peg-1, dimension: spacing, value: 1.48 m, from: reed-2001 p. 5 }
  - { id: gap-2, of: peg-2, dimension: spacing, value: 2.23 m, from: reed-2001 p. 5 }
  - { id: umbra-length, of: peg-2, dimension: length, value: 77.7 cm, from: umbra-1950 p. 4 }
observations:
  - { id: bored, of: peg-1, text: The hole was bored., feature: spiral marks, from: hale-1990 p. 4 }
  - { id: charred, of: peg-2, text: The hole is charred., feature: charring, from: reed-2001 p. 4 }
claims:
  - { id: bored-hole, text: The hole was bored with a spoon bit of iron. }
  - { id: burnt-hole, text: The hole was burnt through with a hot rod. }
  - { id: umbra-claim, text: Umbrawords of a claim. }
questions:
  - { id: how, text: How was the hole made?, answers: [bored-hole, burnt-hole, umbra-claim] }
positions:
  - { id: hale-holds, who: hale, claim: bored-hole, stance: holds, from: hale-1990 p. 4, words: "bored, and well bored" }
  - { id: reed-holds, who: reed, claim: burnt-hole, stance: holds, from: reed-2001 p. 4 }
arguments:
  - { id: marks, because: bored, therefore: bored-hole, from: hale-1990 p. 4 }
  - { id: char, because: charred, therefore: burnt-hole, from: reed-2001 p. 4 }
derivations:
  - id: pace
    plugin: unit-fit
    inputs: { values: [gap-1, gap-2] }
    parameters: { low: 0.7 m, high: 0.8 m, draws: 200 }
    text: Two gaps against a pace.
images:
  - { id: plan, of: peg-1, file: images/plan.svg, credit: The circle, licence: CC0-1.0, publish: true }
  - { id: private, of: peg-1, file: images/private.svg }
  - { id: umbra-plate, of: peg-1, file: images/umbra.svg, publish: true }
examinations:
  - { id: look, of: [peg-1], method: raking light on the hole, cost: 1, permit: reader's ticket, outcomes: [{ id: spiral, text: It is spiral., therefore: [bored-hole] }] }
talks:
  - id: all
    title: Two pegs, and how they were bored
    steps:
      - { show: { image: plan }, text: The fen., notes: "Let them look <first> & wait." }
      - { show: { image: private } }
      - { show: { image: umbra-plate } }
      - { show: { question: how }, text: Two answers are alive., notes: Say both. }
      - { show: { question: how, as-of: 1995 }, text: As it was. }
      - { show: [bored-hole, umbra-claim, bored, long, hale-holds, marks, peg-2, hale-1990], text: Words. }
      - { show: [burnt-hole, charred], text: Words of 1995. }
      - { show: { around: bored-hole, steps: 1 }, text: What it hangs from. }
      - { show: { around: burnt-hole, steps: 1, as-of: 1995 }, text: What it hung from. }
      - { show: { figure: pace }, text: A pace. }
      - { show: { drawing: [peg-1, peg-2, umbra-peg] }, text: To scale. }
      - { show: { table: examinations }, text: Next. }
      - { show: { table: claims }, text: All claims. }
      - { show: { table: ghosts }, text: No such table. }
      - { show: [look] }
`,
};

/** A corpus with all its numbers computed, as a talk is made from it. */
export async function deskOf(files: Readonly<Record<string, string>> = talkFiles) {
  const given: readonly SourceFile[] = Object.entries(files).map(([path, text]) => ({ path, text }));
  const memo = emptyMemo();
  const computing = computingHere(plugins);
  const under = (lens: Lens, reach = {}) => evaluate(given, plugins, memo, computing, { lens, reach });
  const { model, findings } = await under({});
  if (model === null) throw new Error(JSON.stringify(findings));
  await under({ asOf: 1995 });
  const at = (lens: Lens): Model => {
    const built = build(given, plugins, memo, lens).model;
    if (built === null) throw new Error("the corpus cannot be read");
    return built;
  };
  const desk: TalkDesk = { model, under: at, plugins };
  return { desk, model, findings, files: given, memo, under };
}
