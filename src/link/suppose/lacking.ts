import type { Id } from "../../base/finding.ts";
import { isList } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { folded } from "../dimension.ts";
import type { DerivationRecord, Graph } from "../graph.ts";
import { labelText } from "../names/label.ts";
import { withheldIn } from "../withheld.ts";
import type { Examination } from "./outcome.ts";
import { outcome, proposal } from "./proposed.ts";
import { inRow, methods, outcomes } from "./wording.ts";

/** What one input of a derivation asks for: things, and the dimensions of them. */
interface Asked {
  readonly of: readonly Id[];
  readonly dimensions: readonly string[];
  /** Whether the corpus has any such measurement. */
  readonly had: boolean;
}

/** What a derivation lacks, measured: its number then supports each claim it bears on, or disputes it. Null where it bears on none. */
export function measureMissing(graph: Graph, derivation: DerivationRecord): Examination | null {
  const withheld = withheldIn(graph);
  const entries = new Map(
    [...(derivation.values["bears-on"] ?? [])]
      .reverse()
      .map((one) => [one.claim, one.strength ?? "ordinary"]),
  );
  const claims = [...entries].reverse().filter(([claim]) => !withheld(claim));
  if (claims.length === 0) return null;
  const asked = inputsOf(derivation).map((input) => askedBy(graph, input));
  const missing = asked.filter((one) => !one.had);
  const wanted = missing.length > 0 ? missing : asked;
  const of = [...new Set(wanted.flatMap((one) => one.of))];
  const dimensions = [...new Set(wanted.flatMap((one) => one.dimensions))];
  const label = labelText(graph, derivation.id);
  return {
    ...proposal(graph, "measure", derivation.id, of),
    method:
      dimensions.length > 0 && of.length > 0
        ? methods.measure(allOf(dimensions), inRow(graph, of))
        : methods.lookFor(label),
    outcomes: claims.flatMap(([claim, strength]) => [
      outcome(`supports-${claim}`, outcomes.supports(label, labelText(graph, claim)), {
        therefore: [claim],
        strength,
      }),
      outcome(`disputes-${claim}`, outcomes.disputes(label, labelText(graph, claim)), {
        against: [claim],
        strength,
      }),
    ]),
  };
}

function inputsOf({ values }: DerivationRecord): readonly Json[] {
  const { inputs } = values;
  if (inputs === null || typeof inputs !== "object" || isList(inputs)) return [];
  return Object.entries(inputs).flatMap(([name, value]) =>
    name === "pairs" && isList(value) ? value : [value],
  );
}

function askedBy(graph: Graph, input: Json): Asked {
  if (typeof input === "string" || isList(input)) return listedBy(graph, textsIn(input));
  if (input === null || typeof input !== "object") return { of: [], dimensions: [], had: true };
  const map = input as { readonly [key: string]: Json };
  if ("number" in map) return { of: [], dimensions: [], had: true };
  const of = textsIn(map["of"]).filter((id) => graph.records.get(id)?.list === "artefacts");
  const things = new Set(map["parts"] === "false" ? of : of.flatMap((id) => graph.withParts(id)));
  const dimensions = textsIn(map["dimension"]).map((name) => graph.dimensionName(name));
  const names = new Set(dimensions.map(folded));
  const had = graph
    .list("measurements")
    .some(({ values }) => things.has(values.of) && names.has(folded(graph.dimensionName(values.dimension))));
  return { of, dimensions, had };
}

/** Listed measurements and observations are there, and yet no number came of them: all of them are wanted better. */
function listedBy(graph: Graph, ids: readonly Id[]): Asked {
  const records = ids.flatMap((id) => graph.records.get(id) ?? []);
  return {
    of: records.flatMap((one) =>
      one.list === "measurements" ? [one.values.of] : one.list === "observations" ? one.values.of : [],
    ),
    dimensions: records.flatMap((one) =>
      one.list === "measurements" ? [graph.dimensionName(one.values.dimension)] : [],
    ),
    had: true,
  };
}

function textsIn(value: Json | undefined): readonly string[] {
  if (typeof value === "string") return [value];
  return value !== undefined && isList(value) ? value.filter((one) => typeof one === "string") : [];
}

/** `a and b and c`. */
function allOf([lead = "", ...others]: readonly string[]): Text {
  return others.reduce<Text>((before, other) => say`${before} and ${other}`, lead);
}
