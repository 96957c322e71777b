import { putTime } from "../dates.ts";
import { putTypes } from "../cited.ts";
import { part, plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";
import type { Node } from "../sheet.ts";

/** How the literature was searched, and how far what was found was read. */
export function putSearches(ground: Ground): void {
  const { graph, sheet, shown, citable, node, words, label } = ground;
  for (const { id, values } of graph.list("searches")) {
    if (!shown(id)) continue;
    const search = node(id);
    sheet.is(search, "crm:E7_Activity");
    putTypes(ground, search, "vr:literature-search");
    sheet.has(search, "rdfs:label", label(id));
    sheet.has(search, "vr:searched-in", words(values.where));
    sheet.has(search, "vr:searched-for", plain(values.words));
    for (const name of ["found", "screened", "kept"] as const) {
      const number = values[name];
      if (number !== undefined) sheet.has(search, `vr:${name}`, typed(String(number), "xsd:integer"));
    }
    sheet.has(
      search,
      "vr:left-out",
      ...(values["left-out"] ?? []).map(({ n, why }) => words(`${n}: ${why}`)),
    );
    putBy(ground, search, values.by);
    putWhen(ground, search, values.when);
  }
  for (const { id, values } of graph.list("readings")) {
    if (!shown(id)) continue;
    const reading = node(id);
    sheet.is(reading, "crm:E7_Activity");
    putTypes(ground, reading, "vr:reading-of-a-source", `vr:${values.status}`);
    sheet.has(reading, "rdfs:label", label(id));
    sheet.has(
      reading,
      "crm:P16_used_specific_object",
      ...values.from
        .map(({ key }) => key)
        .filter(citable)
        .map(node),
    );
    putBy(ground, reading, values.by);
    putWhen(ground, reading, values.when);
  }
}

function putBy(
  { sheet, shown, node, compilers }: Ground,
  activity: Node,
  by: readonly string[] | undefined,
): void {
  sheet.has(activity, "crm:P14_carried_out_by", ...(by ? by.filter(shown).map(node) : [compilers]));
}

function putWhen({ sheet }: Ground, activity: Node, when: string | undefined): void {
  if (when === undefined) return;
  const span = part(activity, "time");
  putTime(sheet, span, when);
  sheet.has(activity, "crm:P4_has_time-span", span);
}
