/** So many letters are given to one call; more might be more than it takes. */
const stretch = 4096;

/**
 * The same text, apart from any longer one that it was cut from: engines keep the whole of a text alive for each of its
 * pieces, and take two bytes for every letter of it where one letter needs them.
 */
export function apart(text: string): string {
  if (text.length <= stretch) return copied(text, 0);
  const parts: string[] = [];
  for (let from = 0; from < text.length; from += stretch) parts.push(copied(text, from));
  return parts.join("");
}

const codes: number[] = [];

function copied(text: string, from: number): string {
  codes.length = Math.min(stretch, text.length - from);
  for (let at = 0; at < codes.length; at++) codes[at] = text.charCodeAt(from + at);
  return String.fromCharCode(...codes);
}
