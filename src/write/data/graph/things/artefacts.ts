import type { Id } from "../../../../base/finding.ts";
import type { ArtefactRecord } from "../../../../link/graph.ts";
import { placeWithheld } from "../../../../show/withhold.ts";
import { ownConcept, putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import type { Node } from "../sheet.ts";
import { putDates } from "./making.ts";
import { classOf } from "./sort.ts";
import { putHistory } from "./history.ts";

/** The things: what they are called, their parts, what they are made of, where they are; where they were found unless that is kept back. */
export function putArtefacts(ground: Ground): void {
  const { graph, sheet, shown, node, words, label } = ground;
  for (const record of graph.list("artefacts")) {
    const { id, values } = record;
    if (!shown(id)) continue;
    const thing = node(id);
    sheet.is(thing, classOf(record));
    sheet.has(thing, "rdfs:label", label(id));
    if (values.kind !== undefined)
      sheet.has(thing, "crm:P2_has_type", ownConcept(ground, "kind", values.kind));
    if (values.material !== undefined) {
      const material = ownConcept(ground, "material", values.material);
      sheet.is(material, "crm:E57_Material");
      sheet.has(thing, "crm:P45_consists_of", material);
    }
    if (values.note !== undefined) sheet.has(thing, "crm:P3_has_note", words(values.note));
    const whole = graph.wholeOf.get(id);
    if (whole !== undefined && shown(whole)) sheet.has(node(whole), "crm:P46_is_composed_of", thing);
    putNumbers(ground, thing, values.numbers);
    putPlaces(ground, id, thing, values);
    putDates(ground, record);
    putHistory(ground, record);
  }
}

function putNumbers(ground: Ground, thing: Node, numbers: ReadonlyMap<string, string> | undefined): void {
  const { sheet } = ground;
  for (const [register, number] of numbers ?? []) {
    const identifier = part(thing, `number-${encodeURIComponent(register)}`);
    sheet.is(identifier, "crm:E42_Identifier");
    putTypes(ground, identifier, "vr:number-in-a-register");
    sheet.has(identifier, "crm:P2_has_type", ownConcept(ground, "register", register));
    sheet.has(identifier, "crm:P190_has_symbolic_content", plain(number));
    sheet.has(thing, "crm:P1_is_identified_by", identifier);
  }
}

/** Where a thing is and was; coordinates are never told, and neither is a place that is kept back. */
function putPlaces(ground: Ground, id: Id, thing: Node, values: ArtefactRecord["values"]): void {
  const { graph, sheet, words } = ground;
  const placed = (name: string): Node => {
    const place = ground.named("place", name);
    sheet.is(place, "crm:E53_Place");
    sheet.has(place, "rdfs:label", words(name));
    return place;
  };
  if (values["held-at"] !== undefined)
    sheet.has(thing, "crm:P55_has_current_location", placed(values["held-at"]));
  if (values.access?.keeper !== undefined) {
    const keeper = ground.named("keeper", values.access.keeper);
    sheet.is(keeper, "crm:E39_Actor");
    sheet.has(keeper, "rdfs:label", words(values.access.keeper));
    sheet.has(thing, "crm:P50_has_current_keeper", keeper);
  }
  const kept = placeWithheld(graph, id);
  const found = values["found-at"];
  if (found !== undefined && !kept) sheet.has(thing, "crm:P53_has_former_or_current_location", placed(found));
  const left = [
    ...(kept && found !== undefined ? ["Where it was found is withheld."] : []),
    ...(values.coordinates === undefined ? [] : ["Its coordinates are withheld."]),
  ];
  sheet.has(thing, "dwc:informationWithheld", ...left.map((one) => ({ words: one, lang: "en" })));
}
