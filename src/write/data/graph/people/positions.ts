import type { PositionRecord } from "../../../../link/graph.ts";
import type { HeldToBe } from "../../terms/concepts.ts";
import { putBelief } from "../beliefs.ts";
import { putActors, putSaid, putTypes, putYear } from "../cited.ts";
import { part, plain, spoken } from "../ground.ts";
import type { Ground } from "../ground.ts";
import type { Known, Node } from "../sheet.ts";

type Values = PositionRecord["values"];

const held: Readonly<Record<NonNullable<Values["certainty"]>, HeldToBe>> = {
  certain: "TRUE",
  probable: "PROBABLE",
  possible: "POSSIBLE",
  unlikely: "UNLIKELY",
};

/**
 * What a stance is on the scale of beliefs: who rejects a claim with less than certainty holds it to be unlikely, and so does
 * who doubts it. The scholar's stance and certainty stand beside it as they were recorded.
 */
export function heldToBe({ stance, certainty }: Pick<Values, "stance" | "certainty">): HeldToBe {
  switch (stance) {
    case "holds":
      return certainty === undefined ? "TRUE" : held[certainty];
    case "rejects":
      return certainty === undefined || certainty === "certain" ? "FALSE" : "UNLIKELY";
    case "doubts":
      return "UNLIKELY";
    case "leaves-open":
      return "UNKNOWN";
  }
}

/** The positions: a scholar's belief about a claim, never the claim itself. A change of mind is a second belief. */
export function putPositions(ground: Ground): void {
  const { graph, sheet, shown, listed, node, label } = ground;
  for (const { id, values } of graph.list("positions")) {
    if (!shown(id) || !listed(values.claim)) continue;
    const position = node(id);
    const belief = part(position, "belief");
    sheet.is(position, "crminf:I1_Argumentation");
    sheet.has(position, "rdfs:label", label(id));
    putTypes(ground, position, "vr:position");
    putActors(ground, position, id);
    putYear(ground, position, values.year ?? graph.provenance(id).year ?? undefined);
    putSaid(ground, position, values);
    putBelief(ground, position, belief, { that: node(values.claim), held: heldToBe(values) });
    putTypes(ground, belief, `vr:${values.stance}`, ...certaintyOf(values));
    if (values.words !== undefined) {
      sheet.has(belief, "vr:own-words", spoken(values.words, languageOf(ground, values)));
    }
    if (values.stance === "holds") putReadings(ground, position, values);
  }
}

function certaintyOf({ certainty }: Values): readonly Known[] {
  return certainty === undefined ? [] : [`vr:said-${certainty}`];
}

/** The language of the first passage that a position is taken from. */
function languageOf({ graph }: Ground, { from = [] }: Values): string | undefined {
  const first = from.map(({ key }) => graph.records.get(key)).find((one) => one?.list === "passages");
  return first?.list === "passages" ? first.values.lang : undefined;
}

/** That the compilers take a passage to mean the claim: their reading, which somebody else may not share. */
function putReadings(ground: Ground, position: Node, { from = [], claim }: Values): void {
  const { graph, sheet, citable, node, compilers } = ground;
  from.forEach(({ key }, place) => {
    if (graph.records.get(key)?.list !== "passages" || !citable(key)) return;
    const reading = part(position, `reading-${place + 1}`);
    const meaning = part(reading, "meaning");
    sheet.is(reading, "crminf:I16_Meaning_Comprehension");
    sheet.has(reading, "crm:P14_carried_out_by", compilers);
    sheet.has(reading, "crminf:J22_interpreted_meaning_of", node(key));
    sheet.has(reading, "crminf:J23_interpreted_meaning_as", meaning);
    sheet.is(meaning, "crminf:I13_Intended_Meaning_Belief", "crminf:I2_Belief");
    sheet.has(meaning, "crminf:J17_about", node(key));
    sheet.has(meaning, "crminf:J16_assumed_meaning", node(claim));
    sheet.has(meaning, "crminf:J5_holds_to_be", plain("TRUE"));
  });
}
