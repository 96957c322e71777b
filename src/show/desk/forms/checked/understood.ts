import { parseEdtf } from "../../../../base/date/edtf.ts";
import { yearWords } from "../../../../base/date/year-words.ts";
import { parseYear } from "../../../../base/date/year.ts";
import type { Quantity } from "../../../../base/quantity.ts";
import { parseQuantity } from "../../../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../../../base/quantity/quantity-text.ts";
import { kindWords } from "../../../../base/unit/kind-words.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import type { Field, Fields } from "../../../../read/grammar/field.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { dateWords } from "../../../pages/date-words.ts";
import { siWords } from "../../../artefacts/si-words.ts";

/** What a typed value is taken to mean, in words. */
export interface Meaning {
  readonly path: readonly Step[];
  readonly text: Text;
}

/** What is understood of the values of a map whose text does not say it of itself: quantities, dates and years. */
export function meaningsIn(
  fields: Fields,
  values: { readonly [field: string]: Written },
  context: QuantityContext,
  path: readonly Step[] = [],
): readonly Meaning[] {
  const { coverage } = values;
  const within: QuantityContext =
    coverage === "1" || coverage === "2" ? { ...context, coverage: coverage === "1" ? 1 : 2 } : context;
  return Object.entries(values).flatMap(([name, value]) => {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    return field ? meaningsOf(field, value, within, [...path, name]) : [];
  });
}

function meaningsOf(
  field: Field,
  value: Written,
  context: QuantityContext,
  path: readonly Step[],
): readonly Meaning[] {
  if (typeof value !== "string") {
    if (isList(value))
      return value.flatMap((one, place) => meaningsOf(field, one, context, [...path, place]));
    return field.type === "group" || field.type === "items"
      ? meaningsIn(field.fields, value, context, path)
      : [];
  }
  const text = textFor(field, value, context);
  return text === null ? [] : [{ path, text }];
}

function textFor(field: Field, value: string, context: QuantityContext): Text | null {
  switch (field.type) {
    case "quantity":
    case "quantities": {
      const read = parseQuantity(value, context);
      return "ok" in read ? quantityWords(read.ok) : null;
    }
    case "date": {
      const read = parseEdtf(value);
      return "ok" in read ? dateWords(value) : null;
    }
    case "year": {
      const read = parseYear(value);
      return "ok" in read ? yearWords(read.ok) : null;
    }
    case "items": {
      const inner = field.short === undefined ? undefined : field.fields[field.short];
      return inner ? textFor(inner, value, context) : null;
    }
    default:
      return null;
  }
}

/** A quantity as it is understood: its value with its standard uncertainty, its kind, and how it was read. */
export function quantityWords(quantity: Quantity): Text {
  const { kind, unit, unitSize } = quantity;
  const own = siWords(quantity, { sign: unit === "1" ? "" : unit, size: unitSize });
  const what = kind === "number" ? say`a pure number` : kind === "count" ? say`a count` : kindWords[kind];
  return say`${own}; ${what}; ${mannerOf(quantity)}`;
}

function mannerOf({ form, text, digit, u, kind }: Quantity): Said {
  switch (form) {
    case "at-least":
      return say`a lower bound, never taken as a value`;
    case "at-most":
      return say`an upper bound, never taken as a value`;
    case "range":
      return say`a range, anywhere in it equally likely`;
    case "approximate":
      return say`about, so widened`;
    case "value":
      if (/±|\+\/?-/u.test(text)) return say`± is one standard uncertainty here`;
      return kind === "count" || (digit === 0 && u === 0)
        ? say`exact`
        : say`read to the last digit, half a unit of it either way`;
  }
}
