import { authorLabel, labelOf } from "../../../link/label.ts";
import { inWords } from "../tell.ts";
import { perDerivation, named } from "./per-derivation.ts";

export const repeatsMerged = perDerivation(
  "repeats-merged",
  "note",
  "Several readings of one dimension entered a computation as one mean.",
  "One dimension of one thing enters once. The mean is weighted by the uncertainties and keeps at least half the difference as its own. Name the better source in `prefer` to take its reading instead.",
  (derived, { graph }) => {
    if (derived.merged.length === 0) return [];
    const names = derived.merged.map((ids) => {
      const record = graph.records.get(ids[0] ?? "");
      const what =
        record?.list === "measurements"
          ? `${record.values.dimension} of ${labelOf(graph, record.values.of)}`
          : "";
      return `${what} (${inWords(ids.map((id) => authorLabel(graph, id)))})`;
    });
    const few = names.length > 3 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
    return [{ message: `${named(graph, derived)} takes the mean of several readings: ${inWords(few)}.` }];
  },
);
