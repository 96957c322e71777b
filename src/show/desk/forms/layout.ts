import type { Field, Fields, ListName, Target } from "../../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../../read/grammar/kinds.ts";

/** The fields of a list's form: those that are always in sight, and those that are folded until they hold something. */
export interface Layout {
  readonly first: readonly string[];
  readonly more: readonly string[];
}

/** Optional fields that a form of the list always shows, in the order in which they are thought of. */
const usual: Readonly<Record<ListName, readonly string[]>> = {
  scholars: ["name", "known-as", "orcid"],
  questions: ["text", "answers", "exclusive"],
  claims: ["text", "about", "from", "incompatible-with"],
  passages: ["from", "at", "quote", "lang", "translation", "paraphrase"],
  positions: ["who", "claim", "stance", "from", "words", "certainty", "year"],
  artefacts: ["name", "part-of", "kind", "material", "numbers", "date", "held-at"],
  images: ["of", "file", "kind", "licence", "credit"],
  observations: ["of", "text", "feature", "present", "basis", "from", "year"],
  measurements: ["of", "dimension", "value", "state", "basis", "from", "year"],
  relations: ["earlier", "later", "same-time", "because", "from"],
  arguments: ["because", "therefore", "against", "text", "scheme", "strength", "why-strength", "from", "by"],
  derivations: ["text", "plugin", "inputs", "parameters", "bears-on"],
  examinations: ["of", "method", "outcomes", "cost", "permit", "destructive"],
  talks: ["title", "steps"],
  searches: ["where", "words", "when", "found", "screened", "kept", "left-out"],
  readings: ["from", "status", "when", "by"],
};

/** All fields that a record of a list may have. */
export function fieldsIn(list: ListName): Fields {
  return { ...kindOf(list).fields, ...everywhere };
}

/** How the form of a list is laid out; its id comes last of what is in sight, since it follows from the rest. */
export function layoutOf(list: ListName): Layout {
  const names = Object.keys(fieldsIn(list));
  const first = usual[list].filter((name) => names.includes(name));
  const withId = names.includes("id") ? [...first, "id"] : first;
  return { first: withId, more: names.filter((name) => !withId.includes(name)) };
}

const sentences = ["text", "quote", "translation", "paraphrase", "words", "note", "notes", "why-strength"];

/** Whether a text is a sentence or more, and its field grows with it. */
export function isLong(list: ListName, name: string, field: Field): boolean {
  if (field.type === "json") return true;
  if (field.type !== "text") return false;
  return sentences.includes(name) ? list !== "searches" : name === "because" || name === "what";
}

const eventful: readonly string[] = ["earlier", "later", "same-time", "is", "after", "before"];
const repeated: Readonly<Partial<Record<ListName, readonly string[]>>> = {
  artefacts: ["kind", "material", "held-at"],
  observations: ["feature"],
  measurements: ["dimension", "instrument"],
  examinations: ["method"],
  searches: ["where"],
};

/** From where a field of text is helped on: texts it has elsewhere, or records that it may name instead. */
export type Help =
  | { readonly from: "used"; readonly list: ListName; readonly name: string }
  | { readonly from: "records"; readonly to: readonly Target[] };

/** What is offered while a text is typed; null where nothing is. */
export function helpFor(list: ListName, name: string, field: Field): Help | null {
  if (field.type !== "text" && field.type !== "texts") return null;
  if (eventful.includes(name) && (list === "relations" || list === "claims"))
    return { from: "records", to: list === "relations" ? ["artefacts"] : ["artefacts", "claims"] };
  if (repeated[list]?.includes(name)) return { from: "used", list, name };
  if (list === "examinations" && name === "dimension") return { from: "used", list: "measurements", name };
  if (list === "examinations" && name === "feature") return { from: "used", list: "observations", name };
  return null;
}
