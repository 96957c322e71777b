import type { Letters } from "./pen.ts";

/** The families of each face, as the app's sheet names them: the book serif or the plain sans first, then what fills in for other scripts. */
export const families: Readonly<Record<Letters["face"], readonly string[]>> = {
  serif: ["Source Serif 4", "Noto Serif", "Noto Naskh Arabic", "serif"],
  sans: ["Source Sans 3", "Noto Naskh Arabic", "sans-serif"],
};

/** The families of a face as a CSS list, each name that has a space in the quotation marks given. */
export function familyList(face: Letters["face"], mark: "'" | '"'): string {
  return families[face].map((name) => (name.includes(" ") ? `${mark}${name}${mark}` : name)).join(", ");
}
