import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import type { CitationStyle } from "../../../read/bibliography/style/style.ts";
import type { Manuscript } from "../../../show/telling/blocks/block.ts";
import { localesFor } from "../../references/locales/locales.ts";
import { referencesIn } from "../../references/references.ts";
import { shippedStyle } from "../../references/shipped-styles.ts";
import { citedIn } from "./cited.ts";
import { setText } from "./set.ts";
import type { SetText } from "./set-text.ts";

/**
 * Sets a text with the sources of a corpus that it cites and no others: what tells two of them apart in short citations
 * is what the reader of this text needs. Throws `StyleFails` where the style cannot do it.
 */
export async function setWithSources(
  manuscript: Manuscript,
  { sources }: Pick<Graph, "sources">,
  style: CitationStyle,
): Promise<SetText> {
  const text = "shipped" in style ? await shippedStyle(style.shipped) : style.text;
  const { language } = manuscript;
  const cited = citedIn(manuscript);
  const items = [...sources.values()].flatMap(({ csl }) => (cited.has(csl.id) ? [csl] : []));
  const references = referencesIn(
    { style: text, locales: await localesFor(text, language), language },
    items,
  );
  return setText(manuscript, references, (id: Id) => sources.get(id)?.csl.language ?? null);
}
