import {
  count as counting,
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  row,
  say,
  textOf,
  type Computation,
  type Json,
  type Naming,
  type Text,
} from "../../src/plugin.ts";

/** A side as it is told: its name, what was counted over what, its rate with its exact 95 % interval. */
export interface Told {
  readonly name: Text;
  readonly count: number;
  readonly exposure: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
  /** Ends of the interval by the score test; null for rates. */
  readonly wilson: readonly [number, number] | null;
  /** The largest share that none found among so many allows; null where some were. */
  readonly atMost: number | null;
  /** How many records it sums up: from one a single measurement can be read off. */
  readonly records: number;
}

/** A comparison as it is told. */
export interface Telling {
  readonly of: "rates" | "shares";
  readonly per: string;
  readonly unit: string;
  readonly nothing: boolean;
  readonly first: Told;
  readonly second: Told;
}

/** Reads the plot data of a computation. */
export function tellingOf({ data }: Computation, name: Naming): Telling {
  const fields = fieldsOf(data);
  const [first, second] = membersOf(fields["sides"]);
  return {
    of: fields["of"] === "shares" ? "shares" : "rates",
    per: textOf(fields["per"]),
    unit: textOf(fields["unit"]) || "1",
    nothing: fields["nothing"] === true,
    first: toldOf(first, (n) => say`the first (${counting(n)} things)`, name),
    second: toldOf(second, (n) => say`the second (${counting(n)} things)`, name),
  };
}

/** Whether a single measurement or observation could be read off what is told. */
export function tellsEach({ first, second }: Telling): boolean {
  return first.records < 2 || second.records < 2;
}

/** What was counted over what, of rates: `7 in 120 m`, `7 on 3 things`. */
export function rateWords({ count, exposure }: Told, { unit, per }: Telling): Text {
  if (per === "thing")
    return exposure === 1
      ? say`${shown(count)} on 1 thing`
      : say`${shown(count)} on ${shown(exposure)} things`;
  return say`${shown(count)} in ${unit === "1" ? shown(exposure) : `${shown(exposure)} ${unit}`}`;
}

/** A count, a rate or a ratio, to three digits. */
export function shown(value: number): string {
  return formatNumber(value, 3);
}

function toldOf(side: Json | undefined, many: (n: number) => Text, name: Naming): Told {
  const fields = fieldsOf(side);
  const things = numberOf(fields["things"]);
  const artefacts = membersOf(fields["artefacts"]).map((one) => name(textOf(one)));
  const [low, high] = membersOf(fields["wilson"]).map(numberOf);
  return {
    name: things === artefacts.length && things < 3 ? say`${row(artefacts)}` : many(things),
    count: numberOf(fields["count"]),
    exposure: numberOf(fields["exposure"]),
    rate: numberOf(fields["rate"]),
    low: numberOf(fields["low"]),
    high: numberOf(fields["high"]),
    wilson: low === undefined || high === undefined ? null : [low, high],
    atMost: typeof fields["atMost"] === "number" ? fields["atMost"] : null,
    records: numberOf(fields["records"]),
  };
}
