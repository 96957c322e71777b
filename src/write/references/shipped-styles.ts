import type { ShippedStyle } from "../../read/bibliography/style/shipped.ts";

const files: Readonly<Record<ShippedStyle, () => Promise<{ readonly default: string }>>> = {
  "american-journal-of-archaeology": () => import("./styles/american-journal-of-archaeology.csl?raw"),
  "american-school-of-classical-studies-at-athens": () =>
    import("./styles/american-school-of-classical-studies-at-athens.csl?raw"),
  antiquity: () => import("./styles/antiquity.csl?raw"),
  apa: () => import("./styles/apa.csl?raw"),
  "chicago-author-date": () => import("./styles/chicago-author-date.csl?raw"),
  "chicago-fullnote-bibliography": () => import("./styles/chicago-fullnote-bibliography.csl?raw"),
  "harvard-cite-them-right": () => import("./styles/harvard-cite-them-right.csl?raw"),
  "modern-humanities-research-association": () =>
    import("./styles/modern-humanities-research-association.csl?raw"),
  "modern-language-association": () => import("./styles/modern-language-association.csl?raw"),
  "society-for-american-archaeology": () => import("./styles/society-for-american-archaeology.csl?raw"),
};

/** The text of a style that comes with the program. */
export async function shippedStyle(name: ShippedStyle): Promise<string> {
  return (await files[name]()).default;
}
