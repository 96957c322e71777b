/** Smaller files are read and hashed as quickly as they are compared. */
const least = 64 * 1024;

/** So many are remembered, of so many bytes in all. */
const [most, room] = [4, 32 * 1024 * 1024] as const;

/** The large files that were seen last, the latest first. Nobody changes bytes that were read. */
let last: readonly Uint8Array[] = [];

const texts = new WeakMap<Uint8Array, string>();

/** The same bytes as they were seen before, else these: what was found out about them is then found again. */
export function asSeen(bytes: Uint8Array): Uint8Array {
  if (bytes.length < least) return bytes;
  return last.find((one) => one.length === bytes.length && Buffer.compare(one, bytes) === 0) ?? bytes;
}

/** Remembers bytes that will be seen again, as the text they are where that is known; gives them as they were seen before. */
export function seen(given: Uint8Array, text?: string): Uint8Array {
  const bytes = asSeen(given);
  if (text !== undefined) texts.set(bytes, text);
  if (bytes.length < least || bytes === last[0]) return bytes;
  let size = 0;
  last = [bytes, ...last.filter((one) => one !== bytes)]
    .slice(0, most)
    .filter((one) => (size += one.length) <= room);
  return bytes;
}

/** The text that bytes are, where they were seen as one. */
export function textSeen(bytes: Uint8Array): string | undefined {
  return texts.get(asSeen(bytes));
}

/** Bytes that were seen as this text; null where none of the last were. */
export function bytesSeenAs(text: string): Uint8Array | null {
  return last.find((one) => texts.get(one) === text) ?? null;
}
