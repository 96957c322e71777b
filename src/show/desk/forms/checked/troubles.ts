import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../../base/quantity/quantity-text.ts";
import type { Finding } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { coded, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Field, Fields } from "../../../../read/grammar/field.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { shownFindings } from "../../../withhold.ts";
import type { Placed } from "./placed.ts";

/** What is wrong with a value of a form, in the words of the command line, and texts that would mend it. */
export interface Trouble {
  /** The field, or the value within it. */
  readonly path: readonly Step[];
  readonly message: Text;
  readonly fixes: readonly string[];
  /** It was not so when the form was opened: what is to be saved must not have it. */
  readonly fresh: boolean;
}

/** Findings about a record that stands in no file yet, at the fields that they speak of. */
export function troublesOf(
  graph: Graph,
  findings: readonly Finding[],
  record: Placed,
  fields: Fields,
  values: WrittenMap,
): readonly Trouble[] {
  return findings.flatMap((one) => {
    const { at } = one;
    if (at === null) return [];
    const path = record.pathAt(at.start, at.end);
    const message = shownFindings(graph, [one])[0]?.message ?? one.message;
    const fixes = fixesFor(one, fieldAt(fields, path), valueAt(values, path), graph.settings.quantities);
    const inside = path.length === 0 ? fields : fieldsWithin(fieldAt(fields, path));
    const named = inside ? namedIn(message, inside) : [];
    if (named.length === 0) return [{ path, message, fixes, fresh: true }];
    return named.map(({ name, message: said }) => ({
      path: [...path, name],
      message: said,
      fixes: [],
      fresh: true,
    }));
  });
}

/** A message about several fields of a map, missing or not to stand together, taken apart by field. */
function namedIn(
  message: Text,
  fields: Fields,
): readonly { readonly name: string; readonly message: Text }[] {
  const found =
    /^(?:Missing|Unexpected) (`[^`]+`(?:(?:, | or | and )`[^`]+`)*)(?: together)?, expected (.*)$/u.exec(
      inEnglish(message),
    );
  if (!found) return [];
  const [, list = "", expected = ""] = found;
  const names = [...list.matchAll(/`([^`]+)`/gu)].map(([, name = ""]) => name);
  if (!names.every((name) => Object.hasOwn(fields, name))) return [];
  const each = expected === "in every such record";
  return names.map((name) => ({
    name,
    message: each ? say`Missing ${coded(name)}, expected in every such record` : message,
  }));
}

function fieldsWithin(field: Field | null): Fields | null {
  return field?.type === "group" || field?.type === "items" ? field.fields : null;
}

/** What would mend a value: a certain fix, or the readings that a number may have, each to be chosen. */
function fixesFor(
  { fix }: Finding,
  field: Field | null,
  value: Written | null,
  context: QuantityContext,
): readonly string[] {
  if (fix && field) return fix.edits.map((edit) => edit.text);
  if (typeof value !== "string" || (field?.type !== "quantity" && field?.type !== "quantities")) return [];
  const read = parseQuantity(value, context);
  if ("ok" in read) return [];
  return [read.problem.replacement, read.problem.otherwise].filter((one) => one !== undefined);
}

/** The field that a path leads to, a list's own for its entries. */
export function fieldAt(fields: Fields, path: readonly Step[]): Field | null {
  let here: Field | null = null;
  let within: Fields | null = fields;
  for (const step of path) {
    if (typeof step === "number") continue;
    const next: Field | undefined = within && Object.hasOwn(within, step) ? within[step] : undefined;
    if (!next) return null;
    here = next;
    within = next.type === "group" || next.type === "items" || next.type === "named" ? next.fields : null;
  }
  return here;
}

function valueAt(values: Written, path: readonly Step[]): Written | null {
  let here: Written | null = values;
  for (const step of path) {
    if (here === null || typeof here === "string") return here;
    if (isList(here)) here = here[Number(step)] ?? null;
    else here = Object.hasOwn(here, step) ? (here[step] ?? null) : null;
  }
  return here;
}
