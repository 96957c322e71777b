import type { Citing, Claim } from "./dispute.ts";
import { quota } from "./ground.ts";
import type { Matter } from "./ground.ts";
import { quotes } from "./words.ts";

type Stance = "holds" | "rejects" | "doubts" | "leaves-open";

/** Who holds what: answers and the claims below them, sometimes taken up again and seen otherwise. */
export function takeSides(matter: Matter, claims: readonly Claim[], citing: Citing): void {
  const { sources, sheets, chance } = matter;
  const taken = new Map<string, Stance>();
  const printed = new Set<string>();
  for (let n = 0, tried = 0; n < quota(matter, "positions"); tried++) {
    const place = chance.between(0, sources.length - 1);
    const source = sources[place] ?? chance.pick(sources);
    const known = claims.filter((one) => one.since <= place);
    const answers = known.filter((one) => one.answer);
    const claim = chance.pick(
      tried > 400
        ? claims
        : answers.length > 0 && chance.of(0.4)
          ? answers
          : known.length > 0
            ? known
            : claims,
    );
    const once = `${source.key} ${claim.id}`;
    // With hardly any sources the same may have to be said twice.
    if (printed.has(once) && tried < 800) continue;
    printed.add(once);
    n++;
    const who = chance.of(0.8) ? source.authors : source.authors.slice(0, 1);
    const before = taken.get(`${who[0]?.id ?? ""} ${claim.id}`);
    const stance = nextStance(
      before,
      claim,
      claims,
      (other) => taken.get(`${who[0]?.id ?? ""} ${other}`),
      () => chance.between(0, 99),
    );
    for (const one of who) taken.set(`${one.id} ${claim.id}`, stance);
    sheets.add(
      source.file,
      "positions",
      {
        who: who.map((one) => one.id),
        claim: claim.id,
        stance,
        from: citing(source.key),
        words: chance.of(0.3) ? chance.pick(quotes[source.lang] ?? quotes["en"] ?? []) : undefined,
        certainty: chance.of(0.5) ? chance.pick(["certain", "probable", "possible", "unlikely"]) : undefined,
      },
      source.key,
    );
  }
}

/** Mostly what was said before; another answer than the one held is rejected; else held more often than not. */
function nextStance(
  before: Stance | undefined,
  claim: Claim,
  claims: readonly Claim[],
  held: (claim: string) => Stance | undefined,
  percent: () => number,
): Stance {
  if (before !== undefined && percent() < 50) return before;
  const holdsRival =
    claim.answer && claims.some((one) => one.answer && one.id !== claim.id && held(one.id) === "holds");
  if (holdsRival) return percent() < 75 ? "rejects" : "doubts";
  const drawn = percent();
  if (before === "holds") return drawn < 50 ? "doubts" : "rejects";
  return drawn < 58 ? "holds" : drawn < 80 ? "rejects" : drawn < 92 ? "doubts" : "leaves-open";
}
