import type { Rule } from "../rule.ts";
import { errors } from "./errors.ts";

/** Every rule that looks at the graph, in the order of format.md 6. */
export const rules: readonly Rule[] = [];

/** What there is to explain of every rule, those of reading and linking first. */
export const ruleDocs: readonly Pick<Rule, "id" | "level" | "title" | "doc">[] = [...errors, ...rules];
