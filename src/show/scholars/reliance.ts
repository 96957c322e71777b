import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import { authorOrCorpus } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";
import { shownUnder, withheldIn } from "../withhold.ts";
import { namedIn } from "./named.ts";
import type { Named } from "./named.ts";

/** An argument that a scholar made: from what, for or against what, and what lies at the bottom of it. */
export interface Step {
  readonly argument: Named;
  readonly year: number | null;
  readonly direction: "for" | "against";
  readonly targets: readonly Named[];
  readonly premises: readonly Named[];
  /** Evidence that is no premise itself, reached through the arguments for its premises, whoever made them. */
  readonly evidence: readonly Named[];
  /** Nothing seen, measured or computed is reached. */
  readonly bare: boolean;
  /** The things that the evidence is of. */
  readonly things: readonly Named[];
}

/** The arguments of one scholar, or from sources of theirs, in the order of their years. */
export function stepsOf(model: Reported, scholar: Id): readonly Step[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const shown = shownUnder(model);
  const name = (id: Id): Named => namedIn(model, id);
  const names = (ids: readonly Id[]): readonly Named[] => ids.filter((id) => !withheld(id)).map(name);
  const steps = graph.list("arguments").flatMap(({ id, values }): readonly Step[] => {
    const said = graph.provenance(id);
    if (!shown(id) || !said.scholars.includes(scholar)) return [];
    const bottom = bottomOf(model, values.because);
    return [
      {
        argument: { ...name(id), text: values.text ?? authorOrCorpus(graph, id) },
        year: said.year,
        direction: values.therefore === undefined ? "against" : "for",
        targets: names(values.therefore === undefined ? (values.against ?? []) : [values.therefore]),
        premises: names(values.because),
        evidence: names(bottom.evidence.filter((one) => !values.because.includes(one))),
        bare: bottom.evidence.length === 0,
        things: names(bottom.things),
      },
    ];
  });
  return steps.toSorted((a, b) => byYear("last")(a.year, b.year));
}

/** What premises come down to: evidence and things, through every argument for a claim among them. */
function bottomOf(
  { graph, judgement, derivations }: Reported,
  premises: readonly Id[],
): { readonly evidence: readonly Id[]; readonly things: readonly Id[] } {
  const { compiled, counts } = judgement;
  const reached = new Set(premises);
  const evidence = new Set<Id>();
  const things = new Set<Id>();
  // A set that grows while it is gone through is gone through to its end.
  for (const id of reached) {
    const record = graph.records.get(id);
    if (!record || !counts(id)) continue;
    switch (record.list) {
      case "claims":
        for (const place of compiled.pro.get(id) ?? [])
          for (const next of compiled.arguments[place]?.because ?? []) reached.add(next);
        break;
      case "derivations":
        evidence.add(id);
        for (const used of derivations.byId.get(id)?.used ?? []) {
          const measured = graph.records.get(used);
          if (measured?.list === "measurements") things.add(measured.values.of);
        }
        break;
      case "observations":
        evidence.add(id);
        for (const thing of record.values.of) things.add(thing);
        break;
      case "measurements":
        evidence.add(id);
        things.add(record.values.of);
        break;
      case "relations":
        evidence.add(id);
        break;
      default:
        break;
    }
  }
  return { evidence: [...evidence], things: [...things] };
}
