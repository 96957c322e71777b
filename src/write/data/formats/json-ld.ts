import { byText } from "../../../base/order.ts";
import { objectOf } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import { isNode } from "../graph/sheet.ts";
import type { Term, Triple } from "../graph/sheet.ts";
import { iriOf, prefixes, shortened } from "../terms/prefixes.ts";
import { bySubject } from "./turtle.ts";

/**
 * Triples as JSON-LD 1.1 with their context in the file, so that nothing is ever fetched to read it. A property that only leads to
 * nodes is declared so, and its values are plain addresses.
 */
export function jsonLdOf(triples: readonly Triple[], base: string): string {
  const linking = new Set(triples.map(({ property }) => property));
  for (const { property, object } of triples) if (!isNode(object)) linking.delete(property);
  linking.delete(iriOf("rdf:type"));
  const context = {
    "@version": 1.1,
    "@base": base,
    ...prefixes,
    ...objectOf([...linking].sort(byText).map((iri) => [named(iri), { "@type": "@id" }] as const)),
  };
  const graph = [...bySubject(triples)].map(([subject, of]) => nodeOf(subject, of, { base, linking }));
  return `${JSON.stringify({ "@context": context, "@graph": graph }, null, 1)}\n`;
}

interface Context {
  readonly base: string;
  readonly linking: ReadonlySet<string>;
}

function nodeOf(subject: string, of: readonly Triple[], context: Context): Json {
  const pairs = new Map<string, Json[]>();
  for (const { property, object } of of) {
    const type = property === iriOf("rdf:type");
    const key = type ? "@type" : named(property);
    const value =
      isNode(object) && (type || context.linking.has(property))
        ? type
          ? named(object.iri)
          : addressOf(object.iri, context.base)
        : valueOf(object, context.base);
    pairs.set(key, [...(pairs.get(key) ?? []), value]);
  }
  const fields = [...pairs].map(
    ([key, values]) => [key, values.length === 1 ? (values[0] ?? null) : values] as const,
  );
  return { "@id": addressOf(subject, context.base), ...Object.fromEntries(fields) };
}

function valueOf(term: Term, base: string): Json {
  if (isNode(term)) return { "@id": addressOf(term.iri, base) };
  const words = term.words.replace(/\p{Cs}/gu, "\ufffd");
  if (term.lang !== undefined) return { "@value": words, "@language": term.lang };
  return term.type === undefined || term.type === iriOf("xsd:string")
    ? words
    : { "@value": words, "@type": named(term.type) };
}

const named = (iri: string): string => shortened(iri) ?? iri;

/** A node by its prefix, by what follows the base, or whole. */
function addressOf(iri: string, base: string): string {
  const short = shortened(iri);
  if (short !== null) return short;
  return iri.startsWith(base) ? iri.slice(base.length) : iri;
}
