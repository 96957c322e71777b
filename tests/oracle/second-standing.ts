import type { Case, CaseArgument, Strength } from "./random-corpus.ts";
import { naiveLeast, naiveWellFounded } from "./naive.ts";
import type { PlainRule } from "./naive.ts";

interface Step {
  readonly id: string;
  readonly because: readonly string[];
  readonly therefore: string | null;
  readonly against: readonly string[];
  readonly strength: number;
  readonly silent: boolean;
}

const grade: Readonly<Record<Strength, number>> = { weak: 1, ordinary: 2, strong: 3 };

/** The rules of a case, written a second time from the text of format.md 5, with names for atoms and no cleverness. */
export function rulesOf(one: Case): {
  readonly rules: readonly PlainRule[];
  readonly steps: readonly Step[];
} {
  const isClaim = (id: string): boolean => one.claims.some((claim) => claim.id === id);
  const steps = [...written(one), ...fromNumbers(one), ...fromTestimony(one)];
  const rules: PlainRule[] = [];
  const against = (id: string): readonly string[] =>
    steps.filter((step) => step.against.includes(id)).map((step) => `works ${step.id}`);
  for (const id of [
    ...one.observations.map((it) => it.id),
    ...one.measurements,
    ...one.positions.map((it) => it.id),
  ]) {
    rules.push({ head: `holds ${id}`, positive: [], negative: against(id) });
  }
  for (const derivation of one.derivations) {
    if (!computes(one, derivation.id)) continue;
    const used = [...derivation.values, ...(derivation.after === undefined ? [] : [derivation.after])];
    rules.push({
      head: `holds ${derivation.id}`,
      positive: used.map((id) => `holds ${id}`),
      negative: against(derivation.id),
    });
  }
  for (const step of steps) {
    const attackers = steps.filter((other) => attacks(other, step)).map((other) => `works ${other.id}`);
    for (const leaning of leaningsOf(step)) {
      rules.push({
        head: `works ${step.id}`,
        positive: [...step.because.map((id) => `holds ${id}`), ...leaning],
        negative: attackers,
      });
    }
    if (step.therefore !== null)
      rules.push({ head: `holds ${step.therefore}`, positive: [`works ${step.id}`], negative: [] });
  }
  return { rules, steps };

  /** What a step leans on besides: nothing, or any one derivation of silence that bears the same way. */
  function leaningsOf(step: Step): readonly (readonly string[])[] {
    if (!step.silent) return [[]];
    const targets = step.therefore === null ? step.against : [step.therefore];
    const target = targets[0];
    if (targets.length !== 1 || target === undefined || !isClaim(target)) return [];
    return one.derivations
      .filter(
        (it) =>
          it.plugin === "silence" &&
          computes(one, it.id) &&
          it.bearsOn.some((bearing) => bearing.claim === target),
      )
      .filter((it) => (step.therefore === null ? it.p > 0.5 : it.p < 0.05))
      .map((it) => [`holds ${it.id}`]);
  }

  function attacks(attacker: Step, target: Step): boolean {
    if (attacker.against.includes(target.id)) return true;
    return attacker.strength >= target.strength && conflict(attacker, target);
  }

  function conflict(a: Step, b: Step): boolean {
    if (a.therefore !== null && b.against.includes(a.therefore)) return true;
    if (b.therefore !== null && a.against.includes(b.therefore)) return true;
    return a.therefore !== null && b.therefore !== null && notBoth(a.therefore, b.therefore);
  }

  function notBoth(a: string, b: string): boolean {
    if (a === b) return false;
    const named = (x: string, y: string): boolean =>
      one.claims.some((claim) => claim.id === x && claim.incompatible.includes(y));
    const shared = one.questions.some(
      (question) => question.exclusive && question.answers.includes(a) && question.answers.includes(b),
    );
    return named(a, b) || named(b, a) || shared;
  }
}

/** The standings by the table of format.md 5, from the naive well-founded model. */
export function secondStandings(one: Case): ReadonlyMap<string, string> {
  const { rules, steps } = rulesOf(one);
  const model = naiveWellFounded(rules);
  const free = naiveLeast(
    rules.map((rule) => ({ ...rule, negative: [] })),
    new Set(),
  );
  const standing = (atom: string, beaten: boolean): string => {
    const value = model.get(atom) ?? "false";
    if (value === "true") return "stands";
    if (value === "undefined") return "open";
    return free.has(atom) || beaten ? "falls" : "unsupported";
  };
  const result = new Map<string, string>();
  for (const { id } of one.claims) {
    const beaten = steps.some(
      (step) => step.against.includes(id) && model.get(`works ${step.id}`) === "true",
    );
    result.set(id, standing(`holds ${id}`, beaten));
  }
  for (const step of steps) result.set(step.id, standing(`works ${step.id}`, false));
  for (const id of [
    ...one.observations.map((it) => it.id),
    ...one.measurements,
    ...one.derivations.map((it) => it.id),
  ]) {
    result.set(id, standing(`holds ${id}`, false));
  }
  return result;
}

/** The arguments that the record has, those that cannot be read left out, and targets that are not there. */
function written(one: Case): readonly Step[] {
  let kept: readonly CaseArgument[] = one.arguments.filter(
    (argument) => !argument.because.includes("nowhere"),
  );
  for (;;) {
    const lost = new Set(
      one.arguments.filter((argument) => !kept.includes(argument)).map((argument) => argument.id),
    );
    const next = kept.filter(
      (argument) => argument.against === undefined || argument.against.some((id) => !lost.has(id)),
    );
    if (next.length === kept.length) break;
    kept = next;
  }
  const there = new Set(kept.map((argument) => argument.id));
  const isArgument = (id: string): boolean => one.arguments.some((argument) => argument.id === id);
  return kept.map((argument) => ({
    id: argument.id,
    because: [...new Set(argument.because)],
    therefore: argument.therefore ?? null,
    against: (argument.against ?? []).filter((id) => !isArgument(id) || there.has(id)),
    strength: grade[argument.strength],
    silent:
      argument.scheme === "silence" ||
      argument.because.every((id) =>
        one.observations.some((it) => it.id === id && it.present === "not-reported"),
      ),
  }));
}

function computes(one: Case, id: string): boolean {
  const derivation = one.derivations.find((it) => it.id === id);
  if (!derivation || derivation.refuses) return false;
  return derivation.after === undefined || computes(one, derivation.after);
}

function fromNumbers(one: Case): readonly Step[] {
  return one.derivations.flatMap((derivation) =>
    derivation.bearsOn.flatMap(({ claim, strength }): readonly Step[] => {
      if (!computes(one, derivation.id) || (derivation.p >= 0.05 && derivation.p <= 0.5)) return [];
      const supports = derivation.p < 0.05;
      return [
        {
          id: `${derivation.id}>${claim}`,
          because: [derivation.id],
          therefore: supports ? claim : null,
          against: supports ? [] : [claim],
          strength: grade[strength],
          silent: false,
        },
      ];
    }),
  );
}

function fromTestimony(one: Case): readonly Step[] {
  if (!one.testimony) return [];
  const latest = one.positions.filter(
    (position) =>
      !one.positions.some(
        (other) => other.who === position.who && other.claim === position.claim && other.year > position.year,
      ),
  );
  return latest
    .filter(({ stance }) => stance === "holds" || stance === "rejects")
    .map(({ id, claim, stance }) => ({
      id: `${id}>${claim}`,
      because: [],
      therefore: stance === "holds" ? claim : null,
      against: stance === "holds" ? [] : [claim],
      strength: grade.weak,
      silent: false,
    }));
}
