import type { Rule } from "../rule.ts";

/** Told while linking, where the reference is met. */
export const unstableReference: Rule = {
  id: "unstable-reference",
  level: "note",
  title: "A reference goes by a made name that several records share.",
  doc: "Measurements and positions without an id are named after what they say; where several are called alike, the reference may come to mean another when one is added. Give the record an id of its own: the edit is offered.",
  find: () => ({ findings: [] }),
};
