import type { Id } from "../../../../base/finding.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Measure } from "../../letters/letters.ts";
import type { Look, Setting } from "../../scene.ts";
import type { Net } from "../net/net.ts";
import { fitsWhole, settingOf } from "./setting.ts";

/** Sizes in px at 100 %: a claim and an answer, the white round their text, and the line under it that tells the standing. */
const claimWidth = 280;
const answerWidth = 320;
const aside = 12;
const above = 8;
const wordLine = 22;
const below = 6;

/** The look of a claim with its size. */
export interface Sized {
  readonly look: Look;
  readonly width: number;
  readonly height: number;
}

/** A claim or an answer: its text in three lines, else its short one, else as much as ends at a word. */
export function claimLook(net: Net, id: Id, as: "claim" | "answer", narrow: boolean): Sized {
  const record = net.graph.records.get(id);
  const whole = record?.list === "claims" ? record.values.text : net.told(labelText(net.graph, id));
  const short = record?.values.short ?? whole;
  const width = as === "answer" && !narrow ? answerWidth : claimWidth;
  const leading = as === "answer" ? 24 : 21;
  const measure: Measure =
    as === "answer"
      ? { face: "serif", size: 18, weight: 600, width: width - 2 * aside, lines: 3 }
      : { face: "serif", size: 16, weight: 400, width: width - 2 * aside, lines: 3 };
  const text: Setting = settingOf(fitsWhole(whole, measure) ? whole : short, measure);
  return {
    look: {
      as,
      text,
      short: settingOf(short, { ...measure, size: 26, lines: 2 }),
      hangs: net.pro(id).length === 0,
    },
    width,
    height: above + text.lines.length * leading + wordLine + below,
  };
}
