import type { Chance } from "../chance.ts";
import type { Scholar } from "./people.ts";
import { journals } from "../words.ts";

/** Something in print on a dispute. */
export interface Printed {
  readonly key: string;
  readonly year: number;
  readonly authors: readonly Scholar[];
  readonly lang: string;
  /** The file its records stand in. */
  readonly file: string;
}

/** Makes sources with keys that are not given twice, and writes them as BibTeX. */
export function literature(chance: Chance): {
  readonly print: (about: string, authors: readonly Scholar[], count: number) => readonly Printed[];
  readonly bibliography: () => string;
} {
  const keys = new Set<string>();
  const entries: string[] = [];
  const one = (about: string, scholars: readonly Scholar[]): Printed => {
    const first = chance.pick(scholars);
    const year = chance.between(first.from, Math.min(first.to, 2023));
    const others = scholars.filter((who) => who !== first && who.from <= year && year <= who.to);
    const authors = others.length > 0 && chance.of(0.3) ? [first, chance.pick(others)] : [first];
    const key = freshKey(`${first.id}-${year}`, keys);
    entries.push(bibtex(key, about, year, authors, chance));
    return { key, year, authors, lang: first.lang, file: `readings/${key}.yaml` };
  };
  return {
    print: (about, authors, count) =>
      Array.from({ length: count }, () => one(about, authors)).sort(
        (a, b) => a.year - b.year || (a.key < b.key ? -1 : 1),
      ),
    bibliography: () => entries.join("\n"),
  };
}

function freshKey(wanted: string, taken: Set<string>): string {
  for (let n = 0; ; n++) {
    const key = n === 0 ? wanted : `${wanted}-${n + 1}`;
    if (!taken.has(key)) {
      taken.add(key);
      return key;
    }
  }
}

function bibtex(
  key: string,
  about: string,
  year: number,
  authors: readonly Scholar[],
  chance: Chance,
): string {
  const names = authors.map((one) => `${one.family}, ${one.given}`).join(" and ");
  const first = chance.between(1, 180);
  const title = chance.pick([
    `Notes on ${about}`,
    `${about}: what was found`,
    `Once more ${about}`,
    `A section through ${about}`,
    `${about} and its critics`,
  ]);
  return [
    `@article{${key},`,
    `  author  = {${names}},`,
    `  title   = {${title}},`,
    `  journal = {${chance.pick(journals)}},`,
    `  volume  = {${Math.max(1, year - 1870)}},`,
    `  pages   = {${first}--${first + chance.between(3, 60)}},`,
    `  year    = {${year}}`,
    "}",
    "",
  ].join("\n");
}
