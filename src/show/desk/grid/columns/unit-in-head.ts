import type { UnitTable } from "../../../../base/unit/unit-table.ts";

/** A head of a column without the unit that stands in it. */
export interface HeadParts {
  readonly name: string;
  /** As it is written there; null where none stands in it. */
  readonly unit: string | null;
}

/** Ways of writing a unit behind a name: `(cm)`, `[cm]`, `/ cm` (ISO 80000-1), `in cm`, `, cm`, `_cm`. */
const ways: readonly RegExp[] = [
  /^(.*?)[\s_,]*[([{（]\s*(?:in\s+)?([^()[\]{}（）]+?)\s*[)\]}）]\s*$/u,
  /^(.+?)\s*\/\s*([^/]+)$/u,
  /^(.+?)\s+(?:in|en|بال|ب)\s+(.+)$/iu,
  /^(.+?)\s*[,;:]\s*([^,;:]+)$/u,
  /^(.+?)[_\s]+(?!in$)([^_\s]+)$/u,
];

/** A head taken apart into its name and a unit that can be read; `Diameter (cm)` is `Diameter` in `cm`. */
export function unitInHead(head: string, units: UnitTable): HeadParts {
  const said = head.trim().replace(/\s+/g, " ");
  for (const way of ways) {
    const [, name = "", unit = ""] = way.exec(said) ?? [];
    const read = arabicUnits[unit.trim()] ?? unit.trim();
    if (unit !== "" && units.find(read)) return { name: name.trim(), unit: read };
  }
  return { name: said, unit: null };
}

/** Arabic signs of units as they head columns (common practice). */
const arabicUnits: Readonly<Record<string, string>> = {
  سم: "cm",
  مم: "mm",
  م: "m",
  كم: "km",
  غ: "g",
  جم: "g",
  غم: "g",
  كغ: "kg",
  كجم: "kg",
};
