import { inEnglish } from "../../../base/text/said/english.ts";
import type { SetInline, SetInlines } from "./set-text.ts";

/** The calls of notes where a reader looks for them: with no space before, and after the point or comma that follows (common practice). */
export function calledAfter(of: SetInlines): SetInlines {
  const all: SetInline[] = [];
  for (let place = 0; place < of.length; place++) {
    const one = of[place];
    if (one?.is !== "note") {
      if (one) all.push(one);
      continue;
    }
    const last = all.at(-1);
    if (last?.is === "text") {
      const text = inEnglish(last.text);
      const kept = text.trimEnd();
      all.pop();
      if (kept !== "") all.push(kept === text ? last : { is: "text", text: kept });
    }
    const next = of[place + 1];
    const rest = next?.is === "text" ? inEnglish(next.text) : "";
    const mark = /^[.,;:]/.exec(rest)?.[0];
    if (mark === undefined) {
      all.push(one);
      continue;
    }
    all.push({ is: "text", text: mark }, one);
    if (rest.length > 1) all.push({ is: "text", text: rest.slice(1) });
    place += 1;
  }
  return all;
}
