import { inEnglish } from "../../../src/base/text/said/english.ts";
import { worded } from "../../../src/base/text/said/worded.ts";
import type { Worded } from "../../../src/base/text/said/worded.ts";

/** Plain data with whatever is said in it in English. */
export const wholeInEnglish = <T>(value: T): Worded<T> => worded(value, inEnglish);
