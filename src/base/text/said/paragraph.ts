import { say } from "./said.ts";
import type { Text } from "./said.ts";

/** Sentences one after another, those that there are; nothing of none. */
export function paragraph(sentences: readonly (Text | null)[]): Text {
  const [one = "", ...others] = sentences.filter((sentence) => sentence !== null);
  return others.reduce((before, next) => say`${before} ${next}`, one);
}
