import { putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";

/** The examinations: designs of what could be done, no events. Each outcome says what it would speak for or against. */
export function putExaminations(ground: Ground): void {
  const { graph, sheet, shown, listed, node, words, label } = ground;
  for (const { id, values } of graph.list("examinations")) {
    if (!shown(id)) continue;
    const examination = node(id);
    sheet.is(examination, "crm:E29_Design_or_Procedure");
    putTypes(ground, examination, "vr:examination");
    sheet.has(examination, "rdfs:label", label(id));
    sheet.has(examination, "crm:P67_refers_to", ...values.of.filter(shown).map(node));
    sheet.has(examination, "vr:destructive", typed(String(values.destructive ?? false), "xsd:boolean"));
    if (values.permit !== undefined) sheet.has(examination, "vr:permit", words(values.permit));
    if (values.note !== undefined) sheet.has(examination, "crm:P3_has_note", words(values.note));
    for (const outcome of values.outcomes) {
      const what = part(examination, `outcome-${encodeURIComponent(outcome.id)}`);
      sheet.has(examination, "vr:outcome", what);
      sheet.is(what, "crm:E89_Propositional_Object");
      putTypes(ground, what, "vr:possible-outcome");
      sheet.has(what, "rdfs:label", words(outcome.text));
      sheet.has(what, "vr:would-support", ...(outcome.therefore ?? []).filter(listed).map(node));
      const against = (outcome.against ?? []).filter((one) =>
        graph.records.get(one)?.list === "claims" ? listed(one) : shown(one),
      );
      sheet.has(what, "vr:would-dispute", ...against.map(node));
      for (const { of, dimension, value } of outcome.measures ?? [])
        if (shown(of))
          sheet.has(what, "crm:P3_has_note", plain(`${dimension} of ${label(of).words}: ${value.text}`));
    }
  }
}
