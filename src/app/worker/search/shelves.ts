import type { SearchDocument } from "../../../show/search/document.ts";

/** Documents of one kind that are indexed together, in the order of the corpus. */
export interface Shelf {
  readonly name: string;
  readonly documents: readonly SearchDocument[];
}

/** A shelf holds about as many documents: few enough to be built again while one types, enough to be worth a look. */
const roomy = 500;

/** Kinds parted into shelves; a document's shelf follows from its id, so that an edit touches one shelf alone. */
export function shelvesOf(documents: readonly SearchDocument[]): readonly Shelf[] {
  const kinds = [...new Set(documents.map((one) => one.kind))];
  return kinds.flatMap((kind) => {
    const those = documents.filter((one) => one.kind === kind);
    const count = 2 ** Math.max(0, Math.ceil(Math.log2(those.length / roomy)));
    const shelves = Array.from({ length: count }, (): SearchDocument[] => []);
    for (const one of those) shelves[spread(one.id) % count]?.push(one);
    return shelves.map((shelf, place) => ({ name: `${kind} ${place} of ${count}`, documents: shelf }));
  });
}

/** A number from an id that spreads ids evenly (FNV-1a, 32 bit, its high bits folded in). */
function spread(id: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < id.length; at++) hash = Math.imul(hash ^ id.charCodeAt(at), 0x01000193);
  return (hash ^ (hash >>> 15)) >>> 0;
}
