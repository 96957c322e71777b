/** A place as it is cited: `p. 214`, `pp. 12–13`; empty where the printed page is not known. */
export function locatorOf(printed: string | null, last: string | null): string {
  if (printed === null || printed === "") return "";
  return last === null || last === "" || last === printed ? `p. ${printed}` : `pp. ${printed}–${last}`;
}

/** What is printed on a page some pages further on; null where it cannot be told. */
export function pagesOn(printed: string, pages: number): string | null {
  if (pages === 0) return printed;
  return /^\d{1,6}$/u.test(printed) ? String(Number(printed) + pages) : null;
}
