import type { ClaimRecord } from "../../../../link/graph.ts";
import { putWording } from "../beliefs.ts";
import { putSaid, putTypes } from "../cited.ts";
import { plain } from "../ground.ts";
import type { Ground } from "../ground.ts";
import { typed } from "../sheet.ts";

/** The questions, and which claims answer them. */
export function putQuestions(ground: Ground): void {
  const { graph, sheet, shown, listed, node, words } = ground;
  for (const { id, values } of graph.list("questions")) {
    if (!shown(id)) continue;
    const question = node(id);
    sheet.is(question, "crm:E89_Propositional_Object");
    putTypes(ground, question, "vr:question");
    sheet.has(question, "rdfs:label", words(values.text));
    sheet.has(question, "vr:exclusive", typed(String(values.exclusive ?? true), "xsd:boolean"));
    if (values.note !== undefined) sheet.has(question, "crm:P3_has_note", words(values.note));
    for (const answer of values.answers) if (listed(answer)) sheet.has(node(answer), "vr:answers", question);
  }
}

/** The claims, as sets of propositions that nobody asserts here: what they say stands in them as words. */
export function putClaims(ground: Ground): void {
  const { graph, sheet, shown, listed, node, words } = ground;
  for (const { id, values } of graph.list("claims")) {
    if (!listed(id)) continue;
    const claim = node(id);
    sheet.is(claim, "crminf:I4_Proposition_Set");
    putWording(sheet, claim, words(values.text));
    sheet.has(claim, "crminf:J28_contains_entity_reference", ...(values.about ?? []).filter(shown).map(node));
    sheet.has(claim, "vr:excludes", ...graph.rivalsOf(id).filter(listed).map(node));
    sheet.has(claim, "vr:dating-of", ...datesOf(ground, values.dates ?? []).map(plain));
    putSaid(ground, claim, values);
  }
}

/** What a claim says of dates, one text for each statement; a reference to what is withheld is left out. */
function datesOf(
  { graph, shown, label }: Ground,
  dates: NonNullable<ClaimRecord["values"]["dates"]>,
): readonly string[] {
  return dates.map((one) => {
    const says = (["is", "after", "before"] as const).flatMap((how) => {
      const what = one[how];
      if (what === undefined || !graph.records.has(what)) return what === undefined ? [] : [`${how} ${what}`];
      return shown(what) ? [`${how} ${label(what).words}`] : [];
    });
    return `${one.event}: ${says.join(", ")}`;
  });
}
