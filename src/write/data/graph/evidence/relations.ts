import type { Linked } from "../../../../link/graph.ts";
import { putBelief, putProposition } from "../beliefs.ts";
import { putActors, putSaid } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Node } from "../sheet.ts";
import { makingOf } from "../things/making.ts";

/** What came before what: each as somebody's belief about one proposition of two events. */
export function putRelations(ground: Ground): void {
  const { graph, sheet, shown, node, words, label } = ground;
  for (const { id, values } of graph.list("relations")) {
    if (!shown(id)) continue;
    const relation = node(id);
    sheet.is(relation, "crminf:I1_Argumentation");
    sheet.has(relation, "rdfs:label", label(id));
    putActors(ground, relation, id);
    putSaid(ground, relation, values);
    if (values.because !== undefined) sheet.has(relation, "crm:P3_has_note", words(values.because));
    for (const name of ["at-least", "at-most"] as const) {
      const years = values[name];
      if (years !== undefined) sheet.has(relation, `vr:${name}-years`, typed(String(years), "xsd:decimal"));
    }
    const [first, second] = eventsOf(ground, values);
    const property = values["same-time"] ? "vr:at-one-time" : "vr:ends-before";
    const that = putProposition(ground, part(relation, "proposition"), {
      text: label(id),
      about: [first, second].filter((one) => one !== undefined),
      states: first && second ? { of: first, property, value: second } : null,
    });
    putBelief(ground, relation, part(relation, "belief"), { that, held: "TRUE" });
  }
}

/** The two events of a relation: the making of a thing, or an event in words, one for each wording. */
function eventsOf(ground: Ground, values: Linked<"relations">["values"]): readonly Node[] {
  const { graph, sheet, named, words } = ground;
  const two = values["same-time"] ?? [values.earlier ?? "", values.later ?? ""];
  return two.map((event) => {
    if (graph.records.get(event)?.list === "artefacts") return makingOf(ground, event);
    const told = named("event", event);
    sheet.is(told, "crm:E5_Event");
    sheet.has(told, "rdfs:label", words(event));
    return told;
  });
}
