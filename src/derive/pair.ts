import type { Json } from "../base/json.ts";
import type { LeftOut, Plugin } from "../plugin.ts";
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
  if (pairs !== undefined) return byHand(first.name, second, pairs, chosen, sight);
  const left = chosen.get(first.name) ?? [];
  const right = chosen.get(second) ?? [];
  const counterpart = new Map(right.map((one) => [keyOf(one), one]));
  const matched = left.flatMap((one) => {
    const other = counterpart.get(keyOf(one));
    return other ? [[one, other] as const] : [];
  });
  const used = new Set(matched.flat());
  const leftOut = [...left, ...right]
    .filter((one) => !used.has(one))
    .flatMap((one) => one.ids.map((id) => ({ id, why: "no counterpart" })));
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

/** Pairs given as `[[a, b], …]`: first for the first declared input. */
function byHand(
  first: string,
  second: string,
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
    if ([one, other].some((single) => single && isCensored(single))) {
      leftOut.push(...both.selected.flatMap((single) => single.ids.map((id) => ({ id, why: "bound" }))));
    } else if (one && other) {
      left.push(one);
      right.push(other);
    } else
      leftOut.push(
        ...both.selected.flatMap((single) => single.ids.map((id) => ({ id, why: "no counterpart" }))),
      );
  }
  const paired = new Map(chosen);
  paired.set(first, left);
  paired.set(second, right);
  return { chosen: paired, leftOut };
}
