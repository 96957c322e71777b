import type { Level } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { first, say } from "../../../base/text/said/said.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Step } from "../../../read/yaml/tree.ts";
import type { Rule, View } from "../rule.ts";
import { quotedLabel, tell } from "../tell.ts";

/** What a rule has to say of a derivation, and of which of its fields. */
export interface Remark {
  readonly message: Text;
  readonly path?: readonly Step[];
}

/** A rule that looks at each derivation by itself. */
export function perDerivation(
  id: string,
  level: Level,
  title: Text,
  doc: Text,
  says: (derived: Derived, view: View) => readonly Remark[],
): Rule {
  return {
    id,
    level,
    title,
    doc,
    find: (view) => ({
      findings: [...view.derivations.byId.values()].flatMap((derived) =>
        says(derived, view).map(({ message, path = ["id"] }) =>
          tell(view.graph, id, level, [derived.id], message, { path }),
        ),
      ),
    }),
  };
}

/** A sentence with a capital and a stop. */
export function sentence(text: Text): Text {
  if (typeof text !== "string") return first(inEnglish(text).endsWith(".") ? text : say`${text}.`);
  return `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/, "")}.`;
}

/** That a derivation was refused, and why. */
export const wasRefused = (graph: Graph, derived: Derived): Said =>
  say`${quotedLabel(graph, derived.id)} was refused. ${sentence(derived.why ?? "")}`;
