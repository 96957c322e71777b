/** A text in plain signs, and where each of its UTF-16 units, or its end, stands in the text it was made from. */
export interface PlainText {
  readonly text: string;
  readonly at: (offset: number) => number;
}

const signs: Readonly<Record<string, string>> = {
  "\u2212": "-",
  "\u2010": "-",
  "\u2011": "-",
  "\uFE63": "-",
  "\uFF0D": "-",
  "\u2012": "–",
  "\u2014": "–",
  "\u2015": "–",
  "\u066B": ".",
  "\uFF0E": ".",
  "\u066C": ",",
  "\u060C": ",",
  "\uFF0C": ",",
  "\u066A": "%",
  "\uFF05": "%",
  "\u2044": "/",
  "\u2215": "/",
  "\u03BC": "µ",
  "\u00BA": "°",
  "\u02DA": "°",
  "\u2019": "'",
  "\u2018": "'",
  "\u201D": '"',
  "\u2A7E": "≥",
  "\u2267": "≥",
  "\u2A7D": "≤",
  "\u2266": "≤",
  "\u223C": "~",
  "\uFF5E": "~",
};

/**
 * Reads the digits of all scripts as 0 to 9, and the many dashes, spaces, separators and primes as one sign each;
 * signs that only steer the direction or the breaking of lines are passed over.
 */
export function plainText(original: string): PlainText {
  const text = original.replace(/[^ -~]/gu, plainSign);
  if (text === original) return { text, at: (offset) => Math.min(offset, original.length) };
  let table: readonly number[] | null = null;
  return { text, at: (offset) => (table ??= offsetsIn(original))[offset] ?? original.length };
}

/** For each UTF-16 unit of the plain text the offset of the sign that it was made from. */
function offsetsIn(original: string): readonly number[] {
  const offsets: number[] = [];
  let offset = 0;
  for (const sign of original) {
    const units = plainSign(sign).length;
    for (let unit = 0; unit < units; unit++) offsets.push(offset);
    offset += sign.length;
  }
  return offsets;
}

function plainSign(sign: string): string {
  if (sign < "\u0080") return sign === "\t" || sign === "\n" || sign === "\r" ? " " : sign;
  const mapped = signs[sign];
  if (mapped !== undefined) return mapped;
  if (/^\s$/u.test(sign)) return " ";
  if (/^\p{Nd}$/u.test(sign)) return String(digitValue(sign));
  return /^[\p{Cf}\u00AD]$/u.test(sign) ? "" : sign;
}

/** Unicode keeps the decimal digits of a script in unbroken runs of ten, so the place in the run is the value. */
function digitValue(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  let first = code;
  while (/^\p{Nd}$/u.test(String.fromCodePoint(first - 1))) first -= 1;
  return (code - first) % 10;
}
