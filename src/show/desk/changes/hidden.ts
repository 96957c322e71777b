import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";

/** What stays out of every output in two times of a corpus: whatever either of them withholds. */
export interface Hidden {
  /** Tells a text that is, or begins with, a name that is withheld. */
  readonly names: (text: string) => boolean;
  /** Whether where an artefact was found is withheld. */
  readonly place: (artefact: Id) => boolean;
}

/** The same dispute, with what others withhold withheld, too. */
export function withholding(graph: Graph, others: readonly Graph[]): Graph {
  const withhold = [...new Set([graph, ...others].flatMap((one) => one.settings.withhold))];
  return { ...graph, settings: { ...graph.settings, withhold } };
}

/** What two times of a corpus withhold together. */
export function hiddenIn(...graphs: readonly Graph[]): Hidden {
  const wholes = graphs.flatMap((graph) => graph.settings.withhold);
  const marked = (id: Id): boolean =>
    graphs.some((graph) => {
      const record = graph.records.get(id);
      return record?.list === "artefacts" && record.values["withhold-location"] === true;
    });
  return {
    names: (text) => {
      const name = text.split(/\s/u)[0] ?? "";
      return (
        graphs.some((graph) => withheldIn(graph)(name)) ||
        wholes.some((whole) => name.startsWith(`${whole}/`))
      );
    },
    place: (artefact) =>
      graphs.some((graph) => {
        for (let at: Id | undefined = artefact; at !== undefined; at = graph.wholeOf.get(at))
          if (marked(at)) return true;
        return false;
      }),
  };
}
