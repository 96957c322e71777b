import { say } from "../../../../base/text/said/said.ts";
import { lineEndIn } from "./field.ts";
import type { CannotWrite, Field, Fresh, Hand } from "./field.ts";

/** The hand of RIS: one tag a line; a line without a tag goes on with the one above it. */
export const risHand: Hand = { fields, set, add };

const tagged = /^([A-Z][A-Z0-9]) {1,2}-(?: |$)/;

function fields(text: string, start: number, end: number): readonly Field[] {
  const found: Field[] = [];
  for (let at = start; at < end;) {
    const stop = text.indexOf("\n", at);
    const next = stop < 0 ? text.length : stop + 1;
    const line = text.slice(at, Math.min(next, end)).replace(/\r?\n$/, "");
    const head = tagged.exec(line);
    const name = head?.[1];
    const before = found.at(-1);
    if (name !== undefined && head) {
      const from = at + head[0].length;
      if (name !== "TY" && name !== "ER")
        found.push({
          name,
          text: line.slice(head[0].length),
          start: from,
          end: at + line.length,
          whole: { start: at, end: next },
          is: "bare",
        });
    } else if (before && line.trim() !== "" && before.whole.end === at) {
      const until = at + line.length;
      const whole = { start: before.whole.start, end: next };
      found[found.length - 1] = { ...before, text: text.slice(before.start, until), end: until, whole };
    }
    at = next;
  }
  return found;
}

function set(field: Field, text: string): string | CannotWrite {
  const bad = text.split(/\r?\n/).some((line) => tagged.test(line));
  if (bad) return { problem: say`Unexpected tag in \`${field.name}\`, expected a text` };
  return text;
}

function add(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  fresh: readonly Fresh[],
): ReturnType<Hand["add"]> {
  const wrong = fresh.find((one) => !/^[A-Z][A-Z0-9]$/.test(one.name));
  if (wrong)
    return { problem: say`Unexpected tag \`${wrong.name}\`, expected two capitals or a capital and a digit` };
  const nl = lineEndIn(text);
  const close = text.slice(start, end).search(/^ER {1,2}-/m);
  const lines = fresh.map((one) => `${one.name}  - ${one.text}`);
  if (close >= 0)
    return { start: start + close, end: start + close, text: lines.map((one) => `${one}${nl}`).join("") };
  return { start: end, end, text: lines.map((one) => `${nl}${one}`).join("") };
}
