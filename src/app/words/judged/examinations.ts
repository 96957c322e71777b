import { arabicExaminations } from "../arabic/judged/examinations.ts";
import { told } from "../reader/told.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import type { Standing } from "../../../judge/judge.ts";
import { bitsOf, unitOfCost } from "../../../show/plan/wording.ts";
import { counted, countedFirst } from "../../../base/text/counted.ts";

const times = (n: number, one: string, many: string): string => (n === 1 ? one : `${n} ${many}`);

/** Words of the page of examinations, and of what other pages say of them. */
export const examinationWords = told(
  {
    examinations: "Examinations",
    lead: (recorded: number, deciding: number, idle: number) => {
      const first = `${countedFirst(recorded)} ${recorded === 1 ? "examination is" : "examinations are"} recorded`;
      const decide =
        deciding === 0 ? "none can decide an answer" : `${counted(deciding)} can decide an answer`;
      const nothing = idle === 0 ? "" : `, ${counted(idle)} ${idle === 1 ? "changes" : "change"} nothing`;
      return recorded === 0 ? "No examination is recorded." : `${first}: ${decide}${nothing}.`;
    },
    working: "Thinking the examinations through …",
    workingOf: (done: number, of: number) => `Thinking examinations through: ${done} of ${of}`,
    waitsFor: (n: number) =>
      n === 1
        ? "The record’s own numbers are computed first: one to go."
        : `The record’s own numbers are computed first: ${n} to go.`,
    pending: (n: number) =>
      n === 1
        ? "The number of one outcome is still to be computed; until then what hangs on it is taken as it is now."
        : `The numbers of ${n} outcomes are still to be computed; until then what hangs on them is taken as it is now.`,
    ofTheRecord: "This list is of the record as it is, without what is supposed above.",
    next: "Next examination",
    before: "Examination before",

    none: "What none of them can decide",
    nothingOpen: "No answer is open that a recorded examination does not decide.",
    pairs: "No recorded examination tells these apart:",
    answers: "No outcome of a recorded examination makes these stand or fall:",
    or: "or",
    couldBe: "A suggested one would:",
    couldBeMore: (n: number) => times(n, "and one more", "more"),

    recorded: "Recorded, in order",
    sheet: "Record sheet",
    on: "On",
    cost: "Cost",
    noCost: "not recorded",
    effect: "Effect",
    destructive: "destructive",
    untouched: "not destructive",
    keeper: "Keeper",
    noKeeper: "not recorded",
    permit: "Permit",
    leadTime: "Ask ahead",
    gentler: "To be asked for first, since it is not destructive:",
    asks: "What a keeper will ask before anything is taken (common practice)",

    outcome: "If it shows",
    wouldChange: "Then",
    probability: "Probability",
    changesNothing: "No standing changes.",
    noClaim: "No claim changes.",
    change: (was: Standing, is: Standing) => `${was}, then ${is}`,
    moreClaims: (n: number) => times(n, "One more claim", "more claims"),
    others: (n: number) =>
      times(
        n,
        "One argument or piece of evidence changes with it.",
        "arguments and pieces of evidence change with it.",
      ),
    suppose: "Suppose this",
    supposeOf: (text: string) => `Suppose this: ${text}`,
    noNumber: "no number",
    bears: (now: Bearing | null, then: Bearing | null) =>
      `${now === null ? "says nothing" : says[now]}, then ${then === null ? "says nothing" : says[then]}`,
    stillComputed: "still to be computed",

    gain: (bits: string, question: string) =>
      bits === "0"
        ? `No gain is expected about “${question}”: what it can show is as probable under each answer`
        : `Expected gain ${bitsOf(bits)} about “${question}”`,
    perCost: (bits: string, place: number, costsIn: string) =>
      `for each ${unitOfCost(costsIn)} ${bits}, number ${place} in that order`,
    bit: "To choose between two answers that are equally probable takes one bit.",
    now: "Now",
    left: "Bits still wanted",
    cannotBe: "cannot be",
    gainOf: "How probable each answer is, before and after",

    suggested: "What the record itself suggests",
    suggestedLead:
      "Nobody has recorded these as examinations, and nobody has costed them. They follow from what is recorded.",
    more: (n: number) => times(n, "One more", "more"),
    passedOver: (n: number) =>
      times(n, "One more was not thought through.", "more were not thought through."),

    trips: "Whom to ask",
    what: "What",
    nobody: "Nobody is named to be asked",
    inAll: (cost: string) => `${cost} in all`,
    together: (count: number, bits: string, question: string) =>
      `${counted(count)} together: expected gain ${bitsOf(bits)} about “${question}”`,
    uncosted: (n: number) => times(n, "one without a cost", "without a cost"),
    trip: "Examinations by whom to ask",
    begins: "A permit named here is the beginning of the asking. Local law and licensed people decide.",

    set: "The smallest set that tells rivals apart",
    nearSet: "A small set that tells rivals apart",
    near: "Near-minimal: there are too many to be sure that none is smaller.",
    tells: (told: number, rivals: number) =>
      told === rivals
        ? rivals === 1
          ? "It tells the one pair of open rivals apart."
          : `It tells all ${counted(rivals)} pairs of open rivals apart.`
        : `It tells ${told} of ${rivals} pairs of open rivals apart.`,
    noSet: "No recorded examination tells any two open rivals apart.",

    deciders: "What would decide it",
    canDecide: (what: string, cost: string | null, destructive: boolean) =>
      `can decide ${what}; ${cost === null ? "" : `${cost}, `}${destructive ? "destructive" : "not destructive"}`,
    decidersOfTheRecord: "This is told of the record as it is, without what is supposed above.",
    noDecider: "No examination that is recorded or suggested would.",
    toPage: "Work it out among the examinations",
    wouldCome: "What its outcomes would change",
    toList: "Its place among the examinations",
  },
  arabicExaminations,
);

const says: Readonly<Record<Bearing, string>> = {
  supports: "supports",
  disputes: "disputes",
  inconclusive: "is inconclusive about",
};
