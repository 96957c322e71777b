import { editDistance } from "../../../base/nearest.ts";
import type { Finding, Id } from "../../../base/finding.ts";
import { slipAmong } from "../../../base/text/slip.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Mention } from "../../../base/text/said/said.ts";
import { folded } from "../../../link/dimension.ts";
import type { Graph } from "../../../link/graph.ts";
import { foldedName } from "../../../link/origin/people.ts";
import type { Rule, View } from "../rule.ts";
import { quoted } from "../../../base/text/said/rows.ts";
import { byCause, tell } from "../tell.ts";

export const nearName: Rule = {
  id: "near-name",
  level: "note",
  title: say`Two names are so alike that one may be a slip.`,
  doc: say`Names of scholars, things, dimensions, features and events are compared, and events with the ids of things. If both are meant, let them be; if one is a slip, mend it, or list it under \`also\` or \`known-as\`.`,
  ofTheRecord: true,
  find: ({ graph, judgement }: View) => {
    const scholars = graph
      .list("scholars")
      .map(({ id, values }) => ({ id, name: foldedName(values.name), path: "name" }));
    const dimensions = distinctBy(
      graph.list("measurements").filter((one) => judgement.counts(one.id)),
      (one) => folded(graph.dimensionName(one.values.dimension)),
    ).map(([name, one]) => ({ id: one.id, name, path: "dimension" }));
    const features = distinctBy(
      graph.list("observations").filter((one) => one.values.feature !== undefined),
      (one) => folded(one.values.feature ?? ""),
    ).map(([name, one]) => ({ id: one.id, name, path: "feature" }));
    const pairs = [scholars, dimensions, features, eventsIn(graph)].flatMap(nearAmong);
    const all = [...pairs, ...nearThings(graph, judgement.counts), ...nearIds(graph)];
    return { findings: all.map(([one, other]) => told(one, other)) };

    function told(one: Named, other: Named): Finding {
      const shown = ({ id, path }: Named): Mention => quoted(writtenName(graph, id, path));
      const message = say`${shown(other)} is nearly ${shown(one)}, expected one spelling or two plainly different names.`;
      return tell(graph, "near-name", "note", [other.id, one.id], message, { path: [other.path] });
    }
  },
};

interface Named {
  readonly id: Id;
  readonly name: string;
  /** The field that the name stands in. */
  readonly path: string;
}

/** Pairs of names that are alike; only such as have the same numbers are compared. */
function nearAmong(names: readonly Named[]): readonly (readonly [Named, Named])[] {
  return byCause(names, ({ name }) => digitsOf(name)).flatMap((group) =>
    group.flatMap((one, place) =>
      group
        .slice(place + 1)
        .filter((other) => one.name !== other.name && alike(one.name, other.name))
        .map((other) => [one, other] as const),
    ),
  );
}

/** Events that relations name in words, each once; an artefact's id is none. */
function eventsIn(graph: Graph): readonly Named[] {
  const events = graph.list("relations").flatMap(({ id, values }) =>
    (["earlier", "later"] as const).flatMap((path) => {
      const name = values[path];
      return name === undefined || graph.records.has(name) ? [] : [{ id, name: folded(name), path }];
    }),
  );
  return distinctBy(events, ({ name }) => name).map(([, one]) => one);
}

/** Events that are written like the id of a thing: an id with a slip in it is an event, and no thing is meant. */
function nearIds(graph: Graph): readonly (readonly [Named, Named])[] {
  const thingMeant = slipAmong(graph.list("artefacts").map(({ id }) => id));
  return eventsIn(graph).flatMap((event) => {
    const meant = thingMeant(writtenName(graph, event.id, event.path));
    return meant === null ? [] : [[{ id: meant, name: meant, path: "id" }, event] as const];
  });
}

/** Things whose names differ in one word of six letters or more, and there by one letter: a post 12 is no slip for a post 13. */
function nearThings(graph: Graph, counts: (id: Id) => boolean): readonly (readonly [Named, Named])[] {
  const frames = new Map<string, { readonly named: Named; readonly word: string }[]>();
  for (const { id, values } of graph.list("artefacts")) {
    if (values.name === undefined || !counts(id)) continue;
    const words = values.name.normalize("NFC").toLowerCase().split(/\s+/);
    words.forEach((word, place) => {
      if (word.length < 6 || !/^\p{L}+$/u.test(word)) return;
      const frame = words.with(place, "").join("\n");
      const known = { named: { id, name: word, path: "name" }, word };
      frames.set(frame, [...(frames.get(frame) ?? []), known]);
    });
  }
  return [...frames.values()].flatMap((group) =>
    group.flatMap((one, place) =>
      group
        .slice(place + 1)
        .filter((other) => one.word !== other.word && alike(one.word, other.word))
        .map((other) => [one.named, other.named] as const),
    ),
  );
}

function distinctBy<T>(
  records: readonly T[],
  nameOf: (record: T) => string,
): readonly (readonly [string, T])[] {
  const first = new Map<string, T>();
  for (const record of records) if (!first.has(nameOf(record))) first.set(nameOf(record), record);
  return [...first];
}

/** Alike but for a hyphen, or one slip in six letters or more; numbers are never slips. */
function alike(a: string, b: string): boolean {
  if (bare(a) === bare(b)) return true;
  return (
    Math.min(a.length, b.length) >= 6 && digitsOf(a) === digitsOf(b) && editDistance(bare(a), bare(b), 1) <= 1
  );
}

function bare(name: string): string {
  return name.replace(/[^\p{L}\p{N}]/gu, "");
}

function digitsOf(name: string): string {
  return name.replace(/\P{N}/gu, "");
}

function writtenName(graph: View["graph"], id: Id, path: string): string {
  const record = graph.records.get(id);
  if (path === "id") return id;
  const value = record ? (record.values as Readonly<Record<string, unknown>>)[path] : undefined;
  return typeof value === "string" ? value : id;
}
