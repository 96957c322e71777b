import { say } from "../../base/text/said/said.ts";
import { applicationOf } from "../../show/telling/application/application.ts";
import { withheldIn } from "../../show/withhold.ts";
import type { Kind, Refusal, Told } from "./kind.ts";
import { textFiles } from "./text/files.ts";
import { expectedFor } from "./text/named.ts";
import { styleAsked, styleOption } from "./text/style.ts";

/** An application to a keeper for leave to examine something. */
export const application: Kind = {
  doc: "an application to a keeper for one examination",
  formats: ["docx", "md", "html"],
  several: false,
  options: [{ name: "examination", takes: "id", doc: "the examination that is applied for" }, styleOption],
  reach: { plan: true },
  make: async (told, format, name, asked) => {
    const { model, findings, plugins, memo } = told;
    const style = styleAsked(told, asked);
    if ("refused" in style) return style;
    const { examination } = asked;
    if (typeof examination !== "string")
      return { refused: say`Missing ${"--examination"}, expected the examination that is applied for` };
    const desk = { model, findings, plugins, memo: memo.compute };
    const manuscript = applicationOf(desk, examination);
    if (!manuscript) return unknown(told, examination);
    return textFiles(told, manuscript, { format, name, style });
  },
};

function unknown({ model: { graph } }: Told, written: string): Refusal {
  const withheld = withheldIn(graph);
  const known = graph.list("examinations").flatMap(({ id }) => (withheld(id) ? [] : id));
  const expected = expectedFor(written, known);
  return { refused: say`Unknown examination \`${written}\`, expected ${expected}` };
}
