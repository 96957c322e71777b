import { readFileSync } from "node:fs";
import { iriOf } from "../../../src/write/data/terms/prefixes.ts";
import type { Prefixed } from "../../../src/write/data/terms/prefixes.ts";

/** What a vocabulary declares of a term. */
export interface Declared {
  readonly is: string;
  readonly above: readonly string[];
  readonly domain: string | null;
  readonly range: string | null;
}

const files = ["cidoc-crm-7.1.3.tsv", "crmsci-3.2.tsv", "crminf-1.2.1.tsv", "others.tsv"];

/** Every declared term by its IRI. */
export const declared: ReadonlyMap<string, Declared> = new Map(files.flatMap(termsIn));

function termsIn(file: string): readonly (readonly [string, Declared])[] {
  const text = readFileSync(new URL(`./vocabularies/${file}`, import.meta.url), "utf8");
  const [, ...rows] = text.trim().split("\n");
  const whole = (term: string): string => iriOf(term as Prefixed);
  return rows.map((row) => {
    const [term = "", is = "", above = "", domain = "", range = ""] = row.split("\t");
    return [
      whole(term),
      {
        is,
        above: above.split(" ").filter(Boolean).map(whole),
        domain: domain === "" ? null : whole(domain),
        range: range === "" ? null : whole(range),
      },
    ] as const;
  });
}

/** A class with all that is above it. */
export function upward(term: string): ReadonlySet<string> {
  const found = new Set([term]);
  for (const one of found) for (const above of declared.get(one)?.above ?? []) found.add(above);
  return found;
}
