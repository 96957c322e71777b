import type { ConceptName } from "./concepts.ts";
import type { Prefix } from "./prefixes.ts";
import type { OwnProperty } from "./properties.ts";

/** A term of a published vocabulary, or one of ours that is declared. */
export type Known = `${Exclude<Prefix, "vr">}:${string}` | `vr:${ConceptName}` | `vr:${OwnProperty}`;
