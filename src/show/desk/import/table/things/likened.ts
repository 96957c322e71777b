import type { Id } from "../../../../../base/finding.ts";
import type { Graph } from "../../../../../link/graph.ts";
import type { WrittenMap } from "../../../../../read/edit/written.ts";
import { withheldIn } from "../../../../withhold.ts";
import { artefactCalled } from "../../../grid/columns/artefact.ts";
import { numberKey } from "../../../grid/columns/number.ts";
import { numberedAs } from "../named.ts";

/** An artefact's numbers by their registers. */
export type Numbers = Readonly<Record<string, string>>;

/** The artefact of the corpus that a row is taken for, and by what. */
export interface Twin {
  readonly id: Id;
  readonly why: "id" | "number" | "name";
}

/** What tells an artefact within a table: its id, its number in each register, and where it is asked for its name. */
export function keysOf(values: WrittenMap, numbers: Numbers, named: boolean): readonly string[] {
  const { id, name } = values;
  return [
    ...(typeof id === "string" ? [`id ${id}`] : []),
    ...Object.entries(numbers).map(([register, number]) => keyIn(register, number)),
    ...(named && typeof name === "string" ? [`name ${numberKey(name)}`] : []),
  ];
}

const keyIn = (register: string, number: string): string => `number ${register} ${numberKey(number)}`;

/** The artefact that has the id of a row, its number in the same register, or, where it has neither, its name. */
export function twinOf(graph: Graph, values: WrittenMap, numbers: Numbers): Twin | null {
  const { id, name } = values;
  if (typeof id === "string" && graph.records.get(id)?.list === "artefacts") return { id, why: "id" };
  for (const [register, number] of Object.entries(numbers)) {
    const found = numberedAs(graph, register, number);
    if (found !== null) return { id: found, why: "number" };
  }
  if (typeof id === "string" || typeof name !== "string") return null;
  const called = artefactCalled(graph, name);
  if (called.is !== "found") return null;
  // A thing with another number in the same register is another thing of the same name.
  const record = graph.records.get(called.id);
  const own = record?.list === "artefacts" ? record.values.numbers : undefined;
  return Object.keys(numbers).some((register) => own?.has(register)) ? null : { id: called.id, why: "name" };
}

/** Tells whether an artefact has the id, the name or a number of one that is withheld, or is part of it. */
export function hiddenIn(graph: Graph): (values: WrittenMap, numbers: Numbers) => boolean {
  const withheld = withheldIn(graph);
  const things = graph.list("artefacts").filter(({ id }) => withheld(id));
  const kept = new Set(
    things.flatMap(({ values: { numbers = [], name } }) => [
      ...[...numbers].map(([register, number]) => keyIn(register, number)),
      ...(name === undefined ? [] : [`name ${numberKey(name)}`]),
    ]),
  );
  return (values, numbers) => {
    const { id, "part-of": whole } = values;
    return (
      [id, whole].some((one) => typeof one === "string" && withheld(one)) ||
      keysOf(values, numbers, id === undefined).some((key) => kept.has(key))
    );
  };
}
