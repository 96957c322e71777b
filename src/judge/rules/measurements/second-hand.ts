import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { apart } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";

export const secondHand: Rule = {
  id: "second-hand",
  level: "note",
  title: say`Something is known only through another source.`,
  doc: say`What was read in \`via\` was not checked in the source itself. Find that source, or cite it as what it is: cited in another.`,
  ofTheRecord: true,
  find: ({ graph, judgement }) => {
    const side = apart(graph, "second-hand");
    const groups = new Map<string, Id[]>();
    for (const record of graph.records.values()) {
      if (record.list === "passages" || !judgement.counts(record.id)) continue;
      const said = graph.provenance(record.id);
      const [via] = said.via;
      if (via === undefined) continue;
      const key = `${said.sources[0] ?? ""}\n${via}\n${side(record.id)}`;
      groups.set(key, [...(groups.get(key) ?? []), record.id]);
    }
    const findings = [...groups].map(([key, about]) => {
      const [source = "", via = ""] = key.split("\n");
      const through = labelText(graph, via);
      const message =
        source === ""
          ? say`What is said is known only through ${through}, expected to be read itself.`
          : say`${labelText(graph, source)} is known only through ${through}, expected to be read itself.`;
      return tell(graph, "second-hand", "note", about, message, { path: ["via"] });
    });
    return { findings };
  },
};
