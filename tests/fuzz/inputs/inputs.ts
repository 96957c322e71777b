import { randomFrom } from "../../../src/base/outcome/random.ts";
import { changedInput } from "./changed.ts";
import type { Input } from "./input.ts";
import { madeInput } from "./made/made.ts";
import type { Seeds } from "./seeds.ts";

/** One in so many inputs is made up; the others are files that were changed. */
const madeEvery = 8;

/** The input of a place in the row of a seed: the same for the same seed and place on every machine. */
export function inputAt(seed: number, place: number, seeds: Seeds): Input {
  const random = randomFrom((Math.imul(seed, 0x9e3779b1) ^ Math.imul(place + 1, 0x85ebca6b)) | 0);
  return place % madeEvery === madeEvery - 1 ? madeInput(random) : changedInput(random, seeds);
}
