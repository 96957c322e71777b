import type { Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Model } from "../../build.ts";
import { proseOf } from "../../show/telling/prose/prose.ts";
import { sectionsOf } from "../../show/telling/prose/sections.ts";
import { reviewOf } from "../../show/telling/review/review.ts";
import { sectionNames } from "../../read/prose/sections.ts";
import { sectionsAsked } from "../../show/telling/review/sections.ts";
import { withheldIn } from "../../show/withhold.ts";
import type { Asked, Kind, Refusal } from "./kind.ts";
import { textFiles, textFormats } from "./text/files.ts";
import { expectedFor } from "./text/named.ts";
import { styleAsked, styleOption } from "./text/style.ts";

/** A review of the literature, to go on writing in. */
export const review: Kind = {
  doc: "a review of the literature, to go on writing in a word processor",
  formats: textFormats,
  several: false,
  options: [
    {
      name: "sections",
      takes: "names",
      several: true,
      doc: `sections in their order: ${sectionNames.join(", ")}, and the names of your own files in review/`,
    },
    { name: "question", takes: "id", doc: "one question alone, with what bears on it" },
    styleOption,
  ],
  reach: { plan: true, history: true },
  make: async (told, format, name, asked) => {
    const { model, findings, plugins, memo } = told;
    const style = styleAsked(told, asked);
    if ("refused" in style) return style;
    const sections = sectionsIn(model, asked);
    if ("refused" in sections) return sections;
    const question = questionIn(model, asked);
    if (typeof question === "object" && question !== null) return question;
    const desk = { model, findings, plugins, memo: memo.compute };
    const manuscript = reviewOf(desk, { question, sections, prose: proseOf(model, plugins) });
    return textFiles(told, manuscript, { format, name, style });
  },
};

function sectionsIn({ graph }: Model, asked: Asked): readonly string[] | Refusal {
  const named = asked["sections"];
  if (named === undefined || typeof named === "boolean") return sectionsOf(graph);
  const { sections, unknown } = sectionsAsked(
    [named].flat(),
    graph.prose.map((one) => one.name),
  );
  const [trouble] = unknown;
  return trouble ? { refused: trouble.said } : sections;
}

function questionIn({ graph }: Model, asked: Asked): Id | null | Refusal {
  const named = asked["question"];
  if (named === undefined) return null;
  const withheld = withheldIn(graph);
  const known = graph.list("questions").flatMap(({ id }) => (withheld(id) ? [] : [id]));
  if (typeof named === "string" && known.includes(named)) return named;
  const written = String(named);
  const due = expectedFor(written, known, { most: known.length, none: say`one that the corpus asks` });
  return { refused: say`Unknown question \`${written}\`, expected ${due}` };
}
