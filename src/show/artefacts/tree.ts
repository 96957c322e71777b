import type { Id } from "../../base/finding.ts";
import type { ArtefactRecord } from "../../link/graph.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelOf, labelText } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";
import { compact, plainWords, tokensOf } from "../search/fold.ts";
import { shownUnder } from "../withhold.ts";

/** A thing in the tree of things: what it is, where it is kept, how much is known of it, and its parts. */
export interface Thing {
  readonly id: Id;
  readonly name: Text;
  readonly kind: string | null;
  /** Its numbers, each with the register it stands in. */
  readonly numbers: readonly { readonly register: Text; readonly number: string }[];
  readonly keeper: string | null;
  /** Measurements and observations of itself, its parts left out. */
  readonly measured: number;
  readonly seen: number;
  /** It has a shape, so that it can be drawn to scale. */
  readonly shaped: boolean;
  /** Name, kind and numbers as they are compared with what is looked for. */
  readonly plain: string;
  readonly parts: readonly Thing[];
}

/** The things of the corpus with their parts, in its order; those withheld are left out with all their parts. */
export function thingTree(model: Reported): readonly Thing[] {
  const { graph } = model;
  const shown = shownUnder(model);
  const count = (lists: readonly (readonly Id[])[]): ReadonlyMap<Id, number> => {
    const counts = new Map<Id, number>();
    for (const things of lists) for (const id of things) counts.set(id, (counts.get(id) ?? 0) + 1);
    return counts;
  };
  const measured = count(
    graph.list("measurements").flatMap(({ id, values }) => (shown(id) ? [[values.of]] : [])),
  );
  const seen = count(graph.list("observations").flatMap(({ id, values }) => (shown(id) ? [values.of] : [])));
  const records = graph.list("artefacts").filter((one) => shown(one.id));
  const partsOf = new Map<Id | null, ArtefactRecord[]>();
  for (const record of records) {
    const whole = graph.wholeOf.get(record.id);
    const under = whole !== undefined && shown(whole) ? whole : null;
    const parts = partsOf.get(under);
    if (parts) parts.push(record);
    else partsOf.set(under, [record]);
  }
  const thing = (record: ArtefactRecord): Thing => {
    const { id, values } = record;
    const name = labelOfThing(graph, record);
    const numbers = [...(values.numbers ?? [])].map(([register, number]) => ({
      register: graph.records.has(register) ? labelText(graph, register) : register,
      number,
    }));
    const words = [
      inEnglish(name),
      labelOf(graph, id),
      values.kind ?? "",
      id,
      ...numbers.flatMap((one) => [one.number, compact(tokensOf(one.number))]),
    ];
    return {
      id,
      name,
      kind: values.kind ?? null,
      numbers,
      keeper: values["held-at"] ?? values.access?.keeper ?? null,
      measured: measured.get(id) ?? 0,
      seen: seen.get(id) ?? 0,
      shaped: values.shape !== undefined,
      plain: plainWords(words.join(" ")),
      parts: (partsOf.get(id) ?? []).map(thing),
    };
  };
  return (partsOf.get(null) ?? []).map(thing);
}

/** The whole name of a thing, not its short one. */
export function labelOfThing(graph: Reported["graph"], { id, values }: ArtefactRecord): Text {
  return values.name ?? labelText(graph, id);
}

/** The things of a tree that fit all words looked for, each with the wholes that lead to it. */
export function fitting(things: readonly Thing[], looked: string): readonly Thing[] {
  const wanted = plainWords(looked)
    .split(/\s+/)
    .filter((word) => word !== "");
  const fits = (thing: Thing): readonly Thing[] => {
    if (wanted.every((word) => hasWord(thing, word))) return [thing];
    const parts = thing.parts.flatMap(fits);
    return parts.length > 0 ? [{ ...thing, parts }] : [];
  };
  return wanted.length === 0 ? things : things.flatMap(fits);
}

/** Whether a thing is called so; a number is found without its hyphens and points, too. */
function hasWord({ plain }: Thing, word: string): boolean {
  const bare = compact(tokensOf(word));
  return plain.includes(word) || (bare !== "" && /\p{N}/u.test(bare) && plain.includes(bare));
}
