import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { fieldsOf, membersOf } from "../../../src/base/json.ts";
import type { Json } from "../../../src/base/json.ts";
import type { Told } from "../../../src/host/telling/kind.ts";
import type { ShippedStyle } from "../../../src/read/bibliography/style/shipped.ts";
import { localesFor } from "../../../src/write/references/locales/locales.ts";
import { referencesIn } from "../../../src/write/references/references.ts";
import { shippedStyle } from "../../../src/write/references/shipped-styles.ts";
import { printedBy } from "./judged.ts";
import { wordsOf } from "./pandoc.ts";

/** The bibliography of all sources in a style, by us. */
export async function referencesOfOurs({ model }: Told, style: ShippedStyle): Promise<readonly string[]> {
  const text = await shippedStyle(style);
  const items = [...model.graph.sources.values()].map(({ csl }) => csl);
  const manner = { style: text, locales: await localesFor(text, "en"), language: "en" };
  return referencesIn(manner, items)
    .bibliography()
    .map(({ runs }) => runs.map((run) => run.text).join(""));
}

/**
 * The bibliography of all sources of a file of CSL-JSON in a style, by the citation processor of pandoc, which shares no line
 * with ours.
 */
export function referencesByPandoc(sources: string, style: ShippedStyle): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "references-"));
  try {
    writeFileSync(join(folder, "all.md"), '---\nnocite: "@*"\n---\n');
    const csl = fileURLToPath(new URL(`../../../src/write/references/styles/${style}.csl`, import.meta.url));
    const args = ["all.md", "--citeproc", "--csl", csl, "--bibliography", sources, "-t", "json"];
    const { blocks } = JSON.parse(printedBy("pandoc", args, folder)) as { readonly blocks: Json };
    const [all] = membersOf(blocks);
    return membersOf(membersOf(fieldsOf(all)["c"])[1]).map(wordsOf);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * An entry without what the two processors do each in its way: capitals of small words in titles, quotation marks and the
 * breaks after hanging names; and of a name in a script without capitals pandoc's writes no initials.
 */
export function comparable(entry: string): string {
  return entry
    .replace(/حدّاد, سلمى\.?/, "حدّاد, س.")
    .normalize("NFC")
    .toLowerCase()
    .replace(/[“”‘’"'\s\u200e\u200f\u2066-\u2069]/g, "");
}
