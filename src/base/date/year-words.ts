import { say } from "../text/said/said.ts";
import type { Text } from "../text/said/said.ts";
import { yearText } from "./year.ts";

/** An astronomical year as texts have it, to be put into any language: `1998`, `AD 60`, `480 BC`. */
export function yearWords(astronomical: number): Text {
  if (astronomical <= 0) return say`${String(1 - astronomical)} BC`;
  return astronomical < 1000 ? say`AD ${String(astronomical)}` : yearText(astronomical);
}
