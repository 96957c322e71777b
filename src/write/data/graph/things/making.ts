import type { Id } from "../../../../base/finding.ts";
import type { ArtefactRecord } from "../../../../link/graph.ts";
import type { Citation } from "../../../../read/grammar/field.ts";
import { putTime } from "../dates.ts";
import { putFrom } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { at } from "../sheet.ts";
import type { Node } from "../sheet.ts";
import { isSite } from "./sort.ts";

/** The event in which a thing came to be. */
export function makingOf({ graph, sheet, node }: Ground, id: Id): Node {
  const thing = node(id);
  const making = part(thing, "making");
  const record = graph.records.get(id);
  if (record?.list === "artefacts" && isSite(record.values)) {
    sheet.is(making, "crm:E63_Beginning_of_Existence");
    sheet.has(making, "crm:P92_brought_into_existence", thing);
  } else {
    sheet.is(making, "crm:E12_Production");
    sheet.has(making, "crm:P108_has_produced", thing);
  }
  return making;
}

/** When a thing was made: each date as somebody's attribution, and as the making's own only where there is but one and nobody is named. */
export function putDates(ground: Ground, { id, values }: ArtefactRecord): void {
  const { sheet, citable, node, compilers } = ground;
  const dates = (values.date ?? []).filter(
    ({ from = [] }) => from.length === 0 || from.some(({ key }) => citable(key)),
  );
  if (dates.length === 0) return;
  const making = makingOf(ground, id);
  dates.forEach(({ is, from, by }, place) => {
    const dating = part(node(id), `date-${place + 1}`);
    const span = part(dating, "time");
    putTime(sheet, span, is);
    sheet.is(dating, "crm:E13_Attribute_Assignment");
    sheet.has(dating, "crm:P140_assigned_attribute_to", making);
    sheet.has(dating, "crm:P141_assigned", span);
    sheet.has(dating, "crm:P177_assigned_property_of_type", at("vr:dated-to"));
    const actors = by ?? authorsOf(ground, from);
    sheet.has(dating, "crm:P14_carried_out_by", ...actors.filter(ground.shown).map(node));
    if (actors.length === 0 && from === undefined) {
      sheet.has(dating, "crm:P14_carried_out_by", compilers);
      if (dates.length === 1) sheet.has(making, "crm:P4_has_time-span", span);
    }
    putFrom(ground, dating, from);
  });
}

/** The scholars among the authors of the sources that a part of a record is from. */
function authorsOf({ graph }: Ground, from: readonly Citation[] = []): readonly Id[] {
  const sources = from.flatMap(({ key }) => (graph.sources.has(key) ? [key] : graph.provenance(key).sources));
  return [...new Set(sources.flatMap(graph.authorsOf))];
}
