import {
  count,
  fieldsOf,
  numberOf,
  say,
  type Computation,
  type Naming,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { clashIn, eventsIn, inWords, spanWords } from "./read.ts";

/** What the review's methods section prints. */
export function chronologySentence(computation: Computation, _settings: Settings, name: Naming): Text {
  const { numbers, data } = computation;
  const asked = eventsIn(computation, name).filter((event) => event.asked);
  const names = inWords(asked.map((event) => event.words));
  const n = numberOf(fieldsOf(data)["statements"]);
  if (numbers["consistent"]?.value === 0) {
    const clash = inWords(clashIn(computation, name).names, 6);
    return n === 1
      ? say`One statement bears on ${names} and cannot all be true, at least one of these being wrong: ${clash}.`
      : say`${count(n)} statements bear on ${names} and cannot all be true, at least one of these being wrong: ${clash}.`;
  }
  const [first, last] = [numbers["earliest"]?.value ?? null, numbers["latest"]?.value ?? null];
  if (first === null && last === null)
    return n === 1
      ? say`One statement bears on ${names}; how early or late, cannot be decided.`
      : say`${count(n)} statements bear on ${names} and are compatible with one another; how early or late, cannot be decided.`;
  return fallsWithin(n, names, asked.length > 1, spanWords(first, last));
}

/** Within which years what is asked falls, by one statement or by several that are compatible. */
function fallsWithin(n: number, names: Text, several: boolean, span: Text): Text {
  if (several)
    return n === 1
      ? say`One statement bears on ${names}; by it, all of it falls ${span}.`
      : say`${count(n)} statements bear on ${names} and are compatible with one another; by them, all of it falls ${span}.`;
  return n === 1
    ? say`One statement bears on ${names}; by it, it falls ${span}.`
    : say`${count(n)} statements bear on ${names} and are compatible with one another; by them, it falls ${span}.`;
}
