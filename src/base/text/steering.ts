const steers = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu;

/** Whether a text has signs that would steer a terminal, or turn the order in which it is read. */
export function isSteering(text: string): boolean {
  return text.search(steers) >= 0;
}

/** Signs that are not seen, or end a line for a program and not for who reads it: code could be hidden by them. */
const unseen = /\r\n|[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;

/** A stranger's text with signs that steer or are not seen written out (`\u202e`), so that what is read is what is there; line ends and tabs stay. */
export function writtenOut(text: string): string {
  return text.replace(unseen, (sign) => {
    if (["\n", "\r\n", "\t"].includes(sign)) return sign;
    const code = (sign.codePointAt(0) ?? 0).toString(16);
    return code.length > 4 ? `\\u{${code}}` : `\\u${code.padStart(4, "0")}`;
  });
}

/** A stranger's words on one line that steers nothing. */
export function onOneLine(text: string): string {
  return text.replace(steers, " ").replace(/\s+/g, " ").trim();
}

/** A text as XML, and most programs, may hold it: what they may not (controls, halves of pairs) is a sign for it. */
export function storable(text: string): string {
  return text.replace(/\p{Cs}|[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/gu, "\uFFFD");
}

const marks: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Words as HTML or XML, in a text or between `"` in an attribute; what no document may hold is a sign for it. */
export function escaped(text: string): string {
  return storable(text).replace(/[&<>"]/g, (sign) => marks[sign] ?? sign);
}

const turning = /[\u202a-\u202e\u2066-\u2069]/;
const [embeds, isolates] = [/[\u202a\u202b\u202d\u202e]/g, /[\u2066-\u2068]/g];

/** A stranger's text that turns nothing of what stands behind it: the directions that it opens, it ends (UAX #9, 3.1.4). */
export function ended(text: string): string {
  if (text.search(turning) < 0) return text;
  const left = (open: RegExp, end: string): number =>
    Math.max(0, (text.match(open)?.length ?? 0) - text.split(end).length + 1);
  return text + "\u202c".repeat(left(embeds, "\u202c")) + "\u2069".repeat(left(isolates, "\u2069"));
}
