import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Model } from "../../build.ts";
import { placesOf } from "../../plan/visit/places.ts";
import { askedOf } from "../../plan/visit/trips.ts";
import type { VisitAsked } from "../../show/desk/visit/asked.ts";
import { visitBlocks } from "../../show/desk/visit/blocks/blocks.ts";
import { visitSheet } from "../../show/desk/visit/sheet/sheet.ts";
import { withheldIn } from "../../show/withhold.ts";
import { visitMarkdown } from "../../write/visit/markdown.ts";
import { visitPage } from "../../write/visit/page.ts";
import { visitText } from "../../write/visit/text.ts";
import type { Asked, Kind, Refusal } from "./kind.ts";
import { textFiles } from "./text/files.ts";
import { expectedFor } from "./text/named.ts";

/** The sheet of a visit: what to measure and look for, and what each outcome decides. */
export const visit: Kind = {
  doc: "a sheet for a visit: what to measure and look for, and what each outcome decides",
  formats: ["html", "docx", "md"],
  several: false,
  options: [
    { name: "examination", takes: "id", doc: "the examination that the visit is for" },
    { name: "keeper", takes: "name", doc: "all that is to be looked at with one keeper" },
    {
      name: "also",
      takes: "ids",
      several: true,
      doc: "with --keeper: things of the keeper's that are to be on the sheet besides",
    },
    { name: "with-values", takes: null, doc: "earlier values too, on a leaf of their own at the end" },
  ],
  reach: { plan: true },
  make: async (told, format, name, given) => {
    const { model, plugins } = told;
    const asked = askedIn(given);
    if ("refused" in asked) return asked;
    const sheet = visitSheet(model, asked, model.plan ? { plan: model.plan, plugins } : null);
    if (!sheet) return { refused: unknown(model, asked) };
    const blocks = visitBlocks(sheet, { withValues: given["with-values"] === true });
    if (format === "md") return [{ path: `${name}.md`, content: visitMarkdown(blocks) }];
    if (format === "html")
      return [{ path: `${name}.html`, content: visitPage(blocks, { asked, corpus: sheet.corpus }) }];
    return textFiles(told, visitText(blocks), { format, name, style: model.graph.citationStyle });
  },
};

function askedIn(given: Asked): VisitAsked | Refusal {
  const { examination, keeper, also = [] } = given;
  if (typeof examination === "string" && typeof keeper === "string")
    return { refused: say`Unexpected ${"--examination"} beside ${"--keeper"}, expected one of them` };
  if (typeof examination === "string") {
    if ([also].flat().length > 0)
      return { refused: say`Unexpected ${"--also"} without ${"--keeper"}, expected them together` };
    return { examination, keeper: null, also: [] };
  }
  if (typeof keeper === "string") return { examination: null, keeper, also: [also].flat().map(String) };
  return { refused: say`Missing ${"--examination"} or ${"--keeper"}, expected one of them` };
}

function unknown({ graph }: Model, { examination, keeper }: VisitAsked): Said {
  const withheld = withheldIn(graph);
  const known =
    examination === null
      ? placesOf(
          graph,
          graph.list("artefacts").map((one) => one.id),
        ).flatMap((one) => askedOf(one) ?? [])
      : graph.list("examinations").flatMap(({ id }) => (withheld(id) ? [] : id));
  const names = [...new Set(known)];
  const written = examination ?? keeper ?? "";
  const expected = expectedFor(written, names);
  return examination === null
    ? say`Unknown keeper \`${written}\`, expected ${expected}`
    : say`Unknown examination \`${written}\`, expected ${expected}`;
}
