import { distinct } from "../../base/order.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Model } from "../../build.ts";
import { labelOf, labelText, withoutStop } from "../../link/names/label.ts";
import type { GainTogether, Plan } from "../../plan/plan.ts";
import type { Plugin } from "../../plugin.ts";
import type { ContestLines } from "../../show/plan/contest.ts";
import { examinationLine, toldOnce } from "../../show/plan/line.ts";
import type { ExaminationLine } from "../../show/plan/line.ts";
import type { OutcomeLine } from "../../show/plan/outcome.ts";
import { examinationsPage, linesOf } from "../../show/plan/page.ts";
import type { PlanLines } from "../../show/plan/page.ts";
import { becauseOf, bits, bitsOf, rankingRule, unitOfCost } from "../../show/plan/wording.ts";
import { paint } from "./paint.ts";

/** So many suggestions are printed unless all are asked for. */
const fewSuggestions = 10;

/** What to examine next: what none can decide, the examinations by rank, what the record suggests, trips, the smallest set. */
export function planText(
  model: Model,
  plugins: readonly Plugin[],
  plan: Plan,
  all: boolean,
): readonly string[] {
  const { plan: page, costsIn } = examinationsPage(model, plugins, plan);
  if (page === null) return [];
  const none =
    page.recorded.length === 0
      ? ["No examination is recorded in this corpus.", ""]
      : [inEnglish(rankingRule), ""];
  return [
    ...undecidedText(page.contest),
    ...none,
    ...page.recorded.flatMap((one, at) => [
      ...examinationText(one, `${at + 1}.`, {
        access: [...accessText(one), ...one.cautions.map(inEnglish)],
        last: gainText(one, costsIn),
      }),
      "",
    ]),
    ...suggestedText(model, plugins, plan, all),
    ...tripsText(page, plan, model.graph),
    ...setText(page.contest),
  ];
}

/** Whom to ask and for what: each text on a line of its own, for it may have any stops of its own. */
function accessText({ keepers, permits, leadTimes, notes }: ExaminationLine): readonly string[] {
  return [
    ...keepers.map((text) => `ask: ${text}`),
    ...permits.map((text) => `permit: ${text}`),
    ...leadTimes.map((text) => `lead time: ${text}`),
    ...notes.map((text) => `note: ${text}`),
  ];
}

/** An examination and its outcomes: `access` is whom to ask and for what, `last` its gain or why it is suggested. */
function examinationText(
  one: ExaminationLine,
  number: string,
  { access, last }: { readonly access: readonly string[]; readonly last: readonly string[] },
): readonly string[] {
  const cost = one.cost === null ? [] : [one.cost];
  const uses = one.destructive ? "destructive: it uses something up" : "not destructive";
  const things = one.things.map((thing) => inEnglish(thing.text)).join(", ");
  const under = [
    inEnglish(one.decides),
    [...cost, uses].join("; "),
    ...(things === "" ? [] : [`at: ${things}`]),
    ...access,
    ...one.gentler.map((other) => `first ask for: ${inEnglish(other.text)}`),
    ...one.asks.map((question) => `a keeper will ask: ${inEnglish(question)}`),
    ...one.outcomes.flatMap(outcomeText),
    ...last,
  ];
  const pad = " ".repeat(number.length + 1);
  return [
    `${number} ${paint.bold(inEnglish(one.method))}  ${one.id}`,
    ...under.map((line) => `${pad}${line}`),
  ];
}

function outcomeText(outcome: OutcomeLine): readonly string[] {
  const likely = outcome.probability === null ? "" : ` (${inEnglish(outcome.probability)})`;
  const others =
    outcome.others === 1
      ? "one argument or piece of evidence"
      : `${outcome.others} arguments and pieces of evidence`;
  const alone = `no claim changes; ${others} ${outcome.others === 1 ? "does" : "do"}`;
  const changes = [
    ...outcome.claims.map(({ text, was, is }) => `   ${inEnglish(text)}: ${was} → ${is}`),
    ...outcome.numbers.flatMap(({ text, values, why }) => [
      ...values.map(
        ({ name, was, is }) =>
          `   ${inEnglish(text)}: ${name} ${inEnglish(was ?? "none")} → ${inEnglish(is ?? "none")}`,
      ),
      ...(why === null ? [] : [`   ${inEnglish(text)}: ${withoutStop(inEnglish(why))}`]),
    ]),
    ...(outcome.others > 0 ? [`   ${outcome.claims.length > 0 ? `and ${others}` : alone}`] : []),
    ...outcome.pending.map(({ text }) => `   ${inEnglish(text)}: still to be computed`),
  ];
  const head = `– ${inEnglish(outcome.text)}${likely}  ${outcome.id}`;
  return [head, ...(changes.length > 0 ? changes : ["   nothing changes"])];
}

function gainText({ gain, noGain }: ExaminationLine, costsIn: string): readonly string[] {
  if (gain === null) return noGain === null ? [] : [inEnglish(noGain)];
  const about = `about “${inEnglish(gain.question.text)}”`;
  if (gain.bits === "0")
    return [`No gain is expected ${about}: what it can show is as probable under each answer.`];
  const perCost =
    gain.perCost === null
      ? ""
      : `; ${bitsOf(gain.perCost.bits)} for each ${unitOfCost(costsIn)}, number ${gain.perCost.place} by that measure`;
  return [`expected gain: ${gain.bits} of ${bitsOf(gain.prior.bits)} ${about}${perCost}`];
}

function suggestedText(
  model: Model,
  plugins: readonly Plugin[],
  plan: Plan,
  all: boolean,
): readonly string[] {
  if (plan.proposed.length === 0) return [];
  const lines = linesOf(model, plugins, plan);
  const shown = all ? plan.proposed : plan.proposed.slice(0, fewSuggestions);
  const more = plan.proposed.length - shown.length;
  const told = shown.map((one) => ({ reason: one.reason, line: examinationLine(lines, one, null) }));
  const accesses = told.map(({ line }) => accessText(line));
  return [
    paint.bold("What the record itself suggests looking at"),
    ...distinct(told.flatMap(({ line }) => line.cautions.map(inEnglish))),
    "",
    ...told.flatMap(({ reason, line }, at) => {
      const own = accesses[at] ?? [];
      const first = accesses.findIndex((other) => own.length > 0 && other.join("\n") === own.join("\n"));
      const access = first < 0 || first === at ? own : [`access: as under ${first + 1}`];
      const last = reason === null ? [] : [inEnglish(becauseOf(reason, (id) => labelText(model.graph, id)))];
      return [...examinationText(line, `${at + 1}.`, { access, last }), ""];
    }),
    ...(more > 0 ? [`and ${more} more; --all prints them`, ""] : []),
    ...(plan.passedOver > 0 ? [`${plan.passedOver} further ones were not looked at.`, ""] : []),
  ];
}

function tripsText({ trips }: PlanLines, plan: Plan, graph: Model["graph"]): readonly string[] {
  if (trips.length === 0) return [];
  return [
    paint.bold("By keeper, for a trip"),
    ...trips.flatMap(({ keeper, rows, cost, uncosted }, at) => {
      const { permits = [], leadTimes = [], together = null } = plan.trips[at] ?? {};
      const sum = cost === null ? "" : `, ${cost} in all`;
      const open = uncosted === 0 ? "" : `, ${uncosted} without a cost`;
      return [
        `  ${keeper ?? "No keeper is named"}${sum}${open}`,
        ...rows.map((row) => `    ${inEnglish(row.method)}${row.destructive ? " (destructive)" : ""}`),
        ...toldOnce(permits).map((permit) => `    permit: ${permit}`),
        ...(leadTimes.length > 0 ? [`    longest lead time: ${leadTimes[0] ?? ""}`] : []),
        ...(together === null ? [] : [`    ${togetherInWords(together, graph)}`]),
      ];
    }),
    "",
  ];
}

function togetherInWords(
  { question, examinations, bits: all, sum }: GainTogether,
  graph: Model["graph"],
): string {
  const how = `${examinations.length} of them together: ${bits(all)} expected about “${labelOf(graph, question)}”`;
  return sum - all < 5e-4 ? how : `${how}, less than the ${bits(sum)} they tell one by one`;
}

function setText({ rivals, told, set, setCost, nearMinimal }: ContestLines): readonly string[] {
  if (rivals === 0) return ["No rival answers are open."];
  const one = "the one open pair of rivals";
  if (told === 0)
    return [
      `Nothing recorded tells ${rivals === 1 ? one : `any of the ${rivals} open pairs of rivals`} apart.`,
    ];
  const which = nearMinimal ? "A small set, near-minimal," : "The smallest set";
  const count = told === rivals ? `all ${rivals}` : `${told} of ${rivals}`;
  const apart = rivals === 1 ? one : `${count} open pairs of rivals`;
  const cost = setCost === null ? "" : ` (${setCost})`;
  return [
    `${which} that tells ${apart} apart${cost}: ${set.map((look) => inEnglish(look.text)).join("; ")}.`,
  ];
}

function undecidedText({ pairs, answers }: ContestLines): readonly string[] {
  if (pairs.length === 0 && answers.length === 0) return [];
  const would = (those: readonly { readonly text: Text }[]): string =>
    those.length === 0 ? "" : `; suggested below: ${those.map((one) => inEnglish(one.text)).join("; ")}`;
  return [
    paint.bold("What no recorded examination can decide"),
    ...pairs.map(
      ({ answers: [one, other], suggested }) =>
        `  between “${inEnglish(one.text)}” and “${inEnglish(other.text)}”${would(suggested)}`,
    ),
    ...answers.map(({ answer, suggested }) => `  “${inEnglish(answer.text)}”${would(suggested)}`),
    "",
  ];
}
