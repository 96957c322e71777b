import {
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  textOf,
  type Computation,
  type Naming,
  type Settings,
} from "../../src/plugin.ts";

/** From which likelihood ratio on a silence is worth how much (Kass & Raftery 1995, from memory). */
export const scale = [
  { from: 1, says: "little", words: "hardly worth a mention" },
  { from: 3, says: "positive", words: "positive evidence" },
  { from: 20, says: "strong", words: "strong evidence" },
  { from: 150, says: "very strong", words: "very strong evidence" },
] as const;

/** What the review's methods section prints; where the band crosses a mark of the scale the worth is not decided. */
export function silenceSentence(computation: Computation, _settings: Settings, name: Naming): string {
  const data = fieldsOf(computation.data);
  const ratio = computation.numbers["likelihood-ratio"];
  const rate = computation.numbers["reporting-rate"];
  const [value, low, high] = [ratio?.value ?? 1, ratio?.low ?? 1, ratio?.high ?? 1];
  const count = numberOf(data["occasions"]);
  const times = `${shown(value)} times (${shown(low)} to ${shown(high)} times)`;
  const { words: who, reports, its } = silentOnes(computation, name);
  if (numberOf(data["known"]) === 0)
    return `Nothing is known by which ${who} could be judged, so the reporting rate is unknown: if every rate is as likely, the silence is ${shown(value)} times as likely where there was nothing, and what it is worth cannot be decided.`;
  const habit = `Of ${counted(numberOf(data["known"]), "such trace", "such traces")} known, ${who} ${reports} ${numberOf(data["reported"])}, which puts ${its} rate at ${shown(rate?.value ?? 0)} (${shown(rate?.low ?? 0)} to ${shown(rate?.high ?? 1)})`;
  const silence = `${its} silence${count === 1 ? "" : ` on ${count} independent occasions`} is ${times} as likely where there was nothing as where there was something`;
  return `${habit}; ${silence}, ${worth(low, high)} (scale of Kass & Raftery 1995).`;
}

/** The silent source by name, or that it has none, with the words that go with one or several. */
export function silentOnes(
  { data }: Computation,
  name: Naming,
): { readonly words: string; readonly reports: string; readonly its: string } {
  const names = membersOf(fieldsOf(data)["silent"]).map((one) => name(textOf(one)));
  const last = names.at(-1);
  const one = { reports: "reports", its: "its" };
  if (last === undefined) return { words: "the silent observer", ...one };
  if (names.length === 1) return { words: last, ...one };
  const words = `${names.slice(0, -1).join(", ")} and ${last}`;
  return { words, reports: "report", its: "their" };
}

function worth(low: number, high: number): string {
  if (high <= 1) return "which is no evidence that there was nothing";
  const [least, most] = [gradeOf(low), gradeOf(high)];
  if (least === most) return `which is ${most?.words ?? "no evidence"}`;
  const from = least === null ? "no evidence at all" : least.words;
  return `and whether that is ${from} or as much as ${most?.words ?? ""} cannot be decided`;
}

function gradeOf(ratio: number): (typeof scale)[number] | null {
  return scale.findLast(({ from }) => ratio >= from) ?? null;
}

function counted(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}

function shown(value: number): string {
  return formatNumber(value, 2);
}
