import { finding } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import { spanOf } from "../../../read/record.ts";
import type { Rule } from "../rule.ts";
import { quoted } from "../../../base/text/said/rows.ts";

export const unitHidden: Rule = {
  id: "unit-hidden",
  level: "note",
  title: say`A unit of the corpus's own hides a built-in one of that name.`,
  doc: say`Everything measured in that name is read in the corpus's own unit. Rename it if the built-in one is meant anywhere.`,
  ofTheRecord: true,
  find: ({ graph }) => ({
    findings: graph.settings.quantities.units.hidden.map(({ builtIn, by }) => {
      const message = say`The corpus's own unit ${quoted(by.name)} hides the built-in ${builtIn.name}, expected another name if both are meant.`;
      const at = spanOf({ file: graph.settings.file, node: graph.settings.node }, "units", by.name);
      return finding("unit-hidden", message, at, { level: "note" });
    }),
  }),
};
