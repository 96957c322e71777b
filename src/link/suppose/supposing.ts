import type { Finding, Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { ListName } from "../../read/grammar/field.ts";
import type { AnyRecord } from "../../read/record.ts";
import { nodeAt, valueAt } from "../../read/yaml/tree.ts";
import type { MapNode, Step } from "../../read/yaml/tree.ts";
import { valueTrouble } from "../dimension.ts";
import type { AnyLinked, Graph, Linked, Provenance } from "../graph.ts";
import type { Examination, SupposedOutcome } from "./outcome.ts";
import { sightText } from "./wording.ts";

/**
 * The graph as it would be if an outcome had been found (format.md 7): what it sees and measures, one observation for
 * the outcome itself, and one argument from it for each thing it speaks for or against. The graph given stays as it is.
 */
export function supposing(given: Graph, examination: Examination, outcome: SupposedOutcome): Graph {
  const graph = given.supposed?.before ?? given;
  const findings: Finding[] = [];
  const added = new Map<Id, AnyLinked>();
  for (const record of addedBy(graph, examination, outcome)) {
    const trouble = record.list === "measurements" ? troubleOf(graph, record) : null;
    if (trouble) findings.push(trouble);
    else added.set(record.id, record);
  }
  const said: Provenance = { sources: [examination.id], via: [], scholars: [], year: null };
  const own = [...added.values()];
  const kinds = new Map(
    own.flatMap((one) =>
      one.list === "measurements"
        ? [[graph.dimensionName(one.values.dimension), one.values.value.kind] as const]
        : [],
    ),
  );
  return {
    ...graph,
    records: new Map([...graph.records, ...added]),
    list: <L extends ListName>(list: L) => {
      const more = own.filter((one) => one.list === list) as unknown as readonly Linked<L>[];
      return more.length === 0 ? graph.list(list) : [...graph.list(list), ...more];
    },
    provenance: (id) => (added.has(id) && id !== examination.id ? said : graph.provenance(id)),
    dimensionKind: (name) => graph.dimensionKind(name) ?? kinds.get(name) ?? null,
    findings: [...graph.findings, ...findings],
    supposed: { examination, outcome, records: new Set(added.keys()), before: graph },
  };
}

/** The name of a supposed record: no id that a corpus gives holds the sign. */
const named = (examination: Id, outcome: Id, part: string): Id =>
  [examination, outcome, ...(part === "" ? [] : [part])].join("~");

function addedBy(graph: Graph, examination: Examination, outcome: SupposedOutcome): readonly AnyLinked[] {
  const place = placeOf(graph, examination, outcome);
  const from = [{ key: examination.id, locator: null }];
  const itself = named(examination.id, outcome.id, "");
  const make = <L extends ListName>(
    list: L,
    part: string,
    values: Omit<Linked<L>["values"], "id">,
    ...path: readonly Step[]
  ): AnyLinked => recordAs(list, named(examination.id, outcome.id, part), values, place(...path));
  const argument = { because: [itself], strength: outcome.strength, from };
  return [
    ...(graph.records.has(examination.id) ? [] : [asRecord(examination, place())]),
    make("observations", "", { of: examination.of, text: inEnglish(outcome.text), from }),
    ...outcome.sees.map((one, at) =>
      make(
        "observations",
        `sees-${at + 1}`,
        {
          of: examination.of,
          text: inEnglish(sightText(one)),
          feature: one.feature,
          present: one.present,
          from,
        },
        "sees",
        at,
      ),
    ),
    ...outcome.measures.map((one, at) =>
      make("measurements", `measures-${at + 1}`, { ...one, from }, "measures", at),
    ),
    ...outcome.therefore.map((therefore, at) =>
      make("arguments", `therefore-${at + 1}`, { ...argument, therefore }, "therefore", at),
    ),
    ...outcome.against.map((target, at) =>
      make("arguments", `against-${at + 1}`, { ...argument, against: [target] }, "against", at),
    ),
  ];
}

type Place = Pick<AnyRecord, "file" | "node">;

/** Where findings about what is supposed point to: the outcome's own lines, or what a proposal is about. */
function placeOf(
  graph: Graph,
  examination: Examination,
  outcome: SupposedOutcome,
): (...path: readonly Step[]) => Place {
  const about = graph.records.get(aboutOf(examination));
  if (!about) throw new Error(`An examination of nothing in the corpus: ${examination.id}`);
  const { file, node } = about;
  if (examination.origin !== "recorded") return () => ({ file, node });
  const written = nodeAt(node, ["outcomes"]);
  const all = written.is === "list" ? written.items : [written];
  // By name, not by place: an entry that could not be read is no outcome.
  const lines = all.flatMap((one) => asMap(one) ?? []).find((one) => idIn(one) === outcome.id) ?? node;
  return (...path) => ({ file, node: asMap(nodeAt(lines, path)) ?? lines });
}

/** The record that an examination is written as, or that a proposal is about. */
function aboutOf({ id, origin }: Examination): Id {
  return origin === "recorded" ? id : id.slice(origin.length + 1);
}

function idIn(map: MapNode): string | null {
  const id = valueAt(map, "id");
  return id?.is === "text" ? id.text : null;
}

function asMap(node: ReturnType<typeof nodeAt>): MapNode | null {
  return node.is === "map" ? node : null;
}

/** A proposal as a record, so that what is supposed has a source with a sheet of its own. */
function asRecord(examination: Examination, place: Place): AnyLinked {
  const { id, of, destructive, permit } = examination;
  const method = inEnglish(examination.method);
  const outcomes = examination.outcomes.map((one) => ({ id: one.id, text: inEnglish(one.text) }));
  const values = { of, method, destructive, outcomes, ...(permit === null ? {} : { permit }) };
  return recordAs("examinations", id, values, place);
}

function recordAs<L extends ListName>(
  list: L,
  id: Id,
  values: Omit<Linked<L>["values"], "id">,
  place: Place,
): AnyLinked {
  // The compiler does not follow that a list and its values go together.
  return { list, id, named: true, values: { id, ...values }, ...place } as unknown as AnyLinked;
}

/** A supposed figure of another kind than its dimension's enters nothing, and is told. */
function troubleOf(graph: Graph, record: Linked<"measurements">): Finding | null {
  const name = graph.dimensionName(record.values.dimension);
  const anySign = graph.settings.dimensions.some((one) => one.anySign && one.name === name);
  return valueTrouble(record, name, graph.dimensionKind(name) ?? undefined, anySign);
}
