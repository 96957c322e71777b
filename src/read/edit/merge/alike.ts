import { mannerOf } from "../../../base/text/merging/manner.ts";

/** Three versions of a file with their line ends, byte-order mark and last line's end as the merged file is to have them. */
export interface Alike {
  readonly base: string;
  readonly mine: string;
  readonly theirs: string;
}

/** Gives three versions the manner in which they are merged: where one side changed it, as that side has it. */
export function alike(base: string, mine: string, theirs: string): Alike {
  const { lines, end, mark, finish } = mannerOf(base, mine, theirs);
  const as = (text: string): string =>
    text === "" ? "" : `${mark}${finish(lines(text).join("").replaceAll("\n", end))}`;
  return { base: as(base), mine: as(mine), theirs: as(theirs) };
}
