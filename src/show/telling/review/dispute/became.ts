import { countInWords, first, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { ClaimChange } from "../../../judged/history/history.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { claimInside, listed } from "../pieces/inlines.ts";

const order: readonly Standing[] = ["stands", "open", "falls", "unsupported"];

const became: Readonly<Record<Standing, (n: number) => Said>> = {
  stands: (n) => (n === 1 ? say`one claim came to stand: ` : say`${countInWords(n)} claims came to stand: `),
  open: (n) => (n === 1 ? say`one claim became open: ` : say`${countInWords(n)} claims became open: `),
  falls: (n) => (n === 1 ? say`one claim fell: ` : say`${countInWords(n)} claims fell: `),
  unsupported: (n) =>
    n === 1 ? say`one claim lost its support: ` : say`${countInWords(n)} claims lost their support: `,
};

/** Most claims named for one change; of more only how many there are. */
const mostNamed = 4;

/** What became of claims with a publication, a sentence for each standing; a claim that was named without support is none. */
export function becameSentences(sight: Sight, changes: readonly ClaimChange[]): readonly Inlines[] {
  const { groups, listed: isListed } = sight;
  const answers = new Set(groups.flatMap((group) => group.answers));
  const told = changes
    .filter(({ claim, was, is }) => isListed(claim) && (was !== null || is !== "unsupported"))
    .toSorted((a, b) => Number(answers.has(b.claim)) - Number(answers.has(a.claim)));
  const clauses = order.flatMap((standing): readonly Inlines[] => {
    const those = told.filter(({ is }) => is === standing).map(({ claim }) => claim);
    const named = those.slice(0, those.length === mostNamed + 1 ? mostNamed - 1 : mostNamed);
    const more = those.length - named.length;
    const claims = [
      ...named.map((claim) => claimInside(sight, claim)),
      ...(more > 0 ? [[say`${countInWords(more)} more`]] : []),
    ];
    return those.length === 0 ? [] : [[became[standing](those.length), ...listed(claims), "."]];
  });
  return clauses.map(([lead = "", ...rest], place): Inlines => {
    const said = typeof lead === "string" || !("say" in lead) ? lead : place === 0 ? lead : first(lead);
    return [...(place === 0 ? [say`With this, `] : []), said, ...rest];
  });
}
