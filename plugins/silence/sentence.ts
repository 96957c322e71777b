import {
  alike,
  count,
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  row,
  say,
  textOf,
  type Computation,
  type ComputedNumber,
  type Naming,
  type Settings,
  type Text,
} from "../../src/plugin.ts";

/** From which likelihood ratio on a silence is worth how much (Kass & Raftery 1995, from memory). */
export const scale = [
  { from: 1, says: say`little`, words: say`hardly worth a mention` },
  { from: 3, says: say`positive`, words: say`positive evidence` },
  { from: 20, says: say`strong`, words: say`strong evidence` },
  { from: 150, says: say`very strong`, words: say`very strong evidence` },
] as const;

/** The silent source by name, or that it has none, and whether there are several. */
export interface Silent {
  readonly words: Text;
  readonly several: boolean;
}

/** What the review's methods section prints; where the band crosses a mark of the scale the worth is not decided. */
export function silenceSentence(computation: Computation, _settings: Settings, name: Naming): Text {
  const { numbers, data } = computation;
  const ratio = numbers["likelihood-ratio"] ?? { value: 1, low: 1, high: 1 };
  const silent = silentOnes(computation, name);
  const { known, reported, occasions } = fieldsOf(data);
  if (numberOf(known) === 0)
    return say`Nothing is known by which ${silent.words} could be judged, so the reporting rate is unknown: if every rate is as likely, the silence is ${shown(ratio.value)} times as likely where there was nothing, and what it is worth cannot be decided.`;
  const habit = habitWords(silent, numberOf(known), numberOf(reported), numbers["reporting-rate"]);
  const silence = silenceWords(silent, numberOf(occasions), ratio);
  return say`${habit}; ${silence}, ${worth(ratio.low ?? 1, ratio.high ?? 1)} (scale of Kass & Raftery 1995).`;
}

function habitWords(
  { words: who, several }: Silent,
  known: number,
  reported: number,
  rate: ComputedNumber | undefined,
): Text {
  const [value = "", low = "", high = ""] = alike(
    [rate?.value ?? 0, rate?.low ?? 0, rate?.high ?? 1].map(shown),
  );
  const told = String(reported);
  if (several)
    return known === 1
      ? say`Of 1 such trace known, ${who} report ${told}, which puts their rate at ${value} (${low} to ${high})`
      : say`Of ${count(known)} such traces known, ${who} report ${told}, which puts their rate at ${value} (${low} to ${high})`;
  return known === 1
    ? say`Of 1 such trace known, ${who} reports ${told}, which puts its rate at ${value} (${low} to ${high})`
    : say`Of ${count(known)} such traces known, ${who} reports ${told}, which puts its rate at ${value} (${low} to ${high})`;
}

function silenceWords({ several }: Silent, occasions: number, ratio: ComputedNumber): Text {
  const [value = "", low = "", high = ""] = alike([ratio.value, ratio.low ?? 1, ratio.high ?? 1].map(shown));
  if (occasions === 1)
    return several
      ? say`their silence is ${value} times (${low} to ${high} times) as likely where there was nothing as where there was something`
      : say`its silence is ${value} times (${low} to ${high} times) as likely where there was nothing as where there was something`;
  return several
    ? say`their silence on ${count(occasions)} independent occasions is ${value} times (${low} to ${high} times) as likely where there was nothing as where there was something`
    : say`its silence on ${count(occasions)} independent occasions is ${value} times (${low} to ${high} times) as likely where there was nothing as where there was something`;
}

/** Who is silent: the sources by name, else the one observer who names none. */
export function silentOnes({ data }: Computation, name: Naming): Silent {
  const names = membersOf(fieldsOf(data)["silent"]).map((one) => name(textOf(one)));
  const [only] = names;
  if (only === undefined) return { words: say`the silent observer`, several: false };
  return names.length === 1 ? { words: only, several: false } : { words: say`${row(names)}`, several: true };
}

function worth(low: number, high: number): Text {
  const [least, most] = [gradeOf(low), gradeOf(high)];
  if (high <= 1 || most === null) return say`which is no evidence that there was nothing`;
  if (least === most) return say`which is ${most.words}`;
  return least === null
    ? say`and whether that is no evidence at all or as much as ${most.words} cannot be decided`
    : say`and whether that is ${least.words} or as much as ${most.words} cannot be decided`;
}

function gradeOf(ratio: number): (typeof scale)[number] | null {
  return scale.findLast(({ from }) => ratio >= from) ?? null;
}

function shown(value: number): string {
  return formatNumber(value, 2);
}
