import type { Finding, Id } from "../../base/finding.ts";
import { objectOf } from "../../base/json.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Lens } from "../../derive/lens.ts";
import type { Footing } from "../../judge/footing.ts";
import type { Judgement, Standing } from "../../judge/judge.ts";
import type { LossSets } from "../../judge/resting/loss-sets.ts";
import type { Graph } from "../../link/graph.ts";
import { listNames } from "../../read/grammar/kinds.ts";
import { placesIn } from "../../base/text/lines/place.ts";
import { shownFindings, withheldIn } from "../withhold.ts";
import { restingReport } from "../judged/resting/report.ts";
import type { Report } from "./schema.ts";

/** What a report is made of: a model as `build` gives it. */
export interface Reported {
  readonly graph: Graph;
  readonly lens: Lens;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
  readonly footings: ReadonlyMap<Id, Footing>;
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
  readonly lossSets?: ReadonlyMap<Id, LossSets> | null;
}

/** What a report has only when it is asked for. */
export type More = Partial<
  Pick<Report, "standpoints" | "history" | "plan" | "proposed" | "trips" | "contest">
>;

/** The machine-readable result: objects sorted by id, so that two runs give the same bytes; nothing withheld is in it. */
export function reportOf(
  model: Reported | null,
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
  more: More = {},
): Report {
  const hidden = model ? withheldIn(model.graph) : () => false;
  return {
    format: 1,
    title: model?.graph.settings.title ?? "",
    asOf: model?.lens.asOf ?? null,
    supposed: model?.graph.supposed ? (model.lens.suppose ?? null) : null,
    counts: model ? countsOf(model.graph.supposed?.before ?? model.graph) : {},
    standings: model ? standingsOf(model) : {},
    questions: model ? questionsOf(model) : {},
    numbers: model
      ? objectOf(
          [...model.derivations.byId]
            .filter(([id]) => !hidden(id))
            .map(([id, one]) => [id, numbersOf(one, hidden)]),
        )
      : {},
    findings: told(shownFindings(model?.graph ?? null, findings), texts),
    standpoints: more.standpoints ?? null,
    history: more.history ?? null,
    plan: more.plan ?? [],
    proposed: more.proposed ?? [],
    trips: more.trips ?? [],
    contest: more.contest ?? null,
  };
}

function countsOf(graph: Graph): Report["counts"] {
  const lists = listNames.map((list) => [list, graph.list(list).length] as const);
  return objectOf([...lists, ["sources", graph.sources.size] as const]);
}

function standingsOf(model: Reported): Report["standings"] {
  const { graph, judgement, footings, restsOn } = model;
  const withheld = withheldIn(graph);
  const shown = [...judgement.standings].filter(
    ([id]) => !withheld(id) && (graph.records.get(id)?.list !== "claims" || judgement.listed(id)),
  );
  return objectOf(
    shown.map(([id, standing]) => {
      const footing = footings.get(id);
      const resting = restsOn.get(id);
      return [
        id,
        {
          standing,
          ...(footing ? { footing } : {}),
          ...(resting ? { restsOn: resting.filter((one) => !withheld(one)) } : {}),
          ...restingReport(model, id),
        },
      ] as const;
    }),
  );
}

function questionsOf({ graph, judgement }: Reported): Report["questions"] {
  const withheld = withheldIn(graph);
  const standing = (claim: Id): Standing => judgement.standings.get(claim) ?? "unsupported";
  const shown = (claim: Id): boolean =>
    judgement.counts(claim) && judgement.listed(claim) && !withheld(claim);
  const questions = graph.list("questions").filter(({ id }) => !withheld(id));
  return objectOf(
    questions.map(({ id, values }) => {
      const answers = values.answers.filter(shown);
      return [
        id,
        {
          exclusive: values.exclusive ?? true,
          answers: objectOf(answers.map((claim) => [claim, standing(claim)] as const)),
        },
      ] as const;
    }),
  );
}

function numbersOf(one: Derived, hidden: (id: Id) => boolean): Report["numbers"][string] {
  return {
    status: one.status,
    why: one.why === null ? null : inEnglish(one.why),
    used: one.used.filter((id) => !hidden(id)),
    leftOut: one.leftOut.filter(({ id }) => !hidden(id)).map(({ id, why }) => ({ id, why: inEnglish(why) })),
    numbers: objectOf(
      Object.entries(one.numbers).map(
        ([name, { value, low, high, unit }]) => [name, { value, low, high, unit }] as const,
      ),
    ),
    bearsOn: objectOf(
      one.bearings
        .filter(({ claim }) => !hidden(claim))
        .map(({ claim, bearing }) => [claim, bearing] as const),
    ),
  };
}

function told(findings: readonly Finding[], texts: ReadonlyMap<string, string>): Report["findings"] {
  const place = placesIn(texts);
  return findings.map(({ rule, level, about, message, at, fix, accepted }) => ({
    rule,
    level,
    about: [...about],
    message: inEnglish(message),
    at: at ? place(at) : null,
    fix: fix
      ? {
          label: inEnglish(fix.label),
          edits: fix.edits.map(({ file, start, end, text }) => ({ file, start, end, text })),
        }
      : null,
    accepted,
  }));
}
