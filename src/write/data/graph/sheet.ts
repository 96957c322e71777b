import { byText } from "../../../base/order.ts";
import { above } from "../terms/above.ts";
import type { Known } from "../terms/known.ts";
import { iriOf } from "../terms/prefixes.ts";

export type { Known } from "../terms/known.ts";

/** Something that has an IRI: nothing in our data is without one, so that everything can be pointed at. */
export interface Node {
  readonly iri: string;
}

/** A text, with its language or its datatype. */
export interface Words {
  readonly words: string;
  /** BCP 47, in lower case, as RDF compares them. */
  readonly lang?: string;
  /** The IRI of the datatype; `xsd:string` where there is neither. */
  readonly type?: string;
}

/** What stands at the end of a triple. */
export type Term = Node | Words;

/** One statement of the data. */
export interface Triple {
  readonly subject: string;
  readonly property: string;
  readonly object: Term;
}

/** What triples are written on. */
export interface Sheet {
  /** Says of which classes a node is. */
  readonly is: (subject: Node, ...classes: readonly Known[]) => void;
  /** Says that a node has a property, once for each object; null says nothing. */
  readonly has: (subject: Node, property: Known, ...objects: readonly (Term | null)[]) => void;
  /** Everything said so far, each once, in one order whatever the order in which it was said. */
  readonly triples: () => readonly Triple[];
}

/** A vocabulary's term as a node. */
export function at(term: Known): Node {
  return { iri: iriOf(term) };
}

/** A literal of a datatype. */
export function typed(words: string, type: Known): Words {
  return { words, type: iriOf(type) };
}

/** An empty sheet. */
export function sheetOf(): Sheet {
  const said = new Map<string, Triple>();
  const put = (subject: Node, property: Known, object: Term): void => {
    const triple = { subject: subject.iri, property: iriOf(property), object };
    said.set(orderOf(triple), triple);
    for (const wider of above[property] ?? []) put(subject, wider, object);
  };
  return {
    is: (subject, ...classes) => {
      for (const one of classes) put(subject, "rdf:type", at(one));
    },
    has: (subject, property, ...objects) => {
      for (const one of objects) if (one) put(subject, property, one);
    },
    triples: () => [...said].toSorted(([a], [b]) => byText(a, b)).map(([, triple]) => triple),
  };
}

/** What triples are ordered by: the subject, its classes first, the property, the object. */
function orderOf({ subject, property, object }: Triple): string {
  const first = property === iriOf("rdf:type") ? "" : property;
  const last = isNode(object)
    ? `<${object.iri}`
    : `"${object.words}\n${object.lang ?? ""}\n${object.type ?? ""}`;
  return `${subject}\n${first}\n${last}`;
}

/** Tells a node from words. */
export function isNode(term: Term): term is Node {
  return "iri" in term;
}
