import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Target } from "./field.ts";

/** What one record of each list is called, and one source. */
export const kindWords: Readonly<Record<Target, Said>> = {
  scholars: say`scholar`,
  questions: say`question`,
  claims: say`claim`,
  passages: say`passage`,
  positions: say`position`,
  artefacts: say`artefact`,
  images: say`image`,
  observations: say`observation`,
  measurements: say`measurement`,
  relations: say`relation`,
  arguments: say`argument`,
  derivations: say`derivation`,
  examinations: say`examination`,
  talks: say`talk`,
  searches: say`search`,
  readings: say`reading`,
  sources: say`source`,
};

/** One of each, as a sentence asks for it. */
export const oneOfKind: Readonly<Record<Target, Said>> = {
  scholars: say`a scholar`,
  questions: say`a question`,
  claims: say`a claim`,
  passages: say`a passage`,
  positions: say`a position`,
  artefacts: say`an artefact`,
  images: say`an image`,
  observations: say`an observation`,
  measurements: say`a measurement`,
  relations: say`a relation`,
  arguments: say`an argument`,
  derivations: say`a derivation`,
  examinations: say`an examination`,
  talks: say`a talk`,
  searches: say`a search`,
  readings: say`a reading`,
  sources: say`a source`,
};
