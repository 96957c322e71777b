import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { reasonOf } from "../../../judge/explain/reason.ts";
import { reasonSaid } from "../../../judge/explain/sentence.ts";
import { evidenceLists } from "../../../judge/compile.ts";
import type { Standing } from "../../../judge/judge.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import { kindWords } from "../../../read/grammar/words.ts";
import { withheldIn } from "../../withhold.ts";
import { actionOf } from "./action.ts";
import { namedBy } from "./draft.ts";
import type { ArgumentDraft } from "./draft.ts";
import type { Ground, Tried } from "./trial.ts";

/** A record that an argument in hand names, as it stands without the argument. */
export interface Named {
  readonly label: Text;
  readonly kind: Text;
  readonly standing: Standing | null;
}

/** A standing that would be another one; null where the record is not there before. */
export interface Turned {
  readonly id: Id;
  readonly label: Text;
  readonly kind: Text;
  readonly was: Standing | null;
  readonly is: Standing;
}

/** What there is to say of an argument in hand. */
export interface InHandTold {
  readonly named: Readonly<Record<Id, Named>>;
  /** Why it cannot be saved yet. */
  readonly problem: Text | null;
  /** What does not keep it from being saved, and had better be known. */
  readonly remarks: readonly Text[];
  /** How the argument itself would stand, and why; null where it cannot be tried yet. */
  readonly own: { readonly standing: Standing; readonly why: Text } | null;
  /** What would stand otherwise, claims first; null where it cannot be tried yet. */
  readonly turned: readonly Turned[] | null;
}

/** Tells what an argument in hand names and lacks, and what would change with it. */
export function inHandTold(
  ground: Ground,
  draft: ArgumentDraft,
  tried: (ground: Ground, draft: ArgumentDraft) => Tried | null,
): InHandTold {
  const action = actionOf(ground.graph, draft);
  const trial = "problem" in action ? null : tried(ground, draft);
  const own = trial?.argument ?? null;
  const standing = own === null ? undefined : trial?.judgement.standings.get(own);
  return {
    named: namesIn(ground.model, namedBy(draft)),
    problem: "problem" in action ? action.problem : null,
    remarks: remarksOn(ground.graph, draft),
    own:
      trial && own !== null && standing !== undefined ? { standing, why: whyIn(ground, trial, own) } : null,
    turned: trial && turnedBy(ground, trial, own),
  };
}

/** What records and sources are called and how they stand, those that are there and not withheld. */
export function namesIn(
  { graph, judgement }: Pick<Ground["model"], "graph" | "judgement">,
  ids: readonly Id[],
): Readonly<Record<Id, Named>> {
  const withheld = withheldIn(graph);
  const there = ids.filter((id) => (graph.records.has(id) || graph.sources.has(id)) && !withheld(id));
  return Object.fromEntries(
    there.map((id) => [id, { ...calledIn(graph, id), standing: judgement.standings.get(id) ?? null }]),
  );
}

function whyIn({ model: { derivations } }: Ground, { graph, judgement }: Tried, id: Id): Text {
  return reasonSaid(graph, reasonOf(graph, derivations, judgement, id));
}

function calledIn(graph: Graph, id: Id): Pick<Named, "label" | "kind"> {
  const list = graph.records.get(id)?.list;
  return { label: labelText(graph, id), kind: kindWords[list ?? "sources"] };
}

function remarksOn(graph: Graph, { aim, because }: ArgumentDraft): readonly Text[] {
  const claims = graph.list("claims");
  const words = aim.to === "new" ? aim.text.trim().replace(/\s+/gu, " ") : "";
  const alike = words !== "" && claims.some(({ values }) => values.text === words);
  const target = aim.to === "claim" ? aim.id : null;
  return [
    ...(alike ? [say`A claim of the corpus has these words already`] : []),
    ...(target !== null && because.includes(target)
      ? [say`The conclusion is among the premises: a claim that leans on itself does not stand by that`]
      : []),
  ];
}

const kindsInOrder: readonly string[] = ["claims", "arguments", ...evidenceLists];

/** What stands otherwise than it does, but for the argument that is tried and what is withheld. */
function turnedBy({ model }: Ground, { graph, judgement }: Tried, own: Id | null): readonly Turned[] {
  const withheld = withheldIn(graph);
  const before = model.judgement.standings;
  const turned = [...judgement.standings].flatMap(([id, is]): readonly Turned[] => {
    const was = before.get(id) ?? null;
    return was === is || id === own || withheld(id) ? [] : [{ id, ...calledIn(graph, id), was, is }];
  });
  const place = ({ id }: Turned): number => kindsInOrder.indexOf(graph.records.get(id)?.list ?? "arguments");
  return turned.toSorted((a, b) => place(a) - place(b));
}
