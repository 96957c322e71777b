/** A text that begins a line: its first letter a capital, where the script has any. */
export function upperFirst(text: string): string {
  return text.replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
}
