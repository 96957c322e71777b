import type { Id } from "../../../../base/finding.ts";
import { yearText } from "../../../../base/date/year.ts";
import type { Graph } from "../../../../link/graph.ts";
import { authorLabel, labelOf, schemeWords, withoutStop } from "../../../../link/names/label.ts";
import type { Net } from "../net/net.ts";
import type { Step } from "../net/steps.ts";

/** Between a standing and who holds it, and between a number's argument and what the number says. */
export const apart = " · ";

/** Schemes that one argues by rather than from. */
const by: readonly string[] = ["parallel", "analogy", "function", "experiment", "authority"];

/** What a beam is called: how the step goes and whose it is, `by function, Oyelaran 2004`; empty where nobody says. */
export function stepWords(net: Net, step: Step): string {
  const { graph } = net;
  const author = authorLabel(graph, step.from);
  const who = author === "the corpus" ? "" : author;
  const how = howWords(step);
  if (step.therefore !== null) return [how, who].filter((part) => part !== "").join(", ");
  const target = step.against.some((id) => net.kindOf(id) === "step") ? "against this step" : "against it";
  const said = [how, who].filter((part) => part !== "").join(", ");
  return said === "" ? target : `${target}: ${said}`;
}

function howWords({ how, scheme }: Step): string {
  if (how === "bearing") return "by number";
  if (how === "testimony") return "by testimony";
  if (scheme === null || scheme === "other") return "";
  return by.includes(scheme) ? `by ${scheme}` : schemeWords(scheme);
}

const basisWords: Readonly<Record<string, string>> = {
  autopsy: "on site",
  cast: "cast",
  replica: "replica",
  scan: "scan",
  photograph: "photograph",
  drawing: "drawing",
  report: "report",
};

const presentWords: Readonly<Record<string, string>> = {
  false: "looked for",
  unclear: "not to be told",
  "not-reported": "passed over",
};

/** When and how a label's value was got: `1998, on site`; whose it is where neither is recorded. */
export function labelUnder(graph: Graph, id: Id): string {
  const record = graph.records.get(id);
  const values = record?.values as
    { readonly year?: number; readonly basis?: string; readonly present?: string } | undefined;
  const year = values?.year ?? graph.provenance(id).year;
  const how = presentWords[values?.present ?? ""] ?? basisWords[values?.basis ?? ""];
  const parts = [year === null ? undefined : yearText(year), how].filter((part) => part !== undefined);
  return parts.length > 0 ? parts.join(", ") : authorLabel(graph, id);
}

/** What a label says: a measurement's value as printed, what was seen or missed, what came before what, who says so. */
export function labelValue(graph: Graph, id: Id): string {
  const record = graph.records.get(id);
  switch (record?.list) {
    case "measurements":
      return record.values.value.text;
    case "observations": {
      const { short, feature, present = "true", text } = record.values;
      if (short !== undefined) return short;
      if (feature === undefined) return withoutStop(text);
      return present === "false" ? `no ${feature}` : feature;
    }
    default:
      return labelOf(graph, id);
  }
}

/** A number of things with its noun: `1 claim`, `12 claims`. */
export function counted(n: number, one: string, many: string = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
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
