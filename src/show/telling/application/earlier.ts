import { yearWords } from "../../../base/date/year-words.ts";
import type { Id } from "../../../base/finding.ts";
import { byYear } from "../../../base/order.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { basisWords } from "../../desk/visit/blocks/blocks.ts";
import { eventsOfThing } from "../../artefacts/history/events.ts";
import type { EventKind } from "../../artefacts/history/events.ts";
import type { Block, Inlines } from "../blocks/block.ts";
import type { Sight } from "../review/desk.ts";
import { line, listed, paragraph } from "../review/pieces/inlines.ts";
import { aside, citesFor } from "../review/pieces/cites.ts";
import type { Applied } from "./applied.ts";

/** What was seen and measured on the things before and from what, and what was done to them. */
export function earlierBlocks(sight: Sight, { things, look }: Applied): readonly Block[] {
  const ids = [...new Set(things.flatMap(({ id }) => sight.graph.withParts(id)))].filter(
    (id) => !sight.withheld(id),
  );
  const looks = looksAt(sight, ids);
  const done =
    ids.length === 0
      ? []
      : eventsOf(
          sight,
          things.map((one) => one.id),
        );
  const others = look.destructive ? [] : look.gentler.map((one) => one.text);
  return [
    ...(looks.length === 0
      ? paragraph([line(say`No observation and no measurement of it is recorded.`)])
      : [table(sight, looks)]),
    ...done,
    ...(others.length === 0
      ? []
      : paragraph([line(say`Other ways that use nothing up are planned too: ${row(others, "comma")}.`)])),
  ];
}

/** What one source says of the things on one basis. */
interface Look {
  readonly year: number | null;
  readonly basis: string | null;
  readonly by: readonly Id[];
  readonly first: Id;
  readonly observations: number;
  readonly measurements: number;
}

function looksAt(sight: Sight, ids: readonly Id[]): readonly Look[] {
  const { graph } = sight;
  const own = new Set(ids);
  const observations = graph
    .list("observations")
    .filter(({ id, values }) => sight.model.judgement.counts(id) && values.of.some((one) => own.has(one)));
  const measurements = graph
    .list("measurements")
    .filter(({ id, values }) => sight.model.judgement.counts(id) && own.has(values.of));
  const looks = new Map<string, Look>();
  for (const record of [...observations, ...measurements]) {
    const { id, values } = record;
    const { sources, year: printed } = graph.provenance(id);
    if (sight.withheld(id) || sources.some(sight.withheld)) continue;
    const year = values.year ?? printed;
    const basis = values.basis ?? null;
    const key = JSON.stringify([sources, year, basis]);
    const before = looks.get(key) ?? {
      year,
      basis,
      by: sight.graph.provenance(id).scholars.filter((one) => !sight.withheld(one)),
      first: id,
      observations: 0,
      measurements: 0,
    };
    const seen = record.list === "observations" ? 1 : 0;
    looks.set(key, {
      ...before,
      observations: before.observations + seen,
      measurements: before.measurements + 1 - seen,
    });
  }
  return [...looks.values()].toSorted((a, b) => byYear("last")(a.year, b.year));
}

function table(sight: Sight, looks: readonly Look[]): Block {
  return {
    is: "table",
    caption: line(say`What is recorded of the object and its parts, by source.`),
    head: [say`Year`, say`By`, say`Looked at`, say`Observations`, say`Measurements`, say`Source`].map(line),
    rows: looks.map((one): readonly Inlines[] => [
      one.year === null ? [] : [yearWords(one.year)],
      listed(one.by.map((id) => [labelText(sight.graph, id)])),
      one.basis === null ? [] : [basisWords[one.basis] ?? one.basis],
      [String(one.observations)],
      [String(one.measurements)],
      aside(citesFor(sight, one.first).map(({ id }) => ({ id }))).slice(1),
    ]),
    figures: [3, 4],
  };
}

const kinds: Readonly<Record<EventKind, Text>> = {
  excavation: say`excavation`,
  conservation: say`conservation`,
  restoration: say`restoration`,
  move: say`move`,
  sampling: say`sampling`,
  loss: say`loss`,
};

function eventsOf(sight: Sight, ids: readonly Id[]): readonly Block[] {
  const events = [
    ...new Map(
      ids.flatMap((id) => eventsOfThing(sight.model, id)).map((one) => [`${one.kind}\n${one.what}`, one]),
    ).values(),
  ].toSorted((a, b) => byYear("first")(a.low ?? a.high, b.low ?? b.high));
  if (events.length === 0) return [];
  return [
    ...paragraph([line(say`What befell it, as far as it is on record:`)]),
    {
      is: "list",
      ordered: false,
      items: events.map((one): Inlines => [one.when, ", ", kinds[one.kind], ": ", one.what]),
    },
  ];
}
