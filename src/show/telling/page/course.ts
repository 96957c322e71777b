import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import { reasonOf } from "../../../judge/explain/reason.ts";
import { reasonSaid } from "../../../judge/explain/sentence.ts";
import { sentenceOf } from "../../numbers/number.ts";
import type { Plugin } from "../../../plugin.ts";
import type { Reported } from "../../report/report.ts";
import { openIndex } from "./open.ts";

/** The dispute as of a year; the last of several may be of no year: the corpus as it is. */
export interface Stage {
  readonly year: number | null;
  readonly model: Reported;
}

/** How a record is at a stage: not yet in print, in print without a standing, or with one. */
export type Presence = "later" | "there" | Standing;

/** A record through all stages: how it is at each, and what is said of it there (why it stands, or what came of a number). */
export interface Course {
  readonly presence: readonly Presence[];
  /** In English; empty where nothing is said. */
  readonly said: readonly string[];
}

/** The course of each of these records through the stages. */
export function coursesOf(
  ids: readonly Id[],
  stages: readonly Stage[],
  plugins: readonly Plugin[],
): ReadonlyMap<Id, Course> {
  const views = stages.map(({ model }) => {
    const there = new Map(openIndex(model).flatMap(({ entries }) => entries.map((one) => [one.id, one])));
    return { model, there };
  });
  return new Map(
    ids.map((id) => {
      const steps = views.map(({ model, there }) => {
        const entry = there.get(id);
        if (entry === undefined) return { is: "later" as const, said: "" };
        return { is: entry.standing ?? ("there" as const), said: saidOf(model, plugins, id) };
      });
      return [id, { presence: steps.map((one) => one.is), said: steps.map((one) => one.said) }];
    }),
  );
}

function saidOf({ graph, derivations, judgement }: Reported, plugins: readonly Plugin[], id: Id): string {
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  if (record?.list === "derivations" && derived !== undefined) {
    const plugin = plugins.find((one) => one.id === record.values.plugin);
    return told(sentenceOf(graph, derived, plugin));
  }
  if (!judgement.standings.has(id)) return "";
  return told(reasonSaid(graph, reasonOf(graph, derivations, judgement, id)));
}

function told(text: Text | null): string {
  return text === null ? "" : inEnglish(text);
}
