import { fieldsOf, numberOf, type Computation, type Naming, type Settings } from "../../src/plugin.ts";
import { clashIn, eventsIn, inWords, spanWords } from "./read.ts";

/** What the review's methods section prints. */
export function chronologySentence(computation: Computation, _settings: Settings, name: Naming): string {
  const { numbers, data } = computation;
  const asked = eventsIn(computation, name).filter((event) => event.asked);
  const names = inWords(asked.map((event) => event.words));
  const n = numberOf(fieldsOf(data)["statements"]);
  const bear = n === 1 ? `One statement bears on ${names}` : `${n} statements bear on ${names}`;
  if (numbers["consistent"]?.value === 0)
    return `${bear} and cannot all be true, at least one of these being wrong: ${inWords(clashIn(computation, name).names, 6)}.`;
  const [first, last] = [numbers["earliest"]?.value ?? null, numbers["latest"]?.value ?? null];
  const fit = n === 1 ? "" : " and are compatible with one another";
  if (first === null && last === null) return `${bear}${fit}; how early or late, cannot be decided.`;
  const all = asked.length > 1 ? "all of it falls" : "it falls";
  return `${bear}${fit}; by ${n === 1 ? "it" : "them"}, ${all} ${spanWords(first, last)}.`;
}
