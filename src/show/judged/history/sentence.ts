import { count, row, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { ClaimChange, Publication } from "./history.ts";

/** How many of some claims came to something: of a list the first part names them, those after it do not. */
interface Became {
  readonly claims: (n: number) => Said;
  readonly others: (n: number) => Said;
}

const became: readonly (readonly [Standing, Became])[] = [
  [
    "falls",
    {
      claims: (n) => (n === 1 ? say`1 claim falls` : say`${count(n)} claims fall`),
      others: (n) => (n === 1 ? say`1 falls` : say`${count(n)} fall`),
    },
  ],
  [
    "open",
    {
      claims: (n) => (n === 1 ? say`1 claim opens` : say`${count(n)} claims open`),
      others: (n) => (n === 1 ? say`1 opens` : say`${count(n)} open`),
    },
  ],
  [
    "stands",
    {
      claims: (n) => (n === 1 ? say`1 claim comes to stand` : say`${count(n)} claims come to stand`),
      others: (n) => (n === 1 ? say`1 comes to stand` : say`${count(n)} come to stand`),
    },
  ],
  [
    "unsupported",
    {
      claims: (n) => (n === 1 ? say`1 claim loses its support` : say`${count(n)} claims lose their support`),
      others: (n) => (n === 1 ? say`1 loses its support` : say`${count(n)} lose their support`),
    },
  ],
];

const named: Became = {
  claims: (n) =>
    n === 1 ? say`1 claim is named for the first time` : say`${count(n)} claims are named for the first time`,
  others: (n) =>
    n === 1 ? say`1 is named for the first time` : say`${count(n)} are named for the first time`,
};

/** What became of claims, in a few words: `3 claims fall, 1 opens, 2 are named for the first time`. */
export function changesInWords(changes: readonly ClaimChange[]): Said {
  const changed = changes.filter(({ was }) => was !== null);
  const parts = [
    ...became.map(([standing, words]) => ({
      n: changed.filter(({ is }) => is === standing).length,
      words,
    })),
    { n: changes.length - changed.length, words: named },
  ].filter(({ n }) => n > 0);
  if (parts.length === 0) return say`no claim changes`;
  const told = parts.map(({ n, words }, place) => (place === 0 ? words.claims(n) : words.others(n)));
  return say`${row(told, "comma")}`;
}

const until: Readonly<Record<Standing, Said>> = {
  stands: say`stood until then`,
  open: say`was open until then`,
  falls: say`fell until then`,
  unsupported: say`was unsupported until then`,
};

/** What a claim was before it changed. */
export function wasInWords(was: ClaimChange["was"]): Said {
  return was === null ? say`named for the first time` : until[was];
}

const records: Readonly<Record<Publication["brought"][number]["list"], (n: number) => Said>> = {
  claims: (n) => (n === 1 ? say`1 claim` : say`${count(n)} claims`),
  positions: (n) => (n === 1 ? say`1 position` : say`${count(n)} positions`),
  arguments: (n) => (n === 1 ? say`1 argument` : say`${count(n)} arguments`),
  observations: (n) => (n === 1 ? say`1 observation` : say`${count(n)} observations`),
  measurements: (n) => (n === 1 ? say`1 measurement` : say`${count(n)} measurements`),
  relations: (n) => (n === 1 ? say`1 relation` : say`${count(n)} relations`),
  derivations: (n) => (n === 1 ? say`1 derivation` : say`${count(n)} derivations`),
  passages: (n) => (n === 1 ? say`1 passage` : say`${count(n)} passages`),
  images: (n) => (n === 1 ? say`1 image` : say`${count(n)} images`),
};

/** How many records a publication brought, by kind: `3 claims, 1 argument`. */
export function broughtInWords(brought: Publication["brought"]): Said {
  if (brought.length === 0) return say`nothing that is recorded`;
  const parts = brought.map(({ list, count: n }) => records[list](n));
  return say`${row(parts, "comma")}`;
}
