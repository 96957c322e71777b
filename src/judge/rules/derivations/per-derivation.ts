import type { Level } from "../../../base/finding.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Step } from "../../../read/yaml/tree.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Rule, View } from "../rule.ts";
import { tell } from "../tell.ts";

/** What a rule has to say of a derivation, and of which of its fields. */
export interface Said {
  readonly message: string;
  readonly path?: readonly Step[];
}

/** A rule that looks at each derivation by itself. */
export function perDerivation(
  id: string,
  level: Level,
  title: string,
  doc: string,
  says: (derived: Derived, view: View) => readonly Said[],
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
export const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/, "")}.`;

/** A derivation by its name, in quotation marks. */
export const named = (graph: Graph, derived: Derived): string => `“${labelOf(graph, derived.id)}”`;
