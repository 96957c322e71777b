import { coded, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Element } from "./xml.ts";

const printed = "choose date group label names number text".split(" ");

/** What may stand in what, in the citation styles of CSL 1.0.2 (its specification, "Style Structure" to "Rendering Elements"). */
const inside: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    style: ["bibliography", "citation", "info", "locale", "macro"],
    macro: printed,
    layout: printed,
    group: printed,
    if: printed,
    "else-if": printed,
    else: printed,
    substitute: printed,
    choose: ["if", "else-if", "else"],
    citation: ["sort", "layout"],
    bibliography: ["sort", "layout"],
    sort: ["key"],
    names: ["name", "et-al", "label", "substitute", "institution"],
    name: ["name-part"],
    institution: ["institution-part"],
    date: ["date-part"],
  }),
);

/** Values without which an element means nothing, and those that an attribute may have. */
const needed: ReadonlyMap<string, string> = new Map(
  Object.entries({
    names: "variable",
    number: "variable",
    date: "variable",
    "date-part": "name",
    macro: "name",
  }),
);
const choices: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    "if match": ["all", "any", "none"],
    "else-if match": ["all", "any", "none"],
    "name and": ["text", "symbol"],
    "date form": ["text", "numeric"],
  }),
);

/** What a `text` prints. */
const printing = ["variable", "macro", "term", "value"];

/** The first element of a style that may not stand where it does, or not so, with what is odd about it; null where all may. */
export function misplaced(element: Element): Said | null {
  const own = oddness(element);
  if (own !== null) return own;
  const allowed = inside.get(element.name) ?? [];
  for (const one of element.inside) {
    if (!allowed.includes(one.name)) return say`element \`${one.name}\` in \`${element.name}\``;
    // What `info` and `locale` hold is looked at by nobody or put beside the terms of a language.
    const deeper = one.name === "info" || one.name === "locale" ? null : misplaced(one);
    if (deeper !== null) return deeper;
  }
  return null;
}

function oddness({ name, attributes, inside: elements }: Element): Said | null {
  if (name === "choose" && elements[0]?.name !== "if") return without("choose", "if");
  if (name === "date" && elements.length === 0 && !attributes.has("form"))
    return say`${coded("date")} without ${coded("form")} or parts`;
  if (name === "text" && !printing.some((one) => attributes.has(one)))
    return say`${coded("text")} that prints nothing`;
  const need = needed.get(name);
  if (need !== undefined && (attributes.get(need) ?? "") === "") return without(name, need);
  const odd = [...attributes].find(
    ([one, value]) => choices.get(`${name} ${one}`)?.includes(value) === false,
  );
  return odd === undefined ? null : say`${coded(odd[0])} that says ${coded(odd[1].slice(0, 40))}`;
}

const without = (name: string, need: string): Said => say`${coded(name)} without ${coded(need)}`;
