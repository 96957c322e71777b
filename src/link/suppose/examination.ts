import type { Id } from "../../base/finding.ts";
import type { Graph } from "../graph.ts";
import { withheldIn } from "../withheld.ts";
import { measureMissing } from "./lacking.ts";
import type { Examination } from "./outcome.ts";
import { lookAgain, measureAgain, seeAgain } from "./proposed.ts";
import { recordedExamination } from "./recorded.ts";

export type {
  Examination,
  ExaminationOrigin,
  SupposedReading,
  SupposedFeature,
  Supposed,
  SupposedOutcome,
} from "./outcome.ts";
export { supposing } from "./supposing.ts";

/**
 * The examination of an id: a recorded one, or one that the record alone proposes (`look-again:EVIDENCE`,
 * `see-again:ARTEFACT`, `measure-again:MEASUREMENT`, `measure:DERIVATION`). Null where there is none, or it is withheld.
 */
export function examinationOf(given: Graph, id: Id): Examination | null {
  const graph = given.supposed?.before ?? given;
  const withheld = withheldIn(graph);
  const found = resolved(graph, id, withheld);
  if (!found) return null;
  return found.of.length > 0 && found.of.every(withheld) ? null : found;
}

function resolved(graph: Graph, id: Id, withheld: (id: Id) => boolean): Examination | null {
  const record = graph.records.get(id);
  if (record?.list === "examinations") return withheld(id) ? null : recordedExamination(record);
  const colon = id.indexOf(":");
  const about = graph.records.get(id.slice(colon + 1));
  if (colon < 0 || !about || withheld(about.id)) return null;
  const seen = about.list === "observations" || about.list === "measurements";
  switch (id.slice(0, colon)) {
    case "look-again":
      return seen ? lookAgain(graph, about) : null;
    case "see-again":
      return about.list === "artefacts" ? seeAgain(graph, about) : null;
    case "measure-again":
      return about.list === "measurements" ? measureAgain(graph, about) : null;
    case "measure":
      return about.list === "derivations" ? measureMissing(graph, about) : null;
    default:
      return null;
  }
}
