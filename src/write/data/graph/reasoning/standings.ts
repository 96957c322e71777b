import type { Id } from "../../../../base/finding.ts";
import { withheldIn } from "../../../../show/withhold.ts";
import { putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import type { Node } from "../sheet.ts";

/**
 * What the program works out that follows from the record, marked as its own: each standing is an entity that the evaluation
 * generated, hung on the claim, argument or evidence. Nobody holds it, and it says nothing of what is so.
 */
export function putStandings(ground: Ground): void {
  const { graph, sheet, listed, node, model, shown } = ground;
  const evaluation = evaluationOf(ground);
  const withheld = withheldIn(graph);
  for (const [id, standing] of model.judgement.standings) {
    const record = graph.records.get(id);
    if (!record || withheld(id) || (record.list === "claims" ? !listed(id) : !shown(id))) continue;
    const found = part(node(id), "standing");
    sheet.has(node(id), "vr:standing", found);
    sheet.is(found, "prov:Entity", "crm:E73_Information_Object");
    sheet.has(found, "prov:wasGeneratedBy", evaluation);
    putTypes(ground, found, `vr:${standing}`);
    const footing = model.footings.get(id);
    if (footing !== undefined) putTypes(ground, found, `vr:footing-${footing}`);
    sheet.has(found, "vr:rests-on", ...restsOn(ground, id).map(node));
  }
}

function restsOn({ graph, model, shown, citable }: Ground, id: Id): readonly Id[] {
  return (model.restsOn.get(id) ?? []).filter((one) => (graph.sources.has(one) ? citable : shown)(one));
}

function evaluationOf({ sheet, corpus, asked }: Ground): Node {
  const evaluation = part(corpus, "evaluation");
  const program = part(corpus, "program");
  sheet.is(evaluation, "prov:Activity");
  sheet.has(evaluation, "rdfs:label", {
    words: "what follows from the record, by the well-founded model of its arguments; nobody's opinion",
    lang: "en",
  });
  sheet.has(evaluation, "prov:used", corpus);
  sheet.has(evaluation, "prov:wasAssociatedWith", program);
  sheet.is(program, "prov:SoftwareAgent");
  sheet.has(program, "rdfs:label", plain(asked.program));
  return evaluation;
}
