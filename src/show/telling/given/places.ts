import type { Finding } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../../link/withheld.ts";

/** Findings for others to read: without their places in files that are called after something withheld (`readings/KEY.yaml`). */
export function withoutTellingPlaces(graph: Graph, findings: readonly Finding[]): readonly Finding[] {
  const withheld = withheldIn(graph);
  const tells = (path: string): boolean => {
    const steps = path.replace(/\.[a-z]+$/u, "").split("/");
    return steps.some((_, from) =>
      steps.slice(from).some((__, to) => withheld(steps.slice(from, from + to + 1).join("/"))),
    );
  };
  return findings.map((one) =>
    one.at !== null && tells(one.at.file) ? { ...one, at: null, fix: null } : one,
  );
}
