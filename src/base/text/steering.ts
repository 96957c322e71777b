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
