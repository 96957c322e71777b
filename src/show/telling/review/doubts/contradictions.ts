import type { Finding, Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { MeasurementRecord } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { shownFindings } from "../../../withhold.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { howTheyStand } from "../dispute/standings.ts";
import { familiesOf, stanceOn, stanceVerb } from "../dispute/stances.ts";
import { asideFor } from "../pieces/cites.ts";
import { claimInside, heading, inside, line, listed, paragraph } from "../pieces/inlines.ts";

/** Where the record contradicts itself: claims, scholars, readings and observations that cannot all be right. */
export function contradictionsSection(sight: Sight): readonly Block[] {
  const found = shownFindings(sight.graph, sight.findings).filter(({ about }) =>
    about.some((id) => sight.shown(id) || sight.listed(id)),
  );
  const of = (rule: string): readonly Finding[] => found.filter((one) => one.rule === rule);
  const parts: readonly (readonly Block[])[] = [
    under(
      say`Claims`,
      of("contradiction").flatMap((one) => paragraph(claims(sight, one))),
    ),
    under(
      say`Scholars`,
      of("self-contradiction").flatMap((one) => paragraph([scholar(sight, one)])),
    ),
    under(say`Readings`, readings(sight, of("conflicting-measurements"))),
    under(say`Observations`, observations(sight, of("conflicting-observations"))),
  ];
  const told = parts.filter((one) => one.length > 0);
  return told.length === 1 ? (told[0] ?? []).slice(1) : told.flat();
}

function under(title: ReturnType<typeof say>, blocks: readonly Block[]): readonly Block[] {
  return blocks.length === 0 ? [] : [heading(2, [title]), ...blocks];
}

function claims(sight: Sight, { about }: Finding): readonly Inlines[] {
  const those = about.filter(sight.listed);
  if (those.length < 2) return [];
  const named = listed(those.map((claim) => claimInside(sight, claim)));
  const lead: Inlines =
    those.length === 2
      ? [say`It cannot both be right `, ...named, say`; yet both are held or argued for.`]
      : [say`It cannot all be right `, ...named, say`; yet each is held or argued for.`];
  return [lead, [say`On the record as it is, `, ...howTheyStand(sight, those), "."]];
}

/** One scholar's positions that do not go together. */
function scholar(sight: Sight, { about }: Finding): Inlines {
  const positions = about.flatMap((id) => {
    const record = sight.graph.records.get(id);
    return record?.list === "positions" && !sight.withheld(id) ? [record] : [];
  });
  const [one, ...others] = positions;
  const who = (one?.values.who ?? []).filter((id) => others.every(({ values }) => values.who.includes(id)));
  const stances = positions.toReversed().map(({ id, values }): Inlines => {
    const { stance, claim } = values;
    return [
      stanceVerb(stance, "now", who.length > 1),
      ...stanceOn(sight, stance, claim),
      ...asideFor(sight, id),
    ];
  });
  const names = familiesOf(sight, who);
  return names.length === 0 || positions.length < 2
    ? []
    : [...names, " ", ...listed(stances), say`, which do not go together.`];
}

/** Readings that differ by more than their uncertainties allow, a row for each dimension of each thing. */
function readings(sight: Sight, findings: readonly Finding[]): readonly Block[] {
  const groups = new Map<string, MeasurementRecord[]>();
  for (const id of findings.flatMap(({ about }) => about)) {
    const record = sight.graph.records.get(id);
    if (record?.list !== "measurements" || !sight.shown(id)) continue;
    const { of, dimension, between = "" } = record.values;
    const key = `${of}\n${sight.graph.dimensionName(dimension)}\n${between}`;
    const group = groups.get(key) ?? [];
    groups.set(key, [...group, ...(group.includes(record) ? [] : [record])]);
  }
  const rows = [...groups.values()].filter((group) => group.length > 1);
  if (rows.length === 0) return [];
  return [
    {
      is: "table",
      caption: [say`Readings of one dimension that differ by more than their uncertainties allow.`],
      head: [say`Of`, say`Dimension`, say`Readings`].map(line),
      rows: rows.map((group) => readingRow(sight, group)),
      figures: [],
    },
  ];
}

function readingRow(sight: Sight, group: readonly MeasurementRecord[]): readonly Inlines[] {
  const { of = "", dimension = "", between } = group[0]?.values ?? {};
  return [
    [labelText(sight.graph, of)],
    [between === undefined ? dimension : say`${dimension}, ${between}`],
    listed(
      group.map(({ id, values }) => [values.value.text, ...standingAside(sight, id), ...asideFor(sight, id)]),
    ),
  ];
}

/** How a reading stands, where an argument has chosen. */
function standingAside({ model }: Sight, id: Id): Inlines {
  const standing = model.judgement.standings.get(id);
  return standing === undefined || standing === "stands" ? [] : [", ", { is: "standing", standing }];
}

/** What was seen by one and looked for in vain by another. */
function observations(sight: Sight, findings: readonly Finding[]): readonly Block[] {
  return findings.flatMap(({ about }) => {
    const told = about.flatMap((id): readonly Inlines[] => {
      const record = sight.graph.records.get(id);
      if (record?.list !== "observations" || !sight.shown(id)) return [];
      const piece = inside(sight, record.values.text);
      return [[piece, ...standingAside(sight, id), ...asideFor(sight, id)]];
    });
    if (told.length < 2) return [];
    return paragraph([[say`Against one another stand these observations: `, ...listed(told), "."]]);
  });
}
