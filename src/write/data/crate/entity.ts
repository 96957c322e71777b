import type { Json } from "../../../base/json.ts";

/** A node of the flattened JSON-LD of a crate: its address in the crate, its types, and what is said of it. */
export interface Entity {
  readonly "@id": string;
  readonly "@type": string | readonly string[];
  readonly [property: string]: Json | undefined;
}

/** What leads to another entity. */
export function at(entity: Entity | string): { readonly "@id": string } {
  return { "@id": typeof entity === "string" ? entity : entity["@id"] };
}

/** What leads to several: a single one stands alone, none says nothing. */
export function atAll(entities: readonly (Entity | string)[]): Json | undefined {
  const [only] = entities;
  if (only === undefined) return undefined;
  return entities.length === 1 ? at(only) : entities.map(at);
}

/** An entity without the properties that say nothing. */
export function said(entity: Entity): Entity {
  return Object.fromEntries(Object.entries(entity).filter(([, value]) => value !== undefined)) as Entity;
}

/** The address of a file in a crate (RO-Crate 1.2, “Encoding file paths”): a relative one, with what an address cannot hold escaped. */
export function addressIn(path: string): string {
  return path.split("/").map(encodeURIComponent).join("/");
}
