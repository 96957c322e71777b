import { limitsOf, putTime } from "../dates.ts";
import { putFrom, putTypes } from "../cited.ts";
import { part } from "../ground.ts";
import type { Ground } from "../ground.ts";
import type { ArtefactRecord } from "../../../../link/graph.ts";
import { parseEdtf } from "../../../../base/date/edtf.ts";
import type { Known, Node } from "../sheet.ts";

type Event = NonNullable<ArtefactRecord["values"]["history"]>[number];

/** What happened to a thing since it was made, as far as sources that may be cited tell it. */
export function putHistory(ground: Ground, { id, values }: ArtefactRecord): void {
  const { sheet, node, words } = ground;
  const thing = node(id);
  (values.history ?? []).forEach((one, place) => {
    if (!told(ground, one)) return;
    const event = part(thing, `history-${place + 1}`);
    const span = part(event, "time");
    putSort(ground, event, thing, one.kind, values["held-at"] !== undefined);
    putTypes(ground, event, `vr:${one.kind}`);
    sheet.has(event, "rdfs:label", words(one.what));
    putTime(sheet, span, one.when);
    sheet.has(event, "crm:P4_has_time-span", span);
    putFrom(ground, event, one.from);
  });
}

/** Whether a source that may be cited tells of an event; without one, whether it is past under the lens. */
function told({ citable, model }: Ground, { when, from = [] }: Event): boolean {
  if (from.length > 0) return from.some(({ key }) => citable(key));
  const read = parseEdtf(when);
  const year = "ok" in read ? (read.ok.low ?? read.ok.high ?? -Infinity) : -Infinity;
  return year <= (model.lens.asOf ?? Infinity) || limitsOf(when) === null;
}

/** Conservation and restoration modify; a sample is taken off; what is lost may still exist, so nothing says it was destroyed. */
function putSort({ sheet }: Ground, event: Node, thing: Node, kind: Event["kind"], movable: boolean): void {
  const as = (sort: Known, property: Known): void => {
    sheet.is(event, sort);
    sheet.has(event, property, thing);
  };
  switch (kind) {
    case "conservation":
    case "restoration":
      return as("crm:E11_Modification", "crm:P31_has_modified");
    case "sampling":
      return as("crmsci:S2_Sample_Taking", "crmsci:O3_sampled_from");
    case "move":
      return movable
        ? as("crm:E9_Move", "crm:P25_moved")
        : as("crm:E7_Activity", "crm:P12_occurred_in_the_presence_of");
    case "excavation":
      return as("crm:E7_Activity", "crm:P12_occurred_in_the_presence_of");
    case "loss":
      return as("crm:E5_Event", "crm:P12_occurred_in_the_presence_of");
  }
}
