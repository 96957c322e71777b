import type { Id } from "../../../../base/finding.ts";
import { nearestAmong } from "../../../../base/nearest.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../withhold.ts";
import { numberKey } from "./number.ts";

/** What a text names among the artefacts: one, several that cannot be told apart by it, or none, with those whose names are nearest. */
export type ArtefactCalled =
  | { readonly is: "found"; readonly id: Id }
  | { readonly is: "several"; readonly ids: readonly Id[] }
  | { readonly is: "none"; readonly near: readonly Id[] };

/** One thing that an artefact is called: its id, its name, or its number in a register. */
interface Spelling {
  readonly id: Id;
  readonly text: string;
  readonly as: "id" | "name" | "number";
  readonly register: string | null;
}

interface Register {
  readonly exact: ReadonlyMap<string, readonly Spelling[]>;
  readonly alike: ReadonlyMap<string, readonly Spelling[]>;
  readonly near: (text: string) => readonly Id[];
}

const known = new WeakMap<Graph, Register>();

/**
 * The artefact that a text names: by id, name, or number in any register, as written or else without regard to case,
 * spaces and hyphens. With `register`, a number of that register comes before everything else. None that is withheld is found.
 */
export function artefactCalled(graph: Graph, text: string, register: string | null = null): ArtefactCalled {
  const { exact, alike, near } = registerOf(graph);
  const said = text.normalize("NFC").trim();
  const key = numberKey(said);
  const asWritten = exact.get(said) ?? [];
  const folded = key === "" ? [] : (alike.get(key) ?? []);
  const own = (one: Spelling): boolean => register !== null && one.register === register;
  const stages = [
    asWritten.filter(own),
    folded.filter(own),
    asWritten.filter((one) => one.as === "id"),
    asWritten,
    folded,
  ];
  const ids = [...new Set((stages.find((one) => one.length > 0) ?? []).map((one) => one.id))];
  const [first] = ids;
  if (first === undefined) return { is: "none", near: near(said) };
  return ids.length === 1 ? { is: "found", id: first } : { is: "several", ids };
}

/** The registers in which artefacts of the corpus have numbers, in the order in which they are met. */
export function registersIn(graph: Graph): readonly string[] {
  const withheld = withheldIn(graph);
  const shown = graph.list("artefacts").filter(({ id }) => !withheld(id));
  return [...new Set(shown.flatMap(({ values }) => [...(values.numbers?.keys() ?? [])]))];
}

function registerOf(graph: Graph): Register {
  const before = known.get(graph);
  if (before) return before;
  const withheld = withheldIn(graph);
  const all = graph
    .list("artefacts")
    .filter(({ id }) => !withheld(id))
    .flatMap(({ id, values }): readonly Spelling[] => [
      { id, text: id, as: "id", register: null },
      ...[values.name ?? [], values.short ?? []]
        .flat()
        .map((text): Spelling => ({ id, text, as: "name", register: null })),
      ...[...(values.numbers ?? [])].map(([register, text]): Spelling => ({
        id,
        text,
        as: "number",
        register,
      })),
    ]);
  const nearest = nearestAmong(all.map(({ text }) => text));
  const exact = grouped(all, ({ text }) => text.normalize("NFC").trim());
  const made: Register = {
    exact,
    alike: grouped(all, ({ text }) => numberKey(text)),
    near: (text) => {
      const spelled = nearest(text).flatMap((one) => exact.get(one.normalize("NFC").trim()) ?? []);
      return [...new Set(spelled.map(({ id }) => id))].slice(0, 3);
    },
  };
  known.set(graph, made);
  return made;
}

function grouped(
  all: readonly Spelling[],
  keyOf: (one: Spelling) => string,
): ReadonlyMap<string, readonly Spelling[]> {
  const groups = new Map<string, Spelling[]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}
