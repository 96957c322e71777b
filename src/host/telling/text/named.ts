import { nearest } from "../../../base/nearest.ts";
import { coded, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { eitherOf } from "../../../read/decode/named.ts";

/** What was expected in place of a name that nothing has: the names most like it, else the first so many there are, else `none`. */
export function expectedFor(
  written: string,
  names: readonly string[],
  { most = 5, none = say`one that the corpus names` }: { readonly most?: number; readonly none?: Text } = {},
): Text {
  const near = nearest(written, names);
  const hint = near.length > 0 ? near : names.slice(0, most);
  return hint.length > 0 ? eitherOf(hint.map(coded)) : none;
}
