import type { Id } from "../../../../base/finding.ts";
import { newId } from "../../../../link/edit/new-id.ts";
import type { Graph } from "../../../../link/graph.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { tokensOf } from "../../../search/fold.ts";

/** The id that is proposed for a new record: words of what it says, or of what it ties together, unlike every id there is. */
export function proposedId(graph: Graph, list: ListName, values: WrittenMap): Id {
  const tie = tiedBy(list, values);
  const named = tie === "" || values["short"] !== undefined ? values : { ...values, short: tie };
  return newId(graph, list, named);
}

/** What a record without words of its own ties together, in words; empty where it ties nothing yet. */
function tiedBy(list: ListName, values: WrittenMap): string {
  const said = (name: string): string => firstText(values, name);
  switch (list) {
    case "images":
      return said("of") === "" ? "" : `${said("of")} ${said("kind") || "picture"}`;
    case "relations":
      if (said("same-time") !== "") return `${said("same-time")} in time`;
      return said("later") === "" ? "" : `${said("earlier")} before ${said("later")}`;
    case "arguments":
      if (said("therefore") !== "") return `${said("therefore")} from ${said("scheme") || said("because")}`;
      return said("against") === "" ? "" : `against ${said("against")}`;
    default:
      return "";
  }
}

/** An examination with an id for each of its outcomes that says something and has none, and what was given where. */
export function withOutcomeIds(values: WrittenMap): {
  readonly values: WrittenMap;
  readonly given: readonly { readonly path: readonly Step[]; readonly text: string }[];
} {
  const { outcomes } = values;
  if (outcomes === undefined || typeof outcomes === "string" || !isList(outcomes))
    return { values, given: [] };
  const taken = new Set(outcomes.map((one) => (isMap(one) ? firstText(one, "id") : "")));
  const given: { readonly path: readonly Step[]; readonly text: string }[] = [];
  const all = outcomes.map((one, place) => {
    if (!isMap(one) || firstText(one, "id") !== "" || firstText(one, "text") === "") return one;
    const id = unlike(taken, idWords(firstText(one, "text")) || "outcome");
    taken.add(id);
    given.push({ path: ["outcomes", place, "id"], text: id });
    return { id, ...one };
  });
  return given.length === 0 ? { values, given } : { values: { ...values, outcomes: all }, given };
}

function unlike(taken: ReadonlySet<string>, base: string): string {
  for (let count = 1; ; count++) {
    const id = count === 1 ? base : `${base}-${count}`;
    if (!taken.has(id)) return id;
  }
}

const mostWords = 5;

/** The first words of a sentence as an id; empty where they are not in its letters. */
function idWords(text: string): string {
  const plain = tokensOf(text)
    .map((token) => token.folded)
    .filter((word) => /^[a-z0-9]+$/.test(word));
  return plain.slice(0, mostWords).join("-");
}

function isMap(written: Written): written is WrittenMap {
  return typeof written !== "string" && !isList(written);
}

function firstText(values: WrittenMap, name: string): string {
  const value = Object.hasOwn(values, name) ? values[name] : undefined;
  const one = value !== undefined && typeof value !== "string" && isList(value) ? value[0] : value;
  return typeof one === "string" ? one : "";
}
