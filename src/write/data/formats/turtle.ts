import { onOneLine } from "../../../base/text/steering.ts";
import { isNode } from "../graph/sheet.ts";
import type { Term, Triple } from "../graph/sheet.ts";
import { iriOf, prefixes, shortened } from "../terms/prefixes.ts";

/** Triples as Turtle (W3C 2014), one subject after another, with the prefixes that are used; lines of `head` stand first as comments. */
export function turtleOf(
  triples: readonly Triple[],
  base: string | null,
  head: readonly string[] = [],
): string {
  const lines: string[] = head.map((line) => `# ${onOneLine(line)}`);
  const named = (iri: string): string => {
    const short = shortened(iri);
    if (short !== null) return short;
    return base !== null && iri.startsWith(base) ? `<${iri.slice(base.length)}>` : `<${iri}>`;
  };
  const body = [...bySubject(triples)].map(([subject, of]) => subjectText(subject, of, named));
  const used = Object.entries(prefixes).filter(([prefix]) =>
    body.some((text) => text.includes(`${prefix}:`)),
  );
  if (base !== null) lines.push(`@base <${base}> .`);
  lines.push(...used.map(([prefix, space]) => `@prefix ${prefix}: <${space}> .`), "");
  return `${[...lines, ...body].join("\n")}\n`;
}

/** Triples in their order, by their subject. */
export function bySubject(triples: readonly Triple[]): ReadonlyMap<string, readonly Triple[]> {
  const subjects = new Map<string, Triple[]>();
  for (const triple of triples) {
    const of = subjects.get(triple.subject);
    if (of) of.push(triple);
    else subjects.set(triple.subject, [triple]);
  }
  return subjects;
}

function subjectText(subject: string, of: readonly Triple[], named: (iri: string) => string): string {
  const properties = new Map<string, string[]>();
  for (const { property, object } of of) {
    const objects = properties.get(property) ?? [];
    objects.push(termText(object, named));
    properties.set(property, objects);
  }
  const said = [...properties].map(([property, objects]) => {
    const name = property === iriOf("rdf:type") ? "a" : named(property);
    return `  ${name} ${objects.join(",\n    ")}`;
  });
  return `${named(subject)}\n${said.join(" ;\n")} .\n`;
}

function termText(term: Term, named: (iri: string) => string): string {
  if (isNode(term)) return named(term.iri);
  const text = `"${escaped(term.words)}"`;
  if (term.lang !== undefined) return `${text}@${term.lang}`;
  return term.type === undefined || term.type === iriOf("xsd:string") ? text : `${text}^^${named(term.type)}`;
}

const escapes: Readonly<Record<string, string>> = {
  "\\": "\\\\",
  '"': '\\"',
  "\n": "\\n",
  "\r": "\\r",
  "\t": "\\t",
};

/** A text between double quotes: what cannot stand there is escaped, and half a surrogate pair is no character. */
function escaped(text: string): string {
  return text.replace(/\p{Cs}/gu, "\ufffd").replace(
    // oxlint-disable-next-line no-control-regex
    /[\\"\u0000-\u001f\u007f]/g,
    (sign) => escapes[sign] ?? `\\u${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}`,
  );
}
