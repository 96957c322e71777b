import { say } from "../../../../base/text/said/said.ts";
import { jsonAt } from "../../json.ts";
import { indentAt, lineEndIn } from "./field.ts";
import type { CannotWrite, Field, Fresh, Hand } from "./field.ts";

/** The hand of CSL-JSON: a text is shown as it reads, anything else as it is written. */
export const jsonHand: Hand = { fields, set, add };

interface Written extends Field {
  readonly keyStart: number;
  readonly valueEnd: number;
}

function fields(text: string, start: number, end: number): readonly Written[] {
  const item = jsonAt(text, start);
  if ("message" in item || item.end > end) return [];
  const places = [...item.keys].map(([name, value]) => {
    const head =
      /"(?:[^"\\]|\\.)*"\s*:\s*$/.exec(
        text.slice(Math.max(item.start, value.start - 1200), value.start),
      )?.[0] ?? "";
    return { name, value, keyStart: value.start - head.length };
  });
  return places.map(({ name, value, keyStart }, place) => {
    const isText = typeof value.value === "string";
    const before = places[place - 1];
    const next = places[place + 1];
    const whole = before
      ? { start: before.value.end, end: value.end }
      : { start: keyStart, end: next?.keyStart ?? value.end };
    return {
      name,
      text: isText ? `${value.value}` : text.slice(value.start, value.end),
      start: value.start,
      end: value.end,
      whole,
      is: isText ? "quotes" : "bare",
      keyStart,
      valueEnd: value.end,
    };
  });
}

function set(field: Field, text: string): string | CannotWrite {
  return written(field.name, text, field.is === "bare");
}

/** A text in quotes; what is no text must be JSON. */
function written(name: string, text: string, bare: boolean): string | CannotWrite {
  if (!bare) return JSON.stringify(text);
  const read = jsonAt(text, 0);
  if ("message" in read || text.slice(read.end).trim() !== "")
    return { problem: say`Unreadable value of \`${name}\`, expected JSON as in the file` };
  return text.trim();
}

function add(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  fresh: readonly Fresh[],
): ReturnType<Hand["add"]> {
  const there = fields(text, start, end);
  const values = fresh.map((one) => ({
    name: one.name,
    value: written(one.name, one.text, one.bare === true),
  }));
  const pairs: string[] = [];
  const last = there.at(-1);
  const indent = last ? indentAt(text, last.keyStart) : null;
  const colon = last ? (/:\s*$/.exec(text.slice(last.keyStart, last.start))?.[0] ?? ": ") : ": ";
  for (const { name, value } of values) {
    if (typeof value !== "string") return value;
    pairs.push(`${JSON.stringify(name)}${colon}${value}`);
  }
  if (!last) return { start: start + 1, end: end - 1, text: ` ${pairs.join(", ")} ` };
  const tight = indent === null && !/,\s/.test(text.slice(start, end));
  const lead = indent === null ? (tight ? "," : ", ") : `,${lineEndIn(text)}${indent}`;
  return { start: last.valueEnd, end: last.valueEnd, text: pairs.map((one) => `${lead}${one}`).join("") };
}
