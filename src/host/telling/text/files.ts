import { say } from "../../../base/text/said/said.ts";
import type { CitationStyle } from "../../../read/bibliography/style/style.ts";
import type { Manuscript } from "../../../show/telling/blocks/block.ts";
import { StyleFails } from "../../../write/references/references.ts";
import type { Made } from "../../../write/telling/made.ts";
import { setWithSources } from "../../../write/telling/set/sources.ts";
import type { SetText } from "../../../write/telling/set/set-text.ts";
import { unzipped, zipOf } from "../files/zip.ts";
import type { Refusal, Told } from "../kind.ts";
import { drawnPlates } from "./drawn.ts";

/** The formats of texts, by the endings of their files. */
export const textFormats = ["docx", "md", "html"] as const;

/** How a text is to be written. */
export interface Wanted {
  /** One of `textFormats`. */
  readonly format: string;
  readonly name: string;
  readonly style: CitationStyle;
}

/** A text in a format: one file, or in Markdown one with its figures beside it. */
export async function textFiles(
  told: Told,
  manuscript: Manuscript,
  { format, name, style }: Wanted,
): Promise<readonly Made[] | Refusal> {
  const set = await inStyle(told, manuscript, style);
  if ("refused" in set) return set;
  const drawn = await drawnPlates(told, set, format === "docx");
  if (format === "md") {
    const { markdownOf } = await import("../../../write/telling/markdown/markdown.ts");
    return markdownOf(set, name, drawn);
  }
  if (format === "html") {
    const { textPage } = await import("../../../write/telling/html/page.ts");
    return [{ path: `${name}.html`, content: textPage(set, drawn) }];
  }
  const { documentOf } = await import("../../../write/office/docx/document.ts");
  const { settledParts } = await import("../../../write/office/docx/settled.ts");
  const parts = unzipped(await documentOf(set, drawn));
  return [{ path: `${name}.docx`, content: zipOf(settledParts(parts, told.today)) }];
}

async function inStyle(
  { model }: Told,
  manuscript: Manuscript,
  style: CitationStyle,
): Promise<SetText | Refusal> {
  try {
    return await setWithSources(manuscript, model.graph, style);
  } catch (error) {
    if (!(error instanceof StyleFails)) throw error;
    const name = "shipped" in style ? style.shipped : style.file;
    return {
      refused: say`The style \`${name}\` cannot write these references (${error.message}), expected one that can`,
    };
  }
}
