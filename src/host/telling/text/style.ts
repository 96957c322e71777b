import { say } from "../../../base/text/said/said.ts";
import { citationStyleIn } from "../../../read/bibliography/style/style.ts";
import type { CitationStyle } from "../../../read/bibliography/style/style.ts";
import type { Asked, KindOption, Refusal, Told } from "../kind.ts";

/** The option for another style than the corpus's. */
export const styleOption: KindOption = {
  name: "style",
  takes: "name",
  doc: "the citation style: one that comes with the program, or a .csl file",
};

/** The style that is asked for, by the name of one that comes with the program or the path of a `.csl` file; else the corpus's own. */
export function styleAsked(
  { files, model }: Pick<Told, "files" | "model">,
  asked: Asked,
): CitationStyle | Refusal {
  const named = asked[styleOption.name];
  if (named === undefined) return model.graph.citationStyle;
  if (typeof named !== "string") return { refused: say`Unexpected several styles, expected one` };
  const nowhere = { file: "", start: 0, end: 0 };
  const { style, findings } = citationStyleIn(named, new Map(files.map((one) => [one.path, one])), nowhere);
  const [trouble] = findings;
  return trouble ? { refused: trouble.message } : style;
}
