import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { styleTrouble } from "../../../src/read/bibliography/style/csl-style.ts";
import { localesOf } from "../../../src/write/references/locales/locales.ts";
import type { Locales } from "../../../src/write/references/locales/locales.ts";
import { StyleFails, referencesIn } from "../../../src/write/references/references.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import type { Faults } from "./corpus.ts";

const items = [
  {
    id: "hale-1896",
    type: "chapter",
    title: "Of posts",
    "container-title": "Rings",
    author: [{ family: "Hale", given: "Josiah" }],
    editor: [{ family: "Pell", given: "Jane" }],
    issued: { "date-parts": [[1896]] },
    page: "1-9",
  },
  {
    id: "ivanova",
    type: "book",
    title: "Столбы",
    author: [{ family: "Иванова", given: "О." }],
    issued: { literal: "n.d." },
  },
  { id: "bare", type: "document" },
];

/** The terms of the languages, read when the first style is tried. */
const known = new Map<string, Locales>();

function localesIn(root: string): Locales {
  const folder = join(root, "src/write/references/locales");
  const files = readdirSync(folder).filter((name) => name.endsWith(".xml"));
  const locales =
    known.get(root) ??
    localesOf(
      files.map((name) => [
        name.slice("locales-".length, -".xml".length),
        readFileSync(join(folder, name), "utf8"),
      ]),
    );
  known.set(root, locales);
  return locales;
}

/** Cites three sources in a style that was not refused: it does, or says that it cannot. */
export function styleFaults(file: SourceFile, root: string): Faults {
  if (file.problem !== undefined || styleTrouble(file.text) !== null) return [];
  try {
    const all = referencesIn({ style: file.text, locales: localesIn(root), language: "en" }, items);
    all.bibliography();
    for (const { id } of items) {
      all.reference(id);
      all.cited([{ id, at: "p. 3" }, { id: "bare" }]);
      all.narrative({ id });
    }
  } catch (error) {
    if (!(error instanceof StyleFails)) throw error;
  }
  return [];
}
