import jsonld from "jsonld";
import { Parser, Writer } from "n3";
import type { Quad } from "n3";

/** Turtle or N-Triples as quads, by a parser that is not ours. */
export function quadsIn(turtle: string): readonly Quad[] {
  return new Parser().parse(turtle);
}

/** Quads as N-Triples. */
export function nTriples(quads: readonly Quad[]): string {
  return new Writer({ format: "N-Triples" }).quadsToString([...quads]);
}

/** JSON-LD as N-Quads in safe mode, in which nothing is dropped without a word; nothing may be fetched. */
export async function nQuadsOf(json: string): Promise<string> {
  const options = {
    safe: true,
    format: "application/n-quads",
    documentLoader: (url: string): never => {
      throw new Error(`fetched ${url}`);
    },
  };
  return (await jsonld.toRDF(
    JSON.parse(json) as jsonld.JsonLdDocument,
    options as never,
  )) as unknown as string;
}

/** The canonical form of N-Quads (RDFC-1.0): equal texts are equal graphs. */
export async function canonicalOf(nQuads: string): Promise<string> {
  const options = {
    algorithm: "RDFC-1.0",
    inputFormat: "application/n-quads",
    format: "application/n-quads",
    safe: true,
  };
  return (await jsonld.canonize(
    nQuads as unknown as jsonld.JsonLdDocument,
    options as never,
  )) as unknown as string;
}
