import type { Id } from "../../base/finding.ts";
import { holm } from "../../base/outcome/holm.ts";
import type { Text } from "../../base/text/said/said.ts";
import { formatComputed } from "../../base/quantity/quantity-print.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import { labelText, withoutStop } from "../../link/names/label.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { listedUnder, withheldIn } from "../withhold.ts";
import { namesIn } from "./value.ts";

/** How often one claim was tested by one method, and what p comes to for all these looks together. */
export interface Looks {
  readonly claim: { readonly id: Id; readonly text: string };
  /** Looks counted: those the corpus has as derivations, or as many as one of them declares where that is more. */
  readonly times: number;
  /** The p adjusted after Holm 1979; null where there is none. */
  readonly adjusted: string | null;
  /** The other derivations among them. */
  readonly others: readonly { readonly id: Id; readonly text: Text }[];
}

/** The looks at each claim that a derivation bears on, where there was more than one. */
export function looksAt(
  { graph, derivations, judgement }: Reported,
  plugins: readonly Plugin[],
  record: DerivationRecord,
): readonly Looks[] {
  const listed = listedUnder({ graph, judgement });
  const withheld = withheldIn(graph);
  const claims = [...new Set((record.values["bears-on"] ?? []).map((entry) => entry.claim))];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  return claims.filter(listed).flatMap((claim): readonly Looks[] => {
    const family = graph
      .list("derivations")
      .filter(({ values }) => values.plugin === record.values.plugin && bearsOn(values["bears-on"], claim))
      .flatMap((one) => {
        const derived = derivations.byId.get(one.id);
        return derived?.status === "computed" ? [{ one, p: pOf(one, claim, derived, plugin) }] : [];
      });
    const declared = Math.max(1, ...family.map(({ one }) => one.values.looks ?? 1));
    const times = Math.max(declared, family.length);
    if (times <= 1 || !family.some(({ one }) => one.id === record.id)) return [];
    const known = family.flatMap(({ one, p }) => (p === null ? [] : [{ id: one.id, p }]));
    const adjusted = holm(
      known.map(({ p }) => p),
      times,
    )[known.findIndex(({ id }) => id === record.id)];
    return [
      {
        claim: { id: claim, text: withoutStop(claimText(graph, claim)) },
        times,
        adjusted: adjusted === undefined ? null : formatComputed(adjusted, "probability", 2),
        others: othersOf(graph, family, record.id, withheld),
      },
    ];
  });
}

function bearsOn(entries: readonly { readonly claim: Id }[] | undefined, claim: Id): boolean {
  return (entries ?? []).some((entry) => entry.claim === claim);
}

/** The p that a derivation's entries on a claim ask for, else the one called so; the adjusted one is none of its own. */
function pOf(
  { values }: DerivationRecord,
  claim: Id,
  { numbers }: Derived,
  plugin: Plugin | undefined,
): number | null {
  const probabilities = (plugin?.numbers ?? [])
    .filter(({ name, kind }) => kind === "probability" && name !== "p-adjusted")
    .map(({ name }) => name);
  const asked = (values["bears-on"] ?? [])
    .filter((entry) => entry.claim === claim)
    .flatMap((entry) => [...namesIn(entry.supports), ...namesIn(entry.disputes)]);
  const name = asked.find((one) => probabilities.includes(one)) ?? "p";
  return Object.hasOwn(numbers, name) ? (numbers[name]?.value ?? null) : null;
}

function othersOf(
  graph: Graph,
  family: readonly { readonly one: DerivationRecord }[],
  id: Id,
  withheld: (id: Id) => boolean,
): Looks["others"] {
  return family
    .filter(({ one }) => one.id !== id && !withheld(one.id))
    .map(({ one }) => ({ id: one.id, text: labelText(graph, one.id) }));
}
