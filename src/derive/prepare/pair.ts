import type { Json } from "../../base/json.ts";
import type { LeftOut, Plugin } from "../../plugin.ts";
import { leftOutFor } from "../recorded/left-out.ts";
import { isCensored, listed, texts } from "./select.ts";
import type { Selected, Sight } from "./select.ts";

interface Paired {
  readonly chosen: ReadonlyMap<string, readonly Selected[]>;
  readonly leftOut: readonly LeftOut[];
}

/** Brings inputs that are declared as paired into the same order, leaving out what has no counterpart. */
export function pairsIn(
  plugin: Plugin,
  pairs: Json | undefined,
  chosen: ReadonlyMap<string, readonly Selected[]>,
  sight: Sight,
): Paired {
  const first = plugin.inputs.find((input) => input.pairedWith !== undefined);
  if (!first?.pairedWith) return { chosen, leftOut: [] };
  const second = first.pairedWith;
  const bounds = plugin.inputs.every(
    (input) => (input.name !== first.name && input.name !== second) || input.takesBounds === true,
  );
  if (pairs !== undefined) return byHand({ first: first.name, second, bounds }, pairs, chosen, sight);
  const left = chosen.get(first.name) ?? [];
  const right = chosen.get(second) ?? [];
  // Wholes named in a row all have the place of a whole: the first belongs to the first, and nothing enters twice.
  const counterparts = new Map<string, Selected[]>();
  for (const one of right) {
    const alike = counterparts.get(keyOf(one));
    if (alike) alike.push(one);
    else counterparts.set(keyOf(one), [one]);
  }
  const matched = left.flatMap((one) => {
    const other = counterparts.get(keyOf(one))?.shift();
    return other ? [[one, other] as const] : [];
  });
  const used = new Set(matched.flat());
  const leftOut = [...left, ...right]
    .filter((one) => !used.has(one))
    .flatMap((one) => one.ids.map((id) => ({ id, why: leftOutFor.noCounterpart })));
  const paired = new Map(chosen);
  paired.set(
    first.name,
    matched.map(([one]) => one),
  );
  paired.set(
    second,
    matched.map(([, other]) => other),
  );
  return { chosen: paired, leftOut };
}

function keyOf(one: Selected): string {
  return `${one.measured.dimension}\n${one.place}`;
}

/** Pairs given as `[[a, b], …]`: first for the first declared input; with bounds only where both inputs take them. */
function byHand(
  { first, second, bounds }: { readonly first: string; readonly second: string; readonly bounds: boolean },
  pairs: Json,
  chosen: ReadonlyMap<string, readonly Selected[]>,
  sight: Sight,
): Paired {
  const rows = Array.isArray(pairs) ? (pairs as readonly Json[]).map(texts) : [];
  const leftOut: LeftOut[] = [];
  const left: Selected[] = [];
  const right: Selected[] = [];
  for (const row of rows) {
    const both = listed(row, sight);
    leftOut.push(...both.leftOut);
    const [one, other] = both.selected;
    if (!bounds && [one, other].some((single) => single && isCensored(single))) {
      leftOut.push(
        ...both.selected.flatMap((single) => single.ids.map((id) => ({ id, why: leftOutFor.bound }))),
      );
    } else if (one && other) {
      left.push(one);
      right.push(other);
    } else
      leftOut.push(
        ...both.selected.flatMap((single) => single.ids.map((id) => ({ id, why: leftOutFor.noCounterpart }))),
      );
  }
  const paired = new Map(chosen);
  paired.set(first, left);
  paired.set(second, right);
  return { chosen: paired, leftOut };
}
