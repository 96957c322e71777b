declare module "fontkit" {
  /** As much of an open font as widths and coverage need. */
  export interface Font {
    readonly unitsPerEm: number;
    readonly hasGlyphForCodePoint: (point: number) => boolean;
    readonly layout: (text: string) => {
      readonly advanceWidth: number;
      readonly glyphs: readonly { readonly id: number }[];
    };
    readonly getGlyph: (glyph: number) => { readonly path: { readonly toSVG: () => string } };
  }
  export function create(bytes: Uint8Array): Font;
}
