import { finding } from "../../base/finding.ts";
import type { Finding, Id } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import { coded, say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import { eitherOf } from "../../read/decode/named.ts";
import type { Graph } from "../graph.ts";
import { withheldIn } from "../withheld.ts";
import { examinationOf, supposing } from "./examination.ts";
import type { Supposition } from "./supposition.ts";

/** The graph under a supposition; what the corpus does not have is told, and nothing is supposed. */
export function underSupposition(
  graph: Graph,
  suppose: Supposition | undefined,
): { readonly graph: Graph; readonly unknown: readonly Finding[] } {
  if (suppose === undefined) return { graph, unknown: [] };
  const examination = examinationOf(graph, suppose.examination);
  const outcome = examination?.outcomes.find((one) => one.id === suppose.outcome);
  if (examination && outcome) return { graph: supposing(graph, examination, outcome), unknown: [] };
  return { graph, unknown: [finding("unknown-reference", unknownSupposition(graph, suppose), null)] };
}

/** What to say of a supposition that the corpus does not have: what was written, and the nearest that there is. */
export function unknownSupposition(graph: Graph, suppose: Supposition): Said {
  const examination = examinationOf(graph, suppose.examination);
  if (examination) {
    const ids = examination.outcomes.map((one) => one.id);
    return say`Unknown outcome \`${suppose.outcome}\` of \`${examination.id}\`, expected ${oneOf(suppose.outcome, ids)}`;
  }
  const withheld = withheldIn(graph);
  const ids = graph.list("examinations").map((one) => one.id);
  const known = ids.filter((id) => !withheld(id));
  return say`Unknown examination \`${suppose.examination}\`, expected ${known.length > 0 ? oneOf(suppose.examination, known) : say`one that the corpus has`}`;
}

function oneOf(written: Id, known: readonly Id[]): Said {
  const near = nearest(written, known);
  return eitherOf((near.length > 0 ? near : known).map(coded));
}
