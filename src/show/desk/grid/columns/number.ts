import { tokensOf } from "../../../search/fold.ts";

/**
 * A number of a register, or a name, as it is compared: without case, marks, spaces and points, figures told from letters,
 * so that `K-17`, `K 17` and `K17` are one and `1-12` and `11-2` are two.
 */
export function numberKey(text: string): string {
  return tokensOf(text)
    .flatMap(({ folded }) => folded.match(/\p{N}+|[^\p{N}]+/gu) ?? [])
    .join(" ");
}

/** A heading of a column as it is compared with others: in any order of its words, signs counting where there is nothing else. */
export function headKey(head: string): string {
  const plain = head.replace(/ß/gu, "sz").replace(/[º°]/gu, " ");
  const key = numberKey(plain);
  return key === "" ? head.trim() : key.split(" ").toSorted().join(" ");
}
