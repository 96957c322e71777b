import { parseYear } from "../../../../base/date/year.ts";
import type { Id } from "../../../../base/finding.ts";
import { fieldsOf, isList, membersOf, textOf } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";

/** What a step of a talk asks to be shown. */
export type Wanted =
  | { readonly is: "records"; readonly ids: readonly Id[] }
  | { readonly is: "question"; readonly id: Id }
  | { readonly is: "around"; readonly id: Id; readonly steps: number }
  | { readonly is: "figure"; readonly id: Id }
  | { readonly is: "image"; readonly id: Id }
  | { readonly is: "drawing"; readonly ids: readonly Id[] }
  | { readonly is: "table"; readonly kind: string };

/** What a step asks for, in order, and the year as of which; null where that is now, or is no year. */
export interface Asked {
  readonly wanted: readonly Wanted[];
  readonly asOf: number | null;
}

/** How far a part of the map reaches where the step does not say. */
const usualSteps = 2;

/** Reads what the step of a talk shows: one id, a list of ids and things to draw, or one thing to draw. */
export function askedBy(show: Json | undefined): Asked {
  if (show === undefined || show === null) return { wanted: [], asOf: null };
  const members = isList(show) ? show : [show];
  const wanted: Wanted[] = [];
  for (const member of members) {
    const last = wanted.at(-1);
    const one = typeof member === "string" ? null : wantedIn(fieldsOf(member));
    if (one !== null) wanted.push(one);
    if (typeof member !== "string") continue;
    if (last?.is === "records") wanted[wanted.length - 1] = { is: "records", ids: [...last.ids, member] };
    else wanted.push({ is: "records", ids: [member] });
  }
  const years = members.flatMap((member) => yearIn(fieldsOf(member)["as-of"]) ?? []);
  return { wanted, asOf: years[0] ?? null };
}

function wantedIn(fields: { readonly [key: string]: Json }): Wanted | null {
  const one = (name: string): Id => idsIn(fields[name])[0] ?? "";
  if (one("question") !== "") return { is: "question", id: one("question") };
  if (one("around") !== "") {
    const steps = Number(textOf(fields["steps"]) || usualSteps);
    return {
      is: "around",
      id: one("around"),
      steps: Number.isInteger(steps) && steps > 0 ? steps : usualSteps,
    };
  }
  if (one("figure") !== "") return { is: "figure", id: one("figure") };
  if (one("image") !== "") return { is: "image", id: one("image") };
  if (one("table") !== "") return { is: "table", kind: one("table") };
  const drawn = idsIn(fields["drawing"]);
  return drawn.length > 0 ? { is: "drawing", ids: drawn } : null;
}

function idsIn(value: Json | undefined): readonly Id[] {
  if (typeof value === "string") return value === "" ? [] : [value];
  return membersOf(value).flatMap((one) => (typeof one === "string" ? [one] : []));
}

function yearIn(value: Json | undefined): number | null {
  if (typeof value === "number") return value;
  const read = typeof value === "string" ? parseYear(value) : null;
  return read !== null && "ok" in read ? read.ok : null;
}
