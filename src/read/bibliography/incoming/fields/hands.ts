import type { Format } from "../formats.ts";
import { bibHand } from "./bib.ts";
import type { Hand } from "./field.ts";
import { jsonHand } from "./json.ts";
import { risHand } from "./ris.ts";

/** How each format writes the fields of an entry. */
export const hands: Readonly<Record<Format, Hand>> = { bib: bibHand, ris: risHand, json: jsonHand };
