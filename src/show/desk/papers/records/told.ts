import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { soughtBy } from "../sought.ts";

/** Where a selector finds its place, in words; null where it is of a kind that is not read. */
export function placeTold(selector: unknown): Text | null {
  const sought = soughtBy(selector);
  if (sought === null) return null;
  const { file, page, region, until } = sought;
  if (page === null) return region === null ? byWords(file) : partOfImage(file);
  const n = String(page + 1);
  if (region !== null)
    return file === null ? say`a part of page ${n} of the file` : say`a part of page ${n} of ${file}`;
  if (until !== null && until.page !== null && until.page > page) {
    const last = String(until.page + (until.words === null ? 0 : 1));
    if (until.page > page + (until.words === null ? 1 : 0))
      return file === null ? say`pages ${n} to ${last} of the file` : say`pages ${n} to ${last} of ${file}`;
  }
  return file === null ? say`page ${n} of the file` : say`page ${n} of ${file}`;
}

function byWords(file: string | null): Text {
  return file === null ? say`found by its words` : say`found by its words in ${file}`;
}

function partOfImage(file: string | null): Text {
  return file === null ? say`a part of the picture` : say`a part of ${file}`;
}
