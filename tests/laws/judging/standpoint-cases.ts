import { randomFrom } from "../../../src/base/outcome/random.ts";
import { clingoPartialStable } from "../../oracle/clingo.ts";
import { naiveRegular } from "../../oracle/naive.ts";
import type { Partial3 } from "../../oracle/naive.ts";
import { randomCase } from "../../oracle/random-corpus.ts";
import type { Case } from "../../oracle/random-corpus.ts";
import { rulesOf } from "../../oracle/second-standing.ts";

/** The regular models of a case as clingo finds them, in ids. */
export async function regularModels(one: Case): Promise<readonly Partial3[]> {
  const models = naiveRegular(await clingoPartialStable(rulesOf(one).rules));
  const ids = (atoms: ReadonlySet<string>): ReadonlySet<string> =>
    new Set([...atoms].map((atom) => atom.replace(/^(?:works|holds) /, "")));
  return models.map(({ certain, possible }) => ({ certain: ids(certain), possible: ids(possible) }));
}

/** Two cases side by side in one corpus, the second under other ids. */
export function together(first: Case, second: Case): Case {
  const other = JSON.parse(JSON.stringify(second).replace(/"([acdmopq])(\d)"/g, '"$11$2"')) as Case;
  const lists = [
    "claims",
    "questions",
    "observations",
    "measurements",
    "derivations",
    "positions",
    "arguments",
  ] as const;
  const both = lists.map((list) => [list, [...first[list], ...other[list]]] as const);
  return { ...first, ...Object.fromEntries(both), testimony: first.testimony || second.testimony };
}

/** A case in which both scholars say something of most claims, some of it twice. */
export function outspoken(seed: number): Case {
  const one = randomCase(seed);
  const random = randomFrom(seed);
  const pick = <T>(list: readonly T[]): T | undefined => list[random.below(list.length)];
  const more = ["s0", "s1"].flatMap((who) =>
    one.claims.flatMap(({ id: claim }, n) =>
      Array.from({ length: random.below(3) }, (_, again) => ({
        id: `p${who}${n}${again}`,
        who,
        claim,
        stance: pick(["holds", "holds", "rejects", "rejects", "doubts", "leaves-open"] as const) ?? "holds",
        year: 1950 + random.below(4),
      })),
    ),
  );
  const apart = more.filter(
    (it, place) =>
      !more
        .slice(0, place)
        .some((other) => other.claim === it.claim && other.who === it.who && other.year === it.year),
  );
  return { ...one, positions: [...one.positions, ...apart] };
}

/** A claim that a scholar holds or rejects. */
export type Commitment = readonly [claim: string, stance: "holds" | "rejects"];

/** What a scholar holds and rejects at present, told again from the positions of the case. */
export function present(one: Case, scholar: string): readonly Commitment[] {
  const own = one.positions.filter((it) => it.who === scholar);
  const rival = (a: string, b: string): boolean =>
    a !== b &&
    (one.claims.some(
      (it) => (it.id === a && it.incompatible.includes(b)) || (it.id === b && it.incompatible.includes(a)),
    ) ||
      one.questions.some((it) => it.exclusive && it.answers.includes(a) && it.answers.includes(b)));
  return own.flatMap(({ claim, stance, year }): readonly Commitment[] => {
    if (own.some((it) => it.claim === claim && it.year > year)) return [];
    const left = own.some((it) => it.stance === "holds" && it.year > year && rival(it.claim, claim));
    if (stance === "rejects") return [[claim, stance] as const];
    return stance === "holds" && !left ? [[claim, stance] as const] : [];
  });
}
