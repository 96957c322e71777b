import { putTime } from "../dates.ts";
import { putFrom, putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { putLicence } from "../licence.ts";
import type { Node } from "../sheet.ts";

/** The pictures that may be published, and what they show; one of anything withheld is left out whole. */
export function putImages(ground: Ground): void {
  const { graph, sheet, shown, node, words, label } = ground;
  for (const { id, values } of graph.list("images")) {
    if (!shown(id) || values.publish !== true || !values.of.every(shown)) continue;
    const image = node(id);
    sheet.is(image, "crm:E36_Visual_Item");
    sheet.has(image, "rdfs:label", label(id));
    sheet.has(image, "crm:P138_represents", ...values.of.map(node));
    sheet.has(image, "vr:file", plain(values.file));
    if (values.kind === "photograph" || values.kind === "drawing" || values.kind === "scan")
      putTypes(ground, image, `vr:${values.kind}`);
    if (values.scale !== undefined) sheet.has(image, "vr:scale", plain(values.scale));
    if (values.credit !== undefined) sheet.has(image, "vr:credit", words(values.credit));
    putLicence(ground, image, values.licence);
    putCreation(ground, image, values["made-by"], values.when);
    putFrom(ground, image, values.from);
  }
}

/** Who made a picture, and when. */
function putCreation(ground: Ground, image: Node, by: string | undefined, when: string | undefined): void {
  if (by === undefined && when === undefined) return;
  const { sheet, words } = ground;
  const making = part(image, "making");
  sheet.is(making, "crm:E65_Creation");
  sheet.has(making, "crm:P94_has_created", image);
  if (by !== undefined) {
    const maker = part(making, "by");
    sheet.is(maker, "crm:E39_Actor");
    sheet.has(maker, "rdfs:label", words(by));
    sheet.has(making, "crm:P14_carried_out_by", maker);
  }
  if (when !== undefined) {
    const span = part(making, "time");
    putTime(sheet, span, when);
    sheet.has(making, "crm:P4_has_time-span", span);
  }
}
