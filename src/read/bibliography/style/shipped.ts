/** The citation styles that come with the program, by the names the CSL project gives them. */
export const shippedStyles = [
  "american-journal-of-archaeology",
  "american-school-of-classical-studies-at-athens",
  "antiquity",
  "apa",
  "chicago-author-date",
  "chicago-fullnote-bibliography",
  "harvard-cite-them-right",
  "modern-humanities-research-association",
  "modern-language-association",
  "society-for-american-archaeology",
] as const;

/** A style that comes with the program. */
export type ShippedStyle = (typeof shippedStyles)[number];

/** The style of a corpus that names none, or one that cannot be used. */
export const defaultStyle: ShippedStyle = "chicago-author-date";

/** The shipped style of a name, null where none has it. */
export function shippedNamed(name: string): ShippedStyle | null {
  return shippedStyles.find((style) => style === name) ?? null;
}
