import { dig, excerpt, observe, quota } from "./ground.ts";
import type { Evidence, Matter } from "./ground.ts";
import { derivations, measure, relate } from "./measuring.ts";
import { argue } from "./reasoning.ts";
import { takeSides } from "./stances.ts";
import { highClaims, lowClaims } from "./words.ts";

/** A claim of a dispute: its height above the evidence, and the source that words it. */
export interface Claim {
  readonly id: string;
  readonly text: string;
  readonly short: string;
  readonly rank: number;
  readonly answer: boolean;
  /** Place of its source among the dispute's. */
  readonly since: number;
}

/** Where in a source something is said: a passage of it, or a page. */
export type Citing = (key: string) => string;

/** Writes one dispute whole: the thing, what was seen and measured, the question, the reasoning, who holds what. */
export function writeDispute(matter: Matter, elsewhere: readonly Claim[]): readonly Claim[] {
  const { sources, sheets, chance, place } = matter;
  dig(matter);
  const passages = excerpt(matter);
  const citing: Citing = (key) =>
    chance.of(0.4) && passages.has(key)
      ? chance.pick(passages.get(key) ?? [])
      : `${key} p. ${chance.between(1, 60)}`;
  const claims = wordClaims(matter);
  ask(matter, claims, citing);
  const low = claims.filter((one) => one.rank <= 2).map((one) => one.id);
  const evidence: readonly Evidence[] = [
    ...observe(matter),
    ...measure(matter),
    ...relate(matter),
    ...derivations(matter, low),
  ];
  argue(matter, { claims, evidence, elsewhere, citing });
  takeSides(matter, claims, citing);
  for (let n = 0; n < quota(matter, "examinations"); n++) examine(matter, claims, n);
  for (let n = 0; n < quota(matter, "readings"); n++) {
    const source = sources[n % sources.length] ?? chance.pick(sources);
    const status = chance.pick(["read", "read", "to-read", "nothing-in-it"]);
    const when = `2024-0${1 + (n % 9)}-1${place % 10}`;
    sheets.add(source.file, "readings", { status, when }, source.key);
  }
  return claims;
}

/** Answers on top, claims in ranks below them, the lowest nearest to the evidence. */
function wordClaims(matter: Matter): readonly Claim[] {
  const { site, sources, chance } = matter;
  const count = quota(matter, "claims");
  const answers = Math.max(2, Math.min(site.kind.uses.length, Math.round(count / 3)));
  const worded = wording(matter);
  return Array.from({ length: count }, (_, n): Claim => {
    const answer = n < answers;
    // Two in five of what is no answer are next to the evidence, the others stand above, up to the fourth rank.
    const below = (n - answers) / Math.max(1, count - answers);
    const rank = answer ? chance.between(3, 5) : below < 0.4 ? 1 : below < 0.7 ? 2 : below < 0.85 ? 3 : 4;
    const use = site.kind.uses[n] ?? "a riddle";
    const [text, short] = answer
      ? [`${capital(site.name)} was ${use}.`, use]
      : worded(rank === 1 ? lowClaims : highClaims);
    const latest = Math.max(0, Math.floor((sources.length - 1) * 0.6));
    return { id: `${site.id}-claim-${n + 1}`, text, short, rank, answer, since: chance.between(0, latest) };
  });
}

type Templates = readonly (readonly [string, string])[];

/** Fills templates so that no two texts of a dispute are alike. */
function wording({ site, chance }: Matter): (templates: Templates) => readonly [string, string] {
  const seen = new Set<string>();
  return (templates) => {
    for (let tried = 0; ; tried++) {
      const [text, short] = chance.pick(templates);
      const part = site.partName(chance.pick(site.parts));
      const filled = (template: string): string =>
        template
          .replaceAll("PART", tried > 40 ? `${part}, plan ${tried},` : part)
          .replaceAll("SITE", tried > 40 ? `${site.name} in phase ${tried}` : site.name);
      const whole = capital(filled(text));
      if (!seen.has(whole) && seen.add(whole)) return [whole, filled(short)];
    }
  };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function ask(matter: Matter, claims: readonly Claim[], citing: Citing): void {
  const { site, sources, sheets, chance } = matter;
  const file = `questions/${site.id}.yaml`;
  sheets.add(file, "questions", {
    id: `what-was-${site.id}`,
    text: `What was ${site.name}?`,
    answers: claims.filter((one) => one.answer).map((one) => one.id),
  });
  for (const claim of claims) {
    const rival =
      !claim.answer && chance.of(0.12)
        ? claims.find((one) => one.rank === claim.rank && one.id !== claim.id)
        : undefined;
    sheets.add(file, "claims", {
      id: claim.id,
      text: claim.text,
      short: claim.answer || claim.text.length > 60 || chance.of(0.3) ? claim.short : undefined,
      from: citing(sources[claim.since]?.key ?? ""),
      about: claim.rank === 1 ? [chance.pick(site.parts)] : [site.id],
      "incompatible-with": rival ? [rival.id] : undefined,
    });
  }
}

function examine({ site, sheets, chance }: Matter, claims: readonly Claim[], n: number): void {
  const target = chance.pick(site.parts);
  const [one, other] = [chance.pick(claims), chance.pick(claims)];
  sheets.add(`questions/${site.id}.yaml`, "examinations", {
    id: `${site.id}-look-${n + 1}`,
    of: [target],
    method: "a section cleaned and drawn again",
    cost: chance.between(1, 9),
    destructive: chance.of(0.3) ? "true" : undefined,
    permit: "consent of the heritage authority",
    outcomes: [
      {
        id: `${site.id}-look-${n + 1}-there`,
        text: "Charcoal is there.",
        sees: [{ feature: "charcoal", present: "true" }],
        therefore: [one.id],
      },
      {
        id: `${site.id}-look-${n + 1}-not`,
        text: "No charcoal is there.",
        sees: [{ feature: "charcoal", present: "false" }],
        against: [other.id],
      },
    ],
  });
}
