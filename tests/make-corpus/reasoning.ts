import type { Citing, Claim } from "./dispute.ts";
import { quota } from "./ground.ts";
import type { Evidence, Matter } from "./ground.ts";
import type { Entry } from "./records.ts";
import { objections, steps } from "./words.ts";

/** What a dispute's arguments are made of. */
export interface Stock {
  readonly claims: readonly Claim[];
  readonly evidence: readonly Evidence[];
  /** Claims of disputes before this one; now and then one of them is a premise. */
  readonly elsewhere: readonly Claim[];
  readonly citing: Citing;
}

const schemes = [
  "trace",
  "trace",
  "parallel",
  "analogy",
  "function",
  "experiment",
  "authority",
  "metrology",
  "stratigraphy",
  "stratigraphy",
  "context",
  "chronology",
  "other",
] as const;

/** First one argument for each claim (some hang, two may lean on each other), then more for, and some against. */
export function argue(matter: Matter, stock: Stock): void {
  const { chance, place } = matter;
  const count = quota(matter, "arguments");
  const made: Evidence[] = [];
  const low = stock.claims.filter((one) => !one.answer);
  const inCircle = place % 3 === 2 ? low.slice(-2) : [];
  const hanging = low.filter((one) => chance.of(0.08) || inCircle.includes(one));
  const waiting = stock.claims.filter((one) => !hanging.includes(one));
  const carried = { ...stock, claims: chance.of(0.3) ? low : low.filter((one) => !hanging.includes(one)) };
  const [one, other] = inCircle;
  const circle: (readonly [Claim, Claim])[] =
    one && other
      ? [
          [one, other],
          [other, one],
        ]
      : [];
  for (let n = 0; n < count; n++) {
    const id = `${matter.site.id}-argument-${n + 1}`;
    const leaning = circle[n - waiting.length];
    const first = waiting[n];
    const claim = first ?? leaning?.[1] ?? chance.pick(waiting.length > 0 ? waiting : stock.claims);
    const attack = !first && !leaning && chance.of(0.55);
    const since = attack
      ? against(matter, stock, id, made)
      : support(matter, carried, id, claim, leaning?.[0].id ?? null);
    made.push({ id, since });
  }
}

/** An argument for a claim; it leans on a claim of the rank below, or on evidence alone at the lowest. */
function support(matter: Matter, stock: Stock, id: string, claim: Claim, alone: string | null): number {
  const { chance } = matter;
  const premises: Evidence[] = alone === null ? [...premisesBelow(matter, stock, claim)] : [];
  const since = Math.max(claim.since, ...premises.map((one) => one.since));
  const because = alone === null ? premises.map((one) => one.id) : [alone];
  put(matter, stock.citing, since, {
    id,
    text: chance.pick(steps),
    because: [...new Set(because)],
    therefore: claim.id,
  });
  return since;
}

function premisesBelow({ chance }: Matter, stock: Stock, claim: Claim): readonly Evidence[] {
  const known = stock.evidence.filter((one) => one.since <= claim.since + 1);
  const evidence = known.length > 0 ? known : stock.evidence;
  const loud = evidence.filter((one) => one.silent !== true);
  const sure = loud.length > 0 ? loud : evidence;
  if (claim.rank === 1) return [chance.pick(sure), ...(chance.of(0.6) ? chance.some(evidence, 2) : [])];
  const lower = stock.claims.filter((one) => one.rank < claim.rank);
  const highest = Math.max(0, ...lower.map((one) => one.rank));
  const base = lower.filter((one) => one.rank === highest);
  const found: Evidence[] = base.length > 0 ? [chance.pick(base)] : [];
  if (lower.length > 0 && chance.of(0.45)) found.push(chance.pick(lower));
  if (found.length === 0 || chance.of(0.3)) found.push(chance.pick(sure));
  const far = stock.elsewhere.filter((one) => one.rank < claim.rank);
  if (far.length > 0 && chance.of(0.06)) found.push({ id: chance.pick(far).id, since: 0 });
  return found;
}

/** An argument against a claim, an argument or a piece of evidence; it leans on evidence alone. */
function against(matter: Matter, stock: Stock, id: string, made: readonly Evidence[]): number {
  const { chance } = matter;
  const kind = chance.between(0, 9);
  const target: Evidence =
    kind < 4 || made.length === 0
      ? chance.pick(stock.claims)
      : kind < 8
        ? chance.pick(made)
        : chance.pick(stock.evidence);
  const premises = chance.some(
    stock.evidence.filter((one) => one.id !== target.id),
    2,
  );
  const since = Math.max(target.since, ...premises.map((one) => one.since));
  put(matter, stock.citing, since, {
    id,
    text: chance.pick(objections),
    because: premises.map((one) => one.id),
    against: [target.id],
  });
  return since;
}

/** In print in the source of that place; one in eight is the corpus's own reasoning. */
function put({ site, sources, sheets, chance }: Matter, citing: Citing, since: number, step: Entry): void {
  const strength = chance.of(0.75) ? undefined : chance.pick(["weak", "strong"]);
  const weighed = {
    ...step,
    scheme: chance.pick(schemes),
    strength,
    "why-strength": strength === undefined ? undefined : "It has been looked at from both sides.",
  };
  const source = sources[since];
  if (source === undefined || chance.of(0.125)) {
    sheets.add(`questions/${site.id}.yaml`, "arguments", weighed);
  } else {
    sheets.add(source.file, "arguments", { ...weighed, from: citing(source.key) }, source.key);
  }
}
