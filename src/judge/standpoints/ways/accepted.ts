import type { Id } from "../../../base/finding.ts";
import { programOf, rulesByHead } from "../../solver/program.ts";
import type { Searched } from "../../solver/standpoint-bounds.ts";
import { eachModel } from "../../solver/standpoint-search.ts";
import type { Model, Purse } from "../../solver/standpoint-search.ts";
import type { Part } from "../../solver/standpoints.ts";
import { leaningsOf } from "./followers.ts";
import { waysOf } from "./ways.ts";
import type { Ways } from "./ways.ts";

/** Whether a claim holds in every standpoint, and whether in any; null where the effort did not suffice to tell. */
export interface Acceptance {
  readonly inAll: boolean | null;
  readonly inSome: boolean | null;
}

/** Questions to a part of what is open, of which the standpoints are too many to lay out. */
export interface Asking {
  readonly accepted: (id: Id) => Acceptance;
  /** Whether some standpoint holds all of the first and none of the second, not even as open. */
  readonly together: (held: readonly Id[], rejected: readonly Id[]) => boolean | null;
}

/**
 * Each question looks at what the claims in it lean on and nothing else. Where that can be decided in few ways they are
 * laid out, at most `limit`; else the solver is asked. Each may cost `share` visits of rules and atoms, together what
 * is in the purse.
 */
export function askingOf(
  part: Part,
  nameOf: (atom: number) => Id,
  limit: number,
  purse: Purse,
  share: number,
): Asking {
  const places = new Map(part.atoms.map((atom, local) => [nameOf(atom), local]));

  /** The named things in a part of nothing but what they lean on, the ways to decide it, and a purse for the solver. */
  function about(
    ids: readonly Id[],
  ): { readonly locals: (some: readonly Id[]) => readonly number[] } & Narrow {
    const narrow = leaningsOf(
      part,
      ids.flatMap((id) => places.get(id) ?? []),
    );
    const own = new Map(narrow.atoms.map((atom, local) => [nameOf(atom), local]));
    const most = Math.min(share, Math.max(0, purse.left)) / 2;
    const search: Purse = { left: most, empty: false };
    const ways = waysOf(narrow, limit, search);
    purse.left -= most - search.left;
    return { narrow, ways, most, locals: (some) => some.flatMap((id) => own.get(id) ?? []) };
  }

  /** Lets the solver answer for what is left of the share. */
  function paying(most: number, ask: (own: Purse) => boolean | null): boolean | null {
    const own: Purse = { left: most, empty: false };
    const answer = ask(own);
    purse.left -= most - own.left;
    return answer;
  }

  return {
    accepted: (id) => {
      const { narrow, ways, most, locals } = about([id]);
      const [local = -1] = locals([id]);
      const has = ways.models.map(({ holds }) => holds.includes(local));
      const [some, missing] = [has.includes(true), has.includes(false)];
      if (ways.whole) return { inAll: !missing, inSome: some };
      const inSome = some || paying(most, (own) => holdsInSome(solvable(narrow), [local], [], own));
      const inAll =
        inSome !== false && !missing && paying(most, (own) => holdsInAll(solvable(narrow), local, own));
      return { inAll, inSome: inAll === true || inSome };
    },
    together: (held, rejected) => {
      const { narrow, ways, most, locals } = about([...held, ...rejected]);
      const [certain, denied] = [locals(held), locals(rejected)];
      const fits = ({ holds, open }: Model): boolean =>
        certain.every((atom) => holds.includes(atom)) &&
        !denied.some((atom) => holds.includes(atom) || open.includes(atom));
      if (ways.models.some(fits)) return true;
      if (ways.whole) return false;
      return paying(most, (own) => holdsInSome(solvable(narrow), certain, denied, own));
    },
  };
}

interface Narrow {
  readonly narrow: Part;
  readonly ways: Ways;
  readonly most: number;
}

function solvable({ atoms, rules }: Part): Searched {
  const bare = programOf(atoms.length, rules);
  return { ...bare, rulesFor: rulesByHead(bare) };
}

/** Some regular model has these and leaves those false when any partial stable model does: every one lies within a regular one. */
function holdsInSome(
  program: Searched,
  certain: readonly number[],
  denied: readonly number[],
  own: Purse,
): boolean | null {
  const from = { certain: marks(program, certain), denied: marks(program, denied) };
  const [model] = eachModel(program, { maximal: false, from }, own);
  return model !== undefined ? true : own.empty ? null : false;
}

/** Every regular model has it when each model that is largest among those without it lies within one that has it. */
function holdsInAll(program: Searched, atom: number, own: Purse): boolean | null {
  const from = { refused: marks(program, [atom]) };
  for (const { holds } of eachModel(program, { maximal: true, from }, own)) {
    const larger = holdsInSome(program, [...holds, atom], [], own);
    if (larger !== true) return larger;
  }
  return own.empty ? null : true;
}

function marks({ atomCount }: Searched, atoms: readonly number[]): Uint8Array {
  const marked = new Uint8Array(atomCount);
  for (const atom of atoms) marked[atom] = 1;
  return marked;
}
