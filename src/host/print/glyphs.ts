/** As much of an embedded font of the PDF library as shaping needs; the library does not declare it. */
interface Embedded {
  readonly layout: (text: string) => {
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly Position[];
  };
  readonly subset: { readonly includeGlyph: (id: number) => number; readonly glyphs: number[] };
  readonly scale: number;
  readonly widths: (number | undefined)[];
  readonly unicode: (readonly number[] | undefined)[];
  encode: (text: string) => readonly [readonly string[], readonly Position[]];
}

interface Glyph {
  readonly id: number;
  readonly advanceWidth: number;
  /** Of the letters it was first met for, which need not be those it now stands for. */
  readonly codePoints: readonly number[];
}

interface Position {
  readonly xAdvance: number;
  readonly yAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
  readonly advanceWidth: number;
}

/** The width that a mark is told to have, in thousandths of an em: what has none would not be drawn. */
const markWidth = 50;

const rightToLeft = /\p{Script=Arabic}/u;

/** The letters that each shape stands for: those of its own, and none of a mark that was parted from its letter. */
function lettersOf(text: string, glyphs: readonly Glyph[]): readonly (readonly number[])[] {
  if (!rightToLeft.test(text)) return glyphs.map(({ id, codePoints }) => (id === 0 ? [0xfffd] : codePoints));
  const letters = text.match(/\P{M}\p{M}*/gu) ?? [];
  let at = 0;
  const told = glyphs.toReversed().map(({ advanceWidth, codePoints }) => {
    if (advanceWidth === 0) return [];
    const taken = letters.slice(at, at + Math.max(1, codePoints.length));
    at += taken.length;
    return [...taken.join("")].map((one) => one.codePointAt(0) ?? 0);
  });
  return at === letters.length ? told.reverse() : glyphs.map(({ codePoints }) => codePoints);
}

/**
 * Has every glyph of the font that a document now writes in drawn and told: marks, though they have no width and their height
 * runs upwards, and a shape that several letters share once for each, so that text taken from the page is what was written.
 */
export function tellGlyphs(document: unknown): void {
  const font = (document as { readonly _font?: Embedded })._font;
  if (font === undefined) throw new Error("tellGlyphs: the document has no font");
  const known = new Map<string, number>();
  const placeOf = (id: number, points: readonly number[], width: number): number => {
    const name = `${id} ${points.join(" ")}`;
    const place = known.get(name);
    if (place !== undefined) return place;
    font.subset.glyphs.push(id);
    const added = font.subset.glyphs.length - 1;
    font.widths[added] = width * font.scale;
    font.unicode[added] = points;
    known.set(name, added);
    return added;
  };
  font.encode = (text) => {
    const { glyphs, positions } = font.layout(text);
    const letters = lettersOf(text, glyphs);
    const codes = glyphs.map(({ id, advanceWidth }, at) =>
      placeOf(id, letters[at] ?? [], advanceWidth)
        .toString(16)
        .padStart(4, "0"),
    );
    const told = positions.map((one) => ({
      ...one,
      yOffset: -one.yOffset,
      advanceWidth: one.advanceWidth === 0 ? markWidth : one.advanceWidth,
    }));
    return [codes, told];
  };
}
