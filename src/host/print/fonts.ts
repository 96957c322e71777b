import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { create } from "fontkit";
import type { Font } from "fontkit";

/** The bundled families: for sentences, for words and figures, for scripts that those lack, and for Arabic. */
export const familyNames = ["Source Serif 4", "Source Sans 3", "Noto Serif", "Noto Naskh Arabic"] as const;
export type FamilyName = (typeof familyNames)[number];
/** Regular and semi-bold. */
export type Weight = 400 | 600;

const packages: Readonly<Record<FamilyName, readonly [folder: string, name: string]>> = {
  "Source Serif 4": ["source-serif-4", "SourceSerif4"],
  "Source Sans 3": ["source-sans-3", "SourceSans3"],
  "Noto Serif": ["noto-serif", "NotoSerif"],
  "Noto Naskh Arabic": ["noto-naskh-arabic", "NotoNaskhArabic"],
};
const cuts = { 400: "400Regular", 600: "600SemiBold" } as const;

/** A font as a file and as what it can do. */
export interface PrintFont {
  readonly family: FamilyName;
  readonly weight: Weight;
  /** The name it is registered by in a PDF. */
  readonly name: string;
  readonly file: string;
  /** What is in the file. */
  readonly bytes: () => Uint8Array;
  /** Whether it has a shape for every letter and mark of a text. */
  readonly has: (text: string) => boolean;
  /** The width of a text at a size, as it is shaped word by word. */
  readonly width: (text: string, size: number) => number;
  /** The glyphs that a text is shaped of. */
  readonly glyphs: (text: string) => readonly number[];
}

const resolve = createRequire(import.meta.url).resolve;
const opened = new Map<string, PrintFont>();

/** A bundled font; each is read once. */
export function printFont(family: FamilyName, weight: Weight): PrintFont {
  const name = `${family} ${weight}`;
  const known = opened.get(name);
  if (known !== undefined) return known;
  const [folder, stem] = packages[family];
  const cut = cuts[weight];
  const file = resolve(`@expo-google-fonts/${folder}/${cut}/${stem}_${cut}.ttf`);
  const font = opening(family, weight, name, file);
  opened.set(name, font);
  return font;
}

function opening(family: FamilyName, weight: Weight, name: string, file: string): PrintFont {
  let font: Font | null = null;
  const widths = new Map<string, number>();
  let read: Uint8Array | null = null;
  const bytes = (): Uint8Array => (read ??= readFileSync(file));
  const open = (): Font => (font ??= create(bytes()));
  const widthOf = (word: string): number => {
    const known = widths.get(word);
    if (known !== undefined) return known;
    const found = open().layout(word).advanceWidth / open().unitsPerEm;
    widths.set(word, found);
    return found;
  };
  return {
    family,
    weight,
    name,
    file,
    bytes,
    has: (text) => [...text].every((one) => open().hasGlyphForCodePoint(one.codePointAt(0) ?? 0)),
    glyphs: (text) =>
      open()
        .layout(text)
        .glyphs.map(({ id }) => id),
    width: (text, size) =>
      (text.match(/[^ ]* |[^ ]+$/g) ?? []).reduce((sum, one) => sum + widthOf(one), 0) * size,
  };
}

/** All bundled fonts, for what looks them up by name. */
export function allPrintFonts(): readonly PrintFont[] {
  return familyNames.flatMap((family) => [printFont(family, 400), printFont(family, 600)]);
}

/** The fonts that a text may be set in, the wanted family first, then those that fill in for its script. */
export function fontsAfter(wanted: readonly string[], weight: Weight): readonly PrintFont[] {
  const named = familyNames.filter((one) => wanted.includes(one));
  const first = named.toSorted((a, b) => wanted.indexOf(a) - wanted.indexOf(b));
  const likest: readonly FamilyName[] =
    first[0] === "Source Serif 4" ? ["Noto Serif", "Source Sans 3"] : ["Source Sans 3", "Noto Serif"];
  return [...new Set([...first, ...likest, ...familyNames])].map((one) => printFont(one, weight));
}
