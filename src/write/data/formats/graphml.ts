import { escaped } from "../../../base/text/steering.ts";
import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Model } from "../../../build.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { citableUnder, listedUnder, shownUnder } from "../../../show/withhold.ts";

interface Edge {
  readonly from: Id;
  readonly to: Id;
  /** What the second is to the first. */
  readonly role: string;
}

/** The lists whose records are nodes; a passage or an image is no party to the dispute. */
const lists: ReadonlySet<string> = new Set([
  "scholars",
  "questions",
  "claims",
  "positions",
  "artefacts",
  "observations",
  "measurements",
  "relations",
  "arguments",
  "derivations",
]);

/** The dispute as GraphML 1.1: its records and sources as nodes with label, kind and standing, their ties as edges by role. */
export function graphMlOf(model: Model): string {
  const { graph, judgement, footings } = model;
  const [shown, listed, citable] = [shownUnder(model), listedUnder(model), citableUnder(model)];
  const records = [...graph.records.values()]
    .filter(({ id, list }) => lists.has(list) && (list === "claims" ? listed(id) : shown(id)))
    .toSorted((a, b) => byText(a.id, b.id));
  const sources = [...graph.sources.keys()].filter(citable).toSorted(byText);
  const known = new Set([...records.map(({ id }) => id), ...sources]);
  const edges = records
    .flatMap((record) => edgesOf(model, record))
    .filter(({ from, to }) => known.has(from) && known.has(to));
  const unique = new Map(edges.map((edge) => [`${edge.from}\n${edge.role}\n${edge.to}`, edge]));
  const nodes = [
    ...records.map(({ id, list }) =>
      nodeText(id, [
        ["kind", kindWords[list] ?? list],
        ["label", inEnglish(labelText(graph, id))],
        ["standing", judgement.standings.get(id) ?? null],
        ["footing", footings.get(id) ?? null],
      ]),
    ),
    ...sources.map((key) =>
      nodeText(key, [
        ["kind", "source"],
        ["label", graph.sources.get(key)?.label ?? key],
      ]),
    ),
  ];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<graphml xmlns="http://graphml.graphdrawing.org/xmlns" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://graphml.graphdrawing.org/xmlns http://graphml.graphdrawing.org/xmlns/1.1/graphml.xsd">',
    ...["kind", "label", "standing", "footing"].map(
      (name) => `  <key id="${name}" for="node" attr.name="${name}" attr.type="string"/>`,
    ),
    '  <key id="role" for="edge" attr.name="role" attr.type="string"/>',
    '  <graph id="dispute" edgedefault="directed">',
    ...nodes,
    ...[...unique.values()].map(edgeText),
    "  </graph>",
    "</graphml>",
    "",
  ].join("\n");
}

const kindWords: Readonly<Record<string, string>> = {
  scholars: "scholar",
  questions: "question",
  claims: "claim",
  positions: "position",
  artefacts: "artefact",
  observations: "observation",
  measurements: "measurement",
  relations: "relation",
  arguments: "argument",
  derivations: "derivation",
};

/** What a record is tied to: the record is at the beginning of each edge, but for an answer, which points at its question. */
function edgesOf({ graph, derivations }: Model, record: AnyLinked): readonly Edge[] {
  const { id } = record;
  const to = (role: string, others: readonly (Id | undefined)[]): readonly Edge[] =>
    others.flatMap((other) => (other === undefined || other === id ? [] : [{ from: id, to: other, role }]));
  const said =
    record.list === "scholars" || record.list === "artefacts" ? [] : to("from", graph.provenance(id).sources);
  switch (record.list) {
    case "questions":
      return record.values.answers.map((answer) => ({ from: answer, to: id, role: "answers" }));
    case "claims":
      return [...said, ...to("about", record.values.about ?? []), ...to("excludes", graph.rivalsOf(id))];
    case "positions":
      return [...said, ...to("who", record.values.who), ...to(record.values.stance, [record.values.claim])];
    case "artefacts":
      return to("part-of", [graph.wholeOf.get(id)]);
    case "observations":
      return [...said, ...to("of", record.values.of)];
    case "measurements":
      return [...said, ...to("of", [record.values.of])];
    case "relations": {
      const { earlier, later, "same-time": same } = record.values;
      return [...said, ...to("earlier", [earlier]), ...to("later", [later]), ...to("same-time", same ?? [])];
    }
    case "arguments": {
      const { because, therefore, against } = record.values;
      return [
        ...said,
        ...to("because", because),
        ...to("therefore", [therefore]),
        ...to("against", against ?? []),
      ];
    }
    case "derivations": {
      const derived = derivations.byId.get(id);
      return [
        ...to("used", derived?.used ?? []),
        ...(derived?.bearings ?? []).flatMap(({ claim, bearing }) => to(bearing, [claim])),
      ];
    }
    default:
      return [];
  }
}

function nodeText(id: Id, data: readonly (readonly [key: string, value: string | null])[]): string {
  const said = data.flatMap(([key, value]) =>
    value === null ? [] : [`      <data key="${key}">${escaped(value)}</data>`],
  );
  return [`    <node id="${escaped(id)}">`, ...said, "    </node>"].join("\n");
}

function edgeText({ from, to, role }: Edge): string {
  return `    <edge source="${escaped(from)}" target="${escaped(to)}"><data key="role">${escaped(role)}</data></edge>`;
}
