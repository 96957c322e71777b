import type { Id } from "../../../../base/finding.ts";
import { yearText } from "../../../../base/date/year.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { authorText, labelText, schemeText, withoutStop } from "../../../../link/names/label.ts";
import type { Net } from "../net/net.ts";
import type { Step } from "../net/steps.ts";

/** Between a standing and who holds it, and between a number's argument and what the number says. */
export const apart = " · ";

/** Schemes that one argues by rather than from. */
const by: Readonly<Record<string, Said>> = {
  parallel: say`by parallel`,
  analogy: say`by analogy`,
  function: say`by function`,
  experiment: say`by experiment`,
  authority: say`by authority`,
};

/** What a beam is called: how the step goes and whose it is, `by function, Oyelaran 2004`; null where nobody says. */
export function stepWords(net: Net, step: Step): Text | null {
  const [how, who] = [howWords(step), authorText(net.graph, step.from)];
  const said = how !== null && who !== null ? say`${how}, ${who}` : (how ?? who);
  if (step.therefore !== null) return said;
  const onStep = step.against.some((id) => net.kindOf(id) === "step");
  if (said === null) return onStep ? say`against this step` : say`against it`;
  return onStep ? say`against this step: ${said}` : say`against it: ${said}`;
}

function howWords({ how, scheme }: Step): Text | null {
  if (how === "bearing") return say`by number`;
  if (how === "testimony") return say`by testimony`;
  if (scheme === null || scheme === "other") return null;
  return by[scheme] ?? schemeText(scheme);
}

const basisWords: Readonly<Record<string, Said>> = {
  autopsy: say`on site`,
  cast: say`cast`,
  replica: say`replica`,
  scan: say`scan`,
  photograph: say`photograph`,
  drawing: say`drawing`,
  report: say`report`,
};

const presentWords: Readonly<Record<string, Said>> = {
  false: say`looked for`,
  unclear: say`not to be told`,
  "not-reported": say`passed over`,
};

/** When and how a label's value was got: `1998, on site`; whose it is where neither is recorded. */
export function labelUnder(graph: Graph, id: Id): Text {
  const record = graph.records.get(id);
  const values = record?.values as
    { readonly year?: number; readonly basis?: string; readonly present?: string } | undefined;
  const year = values?.year ?? graph.provenance(id).year;
  const how = presentWords[values?.present ?? ""] ?? basisWords[values?.basis ?? ""];
  if (year === null) return how ?? authorText(graph, id) ?? say`the corpus`;
  return how === undefined ? yearText(year) : say`${yearText(year)}, ${how}`;
}

/** What a label says: a measurement's value as printed, what was seen or missed, what came before what, who says so. */
export function labelValue(graph: Graph, id: Id): Text {
  const record = graph.records.get(id);
  switch (record?.list) {
    case "measurements":
      return record.values.value.text;
    case "observations": {
      const { short, feature, present = "true", text } = record.values;
      if (short !== undefined) return short;
      if (feature === undefined) return withoutStop(text);
      return present === "false" ? say`no ${feature}` : feature;
    }
    default:
      return labelText(graph, id);
  }
}

/** What something is called where it is named from elsewhere: at most 40 characters, ending at a word. */
export function titled(text: string): string {
  const plain = withoutStop(text);
  const letters = [...plain];
  if (letters.length <= 40) return plain;
  const cut = letters.slice(0, 39).join("");
  const space = cut.lastIndexOf(" ");
  return `${(space > 20 ? cut.slice(0, space) : cut).replace(/[\s,;:]+$/u, "")}…`;
}
