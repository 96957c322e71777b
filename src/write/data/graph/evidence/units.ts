import { putFrom, putTypes } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import { decimal, openUnits } from "../../terms/units.ts";
import { putUnit } from "./dimension.ts";

/** The corpus's own units: hypotheses with a claimed size, whose they are and what they were found in; no unit of QUDT. */
export function putOwnUnits(ground: Ground): void {
  const { graph, sheet, shown, citable, node, named, words } = ground;
  for (const { name, names, kind, size, u, from, foundIn } of graph.settings.units) {
    if (from.length > 0 && !from.some(citable)) continue;
    const unit = named("unit", name);
    const claimed = part(unit, "size");
    const { perSI } = openUnits[kind];
    sheet.is(unit, "crm:E58_Measurement_Unit");
    putTypes(ground, unit, "vr:unit-hypothesis");
    sheet.has(unit, "rdfs:label", words(name));
    sheet.has(unit, "skos:altLabel", ...names.filter((one) => one !== name).map(words));
    sheet.has(unit, "vr:claimed-size", claimed);
    sheet.is(claimed, "crm:E54_Dimension");
    sheet.has(claimed, "crm:P90_has_value", typed(decimal(size * perSI), "xsd:decimal"));
    sheet.has(claimed, "vr:standard-uncertainty", typed(decimal(u * perSI), "xsd:decimal"));
    putUnit(ground, claimed, kind);
    putFrom(
      ground,
      unit,
      from.map((key) => ({ key, locator: null })),
    );
    sheet.has(unit, "vr:unit-found-in", ...foundIn.filter(shown).map(node));
  }
}
