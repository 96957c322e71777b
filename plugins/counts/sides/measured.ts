import {
  isRefusal,
  refuse,
  refuseFewer,
  say,
  writtenUnit,
  type Id,
  type LeftOut,
  type Measured,
  type Refusal,
} from "../../../src/plugin.ts";
import { sideOf } from "./side.ts";
import type { Side, Sides } from "./side.ts";

/**
 * Two sides of counts, each over the dimension named by `per` of the same things, else over the number of things.
 * Where that is itself a count of things examined, of which no more had it than there were, they are shares.
 */
export function sidesMeasured(
  first: readonly Measured[],
  second: readonly Measured[],
  per: string | null,
): Sides | Refusal {
  const leftOut: LeftOut[] = [];
  const sides = [first, second].map((all) => sideMeasured(all, per, leftOut));
  const [one, other] = sides;
  const bad = sides.find((side) => isRefusal(side));
  if (bad !== undefined && isRefusal(bad)) return bad;
  if (one === undefined || other === undefined || isRefusal(one) || isRefusal(other))
    throw new Error("sidesMeasured: expected two sides");
  const exposures = [first, second].flatMap((all) => all.filter((member) => isExposure(member, per)));
  const kinds = new Set(exposures.map((member) => member.quantity.kind));
  if (kinds.size > 1)
    return refuse("mixed-dimensions", say`The exposures are of several kinds, expected ${per ?? ""} alone.`);
  const parts = [...one.parts, ...other.parts];
  const examined = kinds.has("count") && parts.every(({ count, exposure }) => count <= exposure);
  const { unit, size } = writtenUnit(exposures[0]?.quantity);
  return {
    of: examined ? "shares" : "rates",
    first: one,
    second: other,
    per: per ?? "thing",
    unit,
    size,
    leftOut,
    warnings: [
      ...(per === null ? ["per-thing"] : []),
      ...(examined ? ["read-as-shares"] : []),
      ...([first, second].some((all) => all.some((member) => isLoose(member, leftOut)))
        ? ["loose-counts"]
        : []),
    ],
  };
}

function sideMeasured(all: readonly Measured[], per: string | null, leftOut: LeftOut[]): Side | Refusal {
  const counts = new Map<Id, Measured[]>();
  const exposures = new Map<Id, number>();
  for (const member of all) {
    const { id, artefact, quantity, state } = member;
    const bound = quantity.form === "at-least" || quantity.form === "at-most";
    if (isExposure(member, per)) {
      // What is preserved of an edge is what could be looked at, however long it was once.
      if (bound && state !== "preserved") leftOut.push({ id, why: say`bound` });
      else exposures.set(artefact, (exposures.get(artefact) ?? 0) + quantity.value);
    } else if (bound) leftOut.push({ id, why: say`bound` });
    else counts.set(artefact, [...(counts.get(artefact) ?? []), member]);
  }
  const parts: { readonly count: number; readonly exposure: number }[] = [];
  const artefacts: Id[] = [];
  for (const [artefact, members] of counts) {
    const wrong = members.find(({ quantity: { kind, value } }) => kind !== "count" || !isWhole(value));
    if (wrong !== undefined)
      return refuse(
        "no-count",
        say`Unexpected value of ${wrong.dimension}, expected counts: whole numbers, 0 or more.`,
      );
    const exposure = per === null ? 1 : exposures.get(artefact);
    if (exposure === undefined || exposure <= 0) {
      leftOut.push(...members.map(({ id }) => ({ id, why: say`no ${per ?? ""} to count it over` })));
      continue;
    }
    parts.push({ count: members.reduce((sum, one) => sum + one.quantity.value, 0), exposure });
    artefacts.push(artefact);
  }
  const idle = all.filter((one) => isExposure(one, per) && !counts.has(one.artefact));
  leftOut.push(...idle.map(({ id }) => ({ id, why: say`nothing was counted over it` })));
  return refuseFewer(parts.length, 1, say`counts on a side`) ?? sideOf(parts, artefacts);
}

function isExposure({ dimension }: Measured, per: string | null): boolean {
  return per !== null && folded(dimension) === folded(per);
}

/** Whether what is taken as exact is given as approximate or as a range. */
function isLoose({ id, quantity: { form } }: Measured, leftOut: readonly LeftOut[]): boolean {
  return (form === "approximate" || form === "range") && !leftOut.some((one) => one.id === id);
}

/** Names compared in NFC, without regard to case and spaces. */
function folded(name: string): string {
  return name.normalize("NFC").toLowerCase().replace(/\s+/g, "");
}

function isWhole(value: number): boolean {
  return Number.isInteger(value) && value >= 0;
}
