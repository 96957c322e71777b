import type { Model } from "../../build.ts";
import { putDerivations } from "./graph/evidence/derivations.ts";
import { putMeasurements } from "./graph/evidence/measurements.ts";
import { putObservations } from "./graph/evidence/observations.ts";
import { putRelations } from "./graph/evidence/relations.ts";
import { putOwnUnits } from "./graph/evidence/units.ts";
import { groundOf } from "./graph/ground.ts";
import type { Asked, Ground } from "./graph/ground.ts";
import { putCitations } from "./graph/literature/citing.ts";
import { putPassages } from "./graph/literature/passages.ts";
import { putSearches } from "./graph/literature/searches.ts";
import { putSources } from "./graph/literature/sources.ts";
import { putClaims, putQuestions } from "./graph/people/claims.ts";
import { putCorpus, putScholars } from "./graph/people/corpus.ts";
import { putPositions } from "./graph/people/positions.ts";
import { putArguments } from "./graph/reasoning/arguments.ts";
import { putExaminations } from "./graph/reasoning/examinations.ts";
import { putStandings } from "./graph/reasoning/standings.ts";
import type { Triple } from "./graph/sheet.ts";
import { putArtefacts } from "./graph/things/artefacts.ts";
import { putImages } from "./graph/things/images.ts";

export type { Asked } from "./graph/ground.ts";
export type { Triple } from "./graph/sheet.ts";

const parts: readonly ((ground: Ground) => void)[] = [
  putCorpus,
  putScholars,
  putSources,
  putPassages,
  putCitations,
  putSearches,
  putQuestions,
  putClaims,
  putPositions,
  putArtefacts,
  putImages,
  putObservations,
  putOwnUnits,
  putMeasurements,
  putRelations,
  putDerivations,
  putArguments,
  putExaminations,
  putStandings,
];

/**
 * A corpus as triples in CIDOC CRM 7.1.3 with CRMsci 3.2 and CRMinf 1.2.1: all that is not withheld, in print by the lens's
 * year, every node with an IRI, in one order whatever the order of the files. No claim stands in it as a fact.
 */
export function openData(model: Model, asked: Asked): readonly Triple[] {
  const ground = groundOf(model, asked);
  for (const put of parts) put(ground);
  return ground.sheet.triples();
}
