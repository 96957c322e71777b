import type { Graph } from "../../../link/graph.ts";
import type { LeafRun } from "../../../show/telling/talk/layout/leaf.ts";
import type { Slides } from "../../../show/telling/talk/slides.ts";
import { localesFor } from "../../references/locales/locales.ts";
import { referencesIn } from "../../references/references.ts";
import { shippedStyle } from "../../references/shipped-styles.ts";

/** The entries of all that a talk cites, in the corpus's style and its order. Throws `StyleFails` where the style cannot do it. */
export async function referenceRuns(
  { sources, citationStyle }: Pick<Graph, "sources" | "citationStyle">,
  { sources: cited, language }: Slides,
): Promise<readonly (readonly LeafRun[])[]> {
  if (cited.length === 0) return [];
  const style = "shipped" in citationStyle ? await shippedStyle(citationStyle.shipped) : citationStyle.text;
  const items = cited.flatMap((id) => sources.get(id)?.csl ?? []);
  const references = referencesIn({ style, locales: await localesFor(style, language), language }, items);
  return references.bibliography().map(({ id, runs }) => {
    const lang = sources.get(id)?.csl.language ?? null;
    return runs.map((run): LeafRun => ({
      text: run.text.replaceAll("\n", " "),
      lang,
      face: "serif",
      weight: run.bold === true ? 600 : 400,
      colour: "ink",
      ...(run.italic === true ? { italic: true } : {}),
    }));
  });
}
