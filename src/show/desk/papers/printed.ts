/** What pages are called before their number, in the languages that bibliographies of the trade are mostly in. */
const pageOf = /^\s*(?:(?:pp?|ss?|str|sid|с|σσ?)\.|ص\.?)?\s*(\d{1,6})(?![\d\p{L}])/iu;

/** The number printed on the page where a place begins, as it is written down: `p. 12, fig. 3`; null where none is told. */
export function printedPage(at: string): number | null {
  const number = pageOf.exec(at.replace(/[٠-٩۰-۹]/gu, (digit) => String(digit.charCodeAt(0) & 15)))?.[1];
  return number === undefined ? null : Number(number);
}
