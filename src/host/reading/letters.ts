/** Texts as bytes: one after another, those of letters that take one byte in Latin-1 and the others in UTF-16 apart. */
export interface Letters {
  /** For each text twice its length in UTF-16 units, and one more where it is among the others. */
  readonly sizes: Uint32Array;
  readonly narrow: Uint8Array;
  readonly wide: Uint8Array;
}

/** Puts texts together. */
export function lettersOf(texts: readonly string[]): Letters {
  const isWide = (text: string): boolean => /[^\u0000-\u00ff]/u.test(text);
  return {
    sizes: Uint32Array.from(texts, (text) => 2 * text.length + (isWide(text) ? 1 : 0)),
    narrow: Buffer.from(texts.filter((text) => !isWide(text)).join(""), "latin1"),
    wide: Buffer.from(texts.filter(isWide).join(""), "utf16le"),
  };
}

/** Takes them apart. They are cut from two texts, which is several times as quick as making each of its bytes. */
export function textsIn({ sizes, narrow, wide }: Letters): readonly string[] {
  const [ofNarrow, ofWide] = [textOf(narrow, "latin1"), textOf(wide, "utf16le")];
  const texts: string[] = [];
  texts.length = sizes.length;
  let [inNarrow, inWide] = [0, 0];
  for (let at = 0; at < sizes.length; at++) {
    const size = sizes[at] ?? 0;
    const length = size >>> 1;
    if (size & 1) texts[at] = ofWide.slice(inWide, (inWide += length));
    else texts[at] = ofNarrow.slice(inNarrow, (inNarrow += length));
  }
  return texts;
}

function textOf({ buffer, byteOffset, byteLength }: Uint8Array, letters: "latin1" | "utf16le"): string {
  return Buffer.from(buffer as ArrayBuffer, byteOffset, byteLength).toString(letters);
}
