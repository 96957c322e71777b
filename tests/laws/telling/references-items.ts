import * as fc from "fast-check";
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { CslItem } from "../../../src/read/bibliography/csl.ts";
import { localesOf } from "../../../src/write/references/locales/locales.ts";
import { referencesIn } from "../../../src/write/references/references.ts";
import type { References } from "../../../src/write/references/references.ts";

const folder = fileURLToPath(new URL("../../../src/write/references/", import.meta.url));

/** The names of the styles in the folder of styles. */
export const styleNames = readdirSync(`${folder}styles`).flatMap((file) =>
  file.endsWith(".csl") ? [file.slice(0, -".csl".length)] : [],
);

/** The text of a style in that folder. */
export const styleText = (name: string): string => readFileSync(`${folder}styles/${name}.csl`, "utf8");

/** The terms of all languages that are shipped. */
export const locales = localesOf(
  readdirSync(`${folder}locales`)
    .filter((file) => file.endsWith(".xml"))
    .map((file) => [
      file.slice("locales-".length, -".xml".length),
      readFileSync(`${folder}locales/${file}`, "utf8"),
    ]),
);

/** The references of items in a shipped style. */
export function references(name: string, items: readonly CslItem[], language = "en"): References {
  return referencesIn({ style: styleText(name), locales, language }, items);
}

const person = fc.record({
  family: fc.constantFrom("Hale", "Pell", "van der Velde", "Иванова", "王"),
  given: fc.constantFrom("Josiah", "Jane", "J.", "Edith"),
});

/** Items that are easily taken for one another: few families, few years, few titles. */
export const similarItem = (id: string): fc.Arbitrary<CslItem> =>
  fc
    .record({
      type: fc.constantFrom("book", "article-journal", "report"),
      title: fc.constantFrom("On the rings", "A second note", "Of posts", "Zeilen"),
      author: fc.array(person, { minLength: 0, maxLength: 4 }),
      issued: fc.constantFrom(
        { "date-parts": [[1998]] },
        { "date-parts": [[1999]] },
        { "date-parts": [[-300]] },
        { literal: "forthcoming" },
      ),
    })
    .map((fields) => ({ id, "container-title": "Measure and Ground", ...fields }));

/** Some of these, under the ids given. */
export const similarItems = (ids: readonly string[]): fc.Arbitrary<readonly CslItem[]> =>
  fc
    .tuple(...ids.map((id) => fc.option(similarItem(id), { nil: null })))
    .map((items) => items.filter((one) => one !== null));
