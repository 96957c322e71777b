import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { worded } from "../../../../base/text/said/worded.ts";
import type { Figure } from "../../../../plugin.ts";
import type { Inlines } from "../../blocks/block.ts";
import { inRow } from "./credits.ts";

/** Signs that a reader of a figure by itself may not know, each as it stands by itself among its words, with what it means. */
const known: readonly (readonly [RegExp, Said])[] = [
  [/(?<![\p{L}\d])p(?=\s*[=<>≤≥]|\s+\d)/u, say`p: how often chance alone would give as much`],
  [/(?<![\p{L}\d])n(?=\s*=)/u, say`n: how many values`],
  [/95 %\s+(?:intervals?|band)/u, say`95 % interval: made so as to take in the true value 95 times in 100`],
  [/(?<![\p{L}\d])mm(?![\p{L}])/u, say`mm: millimetres`],
  [/(?<![\p{L}])cm(?![\p{L}])/u, say`cm: centimetres`],
  [/(?<![\p{L}])m(?![\p{L}²³])/u, say`m: metres`],
  [/(?<![\p{L}])kg(?![\p{L}])/u, say`kg: kilograms`],
  [/(?<![\p{L}])g(?![\p{L}])/u, say`g: grams`],
  [/(?<![\p{L}])BC(?![\p{L}])/u, say`BC: before Christ`],
];

/** What the signs in a figure mean. */
export function abbreviationsIn(figure: Figure): Inlines {
  const texts = textsIn(worded(figure, inEnglish));
  const met = known.filter(([sign]) => texts.some((text) => sign.test(text)));
  return met.length === 0 ? [] : [say`Abbreviations: ${inRow(met.map(([, meaning]) => meaning))}.`];
}

function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}
