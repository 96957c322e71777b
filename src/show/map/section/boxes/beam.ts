import type { Id } from "../../../../base/finding.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Bearing } from "../../../../derive/bearing.ts";
import { textWidth } from "../../letters/letters.ts";
import type { Port } from "../../scene.ts";
import type { Net } from "../net/net.ts";
import type { Step } from "../net/steps.ts";
import type { Sized } from "./claim.ts";
import { settingOf, settingWidth } from "./setting.ts";
import { say } from "../../../../base/text/said/said.ts";
import { apart, stepWords } from "./words.ts";

/** A beam's length in px for each premise, its words' distance and room, and the height of a line of them. */
const post = 24;
const gap = 8;
const wordsWidth = 190;
const narrowWords = 116;
const line = 16;
/** What a number can say of a claim. */
export const bearingWords: Readonly<Record<Bearing, Said>> = {
  supports: say`supports`,
  disputes: say`disputes`,
  inconclusive: say`inconclusive`,
};
/** Words are never smaller than 11 px on the screen: seen at 0.7, those of 13 px take so much more room than at 100 %. */
export const roomier = 11 / (13 * 0.7);

/** A beam on posts with its words beside it: a port below for each box it rests on, one above. */
export function beamLook(
  net: Net,
  step: Step,
  premises: readonly Id[],
  narrow = false,
): Sized & { readonly ports: readonly Port[] } {
  const measure = { face: "sans", size: 13, width: narrow ? narrowWords : wordsWidth, lines: 2 } as const;
  const words = settingOf(net.told(stepWords(net, step) ?? ""), measure);
  const length = post * Math.max(1, premises.length);
  const last = words.lines.at(-1) ?? "";
  // The place of what a number says is kept whatever it says under a lens.
  const saying = step.how === "bearing" ? Object.values(bearingWords).map(net.told) : [];
  const said = Math.max(0, ...saying.map((it) => textWidth(`${last}${apart}${it}`, "sans", measure.size)));
  const wide = Math.max(settingWidth(words, measure), said);
  const room = words.lines.length === 0 ? 0 : gap + Math.ceil(wide * roomier);
  const ports = [
    ...premises.map((name, at): Port => ({ name, edge: "bottom", from: at * post, to: (at + 1) * post })),
    ...(step.therefore === null ? [] : [{ name: step.therefore, edge: "top", from: 0, to: length } as const]),
  ];
  const tick = words.lines.length === 0 && premises.length <= 1;
  return {
    look: { as: "beam", length, words, tick },
    width: length + room,
    height: Math.max(1, words.lines.length) * line,
    ports,
  };
}
