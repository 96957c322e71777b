import type { Id } from "../../../base/finding.ts";
import { ofThings } from "../../../derive/lens.ts";
import { looked } from "../../../judge/rules/history/after.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { authorOrCorpus, familyText, labelText } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";
import type { Event } from "./events.ts";

/** When somebody saw or measured a thing or its parts, and how much came of it. */
export interface Look {
  /** Astronomical year. */
  readonly year: number;
  readonly who: Text;
  readonly measured: number;
  readonly seen: number;
  /** What was looked at, where it was less than the whole of it: a cast, a drawing. */
  readonly bases: readonly string[];
  /** What had altered the thing before: the last event in an earlier year; null when nothing had. */
  readonly after: Event | null;
}

/** Who looked at a thing or its parts, by year: what was only reported or copied, and what was passed over, is no look. */
export function looksAt(model: Reported, id: Id, events: readonly Event[]): readonly Look[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const things = new Set(graph.withParts(id).filter((one) => !withheld(one)));
  const looks = new Map<string, Look>();
  for (const record of looked(model, ["observations", "measurements"])) {
    if (withheld(record.id) || !ofThings(record).some((thing) => things.has(thing))) continue;
    if (record.list !== "observations" && record.list !== "measurements") continue;
    if (record.list === "measurements" && record.values.repeats !== undefined) continue;
    const who = whoOf(graph, record.id);
    const key = `${record.year}\n${inEnglish(who)}`;
    const before = looks.get(key);
    const basis = record.values.basis;
    const indirect = basis !== undefined && basis !== "autopsy" ? [basis] : [];
    looks.set(key, {
      year: record.year,
      who,
      measured: (before?.measured ?? 0) + (record.list === "measurements" ? 1 : 0),
      seen: (before?.seen ?? 0) + (record.list === "observations" ? 1 : 0),
      bases: [...new Set([...(before?.bases ?? []), ...indirect])],
      after: events.findLast((one) => one.alters && one.high !== null && one.high < record.year) ?? null,
    });
  }
  return [...looks.values()].sort((a, b) => a.year - b.year);
}

/** The family names of those who looked: of scholars of the corpus, else of whoever wrote the source. */
function whoOf(graph: Graph, id: Id): Text {
  const { scholars, sources } = graph.provenance(id);
  const names = sources.flatMap((key) =>
    withheldIn(graph)(key) ? [] : (graph.sources.get(key)?.names ?? []),
  );
  const written = names.flatMap((name) => name.family ?? name.literal ?? []);
  if (scholars.length === 0) return written.length > 0 ? together(written) : authorOrCorpus(graph, id);
  return together(scholars.map((one) => familyText(labelText(graph, one))));
}

/** Names by `and` between each two. */
function together([one = "", ...others]: readonly Text[]): Text {
  return others.reduce((before, other) => say`${before} and ${other}`, one);
}
