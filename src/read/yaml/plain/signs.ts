/** What a code unit may be in a plain text: a place in `signs`, which has a bit for each. */
const [begins, names, inside, bracket] = [1, 2, 4, 8];

const letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
const first = `${letters}(./+<=~^_$;\\`;
const ofNames = `${letters}-_/. @>()+`;
const brackets = ",[]{}";

const signs = new Uint8Array(128).map((_, code) => {
  const sign = String.fromCharCode(code);
  if (brackets.includes(sign)) return bracket;
  const printed = code >= 32 && code !== 127 ? inside : 0;
  return printed + (first.includes(sign) ? begins : 0) + (ofNames.includes(sign) ? names : 0);
});

/** Whether a text without quotes may begin with a code unit, as one that means nothing else to YAML. */
export function canBegin(code: number): boolean {
  return code >= 128 ? isWord(code) : ((signs[code] ?? 0) & begins) !== 0;
}

/** Whether a key without quotes may have a code unit in it. */
export function canName(code: number): boolean {
  return code >= 128 ? isWord(code) : ((signs[code] ?? 0) & names) !== 0;
}

/** Whether a code unit is printed; the brackets and the comma are. */
export function isPrinted(code: number): boolean {
  return code >= 128 || ((signs[code] ?? 0) & (inside | bracket)) !== 0;
}

/** Whether a code unit parts what stands in brackets. */
export function isBracket(code: number): boolean {
  return code < 128 && ((signs[code] ?? 0) & bracket) !== 0;
}

/** Neither a control character, a space nor a mark of byte order. */
function isWord(code: number): boolean {
  return code > 160 && code !== 0xfeff;
}
