import type { Linked } from "../graph.ts";
import type { Examination } from "./outcome.ts";

/** An examination as the record has it, with what is left out at its default. */
export function recordedExamination({ id, values }: Linked<"examinations">): Examination {
  return {
    id,
    origin: "recorded",
    of: values.of,
    method: values.method,
    cost: values.cost ?? null,
    destructive: values.destructive ?? false,
    permit: values.permit ?? null,
    outcomes: values.outcomes.map((one) => ({
      id: one.id,
      text: one.text,
      sees: (one.sees ?? []).map(({ feature, present }) => ({ feature, present: present ?? "true" })),
      measures: one.measures ?? [],
      therefore: one.therefore ?? [],
      against: one.against ?? [],
      strength: one.strength ?? "ordinary",
      probability: one.probability ?? null,
    })),
  };
}
