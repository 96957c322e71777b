import type { CslItem } from "../../csl.ts";

/** The DOI of an item as it is compared: without its web address, in small letters; null where there is none. */
export function doiOf(csl: CslItem): string | null {
  const url = /(?:dx\.)?doi\.org\//i.test(csl.URL ?? "") ? csl.URL : undefined;
  for (const said of [csl.DOI, url]) {
    if (typeof said !== "string") continue;
    const found = /10\.\d{4,9}\/[^\s"<>{}]+/.exec(unescaped(said))?.[0];
    if (found !== undefined) return found.replace(/[.,;]+$/, "").toLowerCase();
  }
  return null;
}

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** The ISBNs of an item with thirteen digits each; those whose check digit is wrong say nothing. */
export function isbnsOf(csl: CslItem): readonly string[] {
  const said = csl["ISBN"];
  if (typeof said !== "string") return [];
  const found = said.match(/(?<![\dXx])\d(?:[-‐–\s]?\d){8,11}[-‐–\s]?[\dXx](?![\dXx])/g) ?? [];
  return found.flatMap((one) => isbn13(one.replace(/[^\dXx]/g, "").toUpperCase()) ?? []);
}

/** An ISBN as one of thirteen digits (ISO 2108); null where its check digit is wrong. */
export function isbn13(digits: string): string | null {
  if (/^\d{9}[\dX]$/.test(digits)) {
    const sum = [...digits].reduce(
      (all, digit, place) => all + (digit === "X" ? 10 : Number(digit)) * (10 - place),
      0,
    );
    if (sum % 11 !== 0) return null;
    const body = `978${digits.slice(0, 9)}`;
    return `${body}${(10 - (weighed(body) % 10)) % 10}`;
  }
  return /^\d{13}$/.test(digits) && weighed(digits) % 10 === 0 ? digits : null;
}

function weighed(digits: string): number {
  return [...digits].reduce((all, digit, place) => all + Number(digit) * (place % 2 === 0 ? 1 : 3), 0);
}
