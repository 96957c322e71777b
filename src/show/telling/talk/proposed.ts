import { yearText } from "../../../base/date/year.ts";
import type { Finding, Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { say } from "../../../base/text/said/said.ts";
import { labelOf, withoutStop } from "../../../link/names/label.ts";
import type { Plugin } from "../../../plugin.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import { figureOf } from "../../numbers/figure.ts";
import { claimText, questionPage } from "../../pages/question.ts";
import type { QuestionPage } from "../../pages/question.ts";
import type { Reported } from "../../report/report.ts";
import { shownFindings, shownUnder, withheldIn } from "../../withhold.ts";
import { picturesToOpen } from "./opening-picture.ts";
import { upperFirst } from "./shown/upper.ts";

/** What a talk is proposed from. */
export interface Proposing {
  readonly model: Reported;
  readonly findings: readonly Finding[];
  readonly plugins: readonly Plugin[];
}

type Step = WrittenMap;

/** Most figures of a first talk of fifteen minutes. */
const mostFigures = 2;

/**
 * A first talk on a question, about ten steps for fifteen minutes, as the fields of a record: the thing, the question as it
 * was and as it is, what bears the weight, the key figures, what contradicts what, what rests on one thing, what was never
 * supported, and what to look at next. Null where there is no such question that may be shown.
 */
export function proposedTalk(from: Proposing, question: Id): WrittenMap | null {
  const { model } = from;
  const page = questionPage(model, question);
  if (page === null) return null;
  const steps: readonly Step[] = [
    ...picturesToOpen(model),
    ...earlierStep(page),
    { show: { question }, text: page.text, notes: whyNotes(page) },
    ...weightStep(page),
    ...figureSteps(from),
    ...firstOf(from, [
      ["contradiction", "These cannot both be right."],
      ["conflicting-measurements", "Two readings of one thing."],
    ]),
    ...restingStep(from, page),
    ...firstOf(from, [
      ["unsupported-claim", "Held, and never supported."],
      ["silence-as-evidence", "A silence, and what it is worth."],
    ]),
    ...nextSteps(model),
  ];
  return { id: freeId(model), title: page.text, steps };
}

/** The sentence why each answer stands as it does, for the speaker. */
function whyNotes(page: QuestionPage): string {
  return page.answers.map((answer) => inEnglish(answer.why)).join(" ");
}

/** The question as it was when a second answer was first held, where more was said since. */
function earlierStep({ id, answers }: QuestionPage): readonly Step[] {
  const since = answers.map((answer) => Math.min(...answer.holders.flatMap((holder) => holder.since ?? [])));
  const years = since.filter(Number.isFinite).toSorted((a, b) => a - b);
  const latest = Math.max(...answers.flatMap(({ holders }) => holders.flatMap((one) => one.since ?? [])));
  const second = years[1];
  if (second === undefined || second >= latest) return [];
  const year = yearText(second);
  return [
    {
      show: { question: id, "as-of": year },
      text: inEnglish(say`As it was known in ${year}.`),
    },
  ];
}

/** What the answer that stands best rests on. */
function weightStep({ answers }: QuestionPage): readonly Step[] {
  const best =
    answers.find((one) => one.standing === "stands") ?? answers.find((one) => one.standing === "open");
  if (best === undefined) return [];
  return [{ show: { around: best.claim, steps: "1" }, text: best.text, notes: inEnglish(best.why) }];
}

/** The figures of numbers that say something of a claim, those that decide first. */
function figureSteps({ model, plugins }: Proposing): readonly Step[] {
  const { graph, derivations } = model;
  const shown = shownUnder(model);
  const decided = ["supports", "disputes"];
  const all = graph.list("derivations").flatMap((record) => {
    const derived = derivations.byId.get(record.id);
    const plugin = plugins.find((one) => one.id === record.values.plugin);
    if (derived === undefined || !shown(record.id)) return [];
    const figure = figureOf(graph, derived, plugin);
    if (figure === null || figure.figure.panels.length === 0) return [];
    const decides = derived.bearings.some(({ bearing }) => decided.includes(bearing ?? ""));
    return [{ id: record.id, decides, text: labelOf(graph, record.id) }];
  });
  return [...all.filter((one) => one.decides), ...all.filter((one) => !one.decides)]
    .slice(0, mostFigures)
    .map(({ id, text }) => ({ show: { figure: id }, text: `${upperFirst(withoutStop(text))}.` }));
}

/** The step of the first rule that found something. */
function firstOf(
  from: Proposing,
  rules: readonly (readonly [rule: string, text: string])[],
): readonly Step[] {
  return rules.flatMap(([rule, text]) => findingStep(from, rule, text)).slice(0, 1);
}

/** What the first finding of a rule is about; its words are the speaker's. */
function findingStep({ model, findings }: Proposing, rule: string, text: string): readonly Step[] {
  const { graph } = model;
  const shown = shownUnder(model);
  const found = shownFindings(graph, findings).find((one) => one.rule === rule && one.accepted === null);
  const about = (found?.about ?? []).filter((id) => graph.records.has(id) && shown(id)).slice(0, 2);
  if (found === undefined || about.length === 0) return [];
  return [{ show: about, text, notes: inEnglish(found.message) }];
}

/** The answer that rests on fewest things, where it rests on any. */
function restingStep({ model }: Proposing, { answers }: QuestionPage): readonly Step[] {
  const { graph, restsOn } = model;
  const withheld = withheldIn(graph);
  const resting = answers
    .map(({ claim }) => ({ claim, things: (restsOn.get(claim) ?? []).filter((id) => !withheld(id)) }))
    .filter(({ things }) => things.length > 0)
    .toSorted((a, b) => a.things.length - b.things.length)[0];
  const [thing] = resting?.things ?? [];
  if (resting === undefined || thing === undefined) return [];
  const name = labelOf(graph, thing);
  const notes = inEnglish(say`Without ${name} it does not stand: ${claimText(graph, resting.claim)}`);
  return [{ show: [resting.claim, thing], text: "What it rests on.", notes }];
}

/** What could be looked at next, and the first of it. */
function nextSteps(model: Reported): readonly Step[] {
  const shown = shownUnder(model);
  const first = model.graph.list("examinations").find(({ id }) => shown(id));
  if (first === undefined) return [];
  const method = withoutStop(first.values.method);
  const text = `${upperFirst(method)}.`;
  return [
    { show: { table: "examinations" }, text: "What to look at next." },
    { show: [first.id], text },
  ];
}

function freeId({ graph }: Reported): Id {
  const taken = (id: Id): boolean => graph.records.has(id) || graph.sources.has(id);
  for (let n = 1; ; n++) {
    const id = n === 1 ? "first-talk" : `first-talk-${n}`;
    if (!taken(id)) return id;
  }
}
