import type { Id } from "../../../../base/finding.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Port, ThingPart } from "../../scene.ts";
import type { Net } from "../net/net.ts";
import { roomier } from "./beam.ts";
import type { Sized } from "./claim.ts";
import { settingOf, settingWidth } from "./setting.ts";

/** Most parts that are seen in a whole before it is folded into their count. */
export const mostParts = 6;
/** The same on a narrow screen, where a thing is no wider than this in px. */
export const mostPartsNarrow = 4;
const mostNarrow = 160;

/** Sizes in px: least and greatest width, white at the sloping sides, parts and the fill at the foot. */
const least = 104;
const most = 240;
const aside = 20;
const above = 16;
const nameLine = 22;
const partGap = 6;
const partHeight = 46;
const leastPart = 94;
/** What the sloping sides of a part take from its name. */
const sloping = 8;
const fill = 48;

/** A thing cut into the ground: its name, its parts within its outline, and a port above for each of them. */
export function thingLook(
  net: Net,
  id: Id,
  parts: readonly Id[],
  narrow = false,
): Sized & { readonly ports: readonly Port[] } {
  const { graph, told } = net;
  const widest = narrow ? mostNarrow : most;
  const partsInRow = narrow ? 2 : 3;
  const measure = { face: "serif", size: 16, weight: 600, width: widest - 2 * aside, lines: 3 } as const;
  const name = settingOf(told(labelText(graph, id)), measure);
  const columns = Math.min(partsInRow, parts.length);
  const wanted = Math.max(settingWidth(name, measure), columns === partsInRow ? widest : columns * leastPart);
  const width = Math.min(widest, Math.max(least, Math.ceil((wanted + 2 * aside) / 8) * 8));
  const top = above + name.lines.length * nameLine + partGap;
  const rows = Math.ceil(parts.length / partsInRow);
  const names = toldShort(parts.map((part) => told(labelText(graph, part))));
  const partWidth = columns === 0 ? 0 : (width - 2 * aside - (columns - 1) * partGap) / columns;
  const placed = parts.map((part, at): ThingPart => {
    const room = { face: "sans", size: 13, width: (partWidth - sloping) / roomier, lines: 2 } as const;
    return {
      id: part,
      name: settingOf(names[at] ?? "", room),
      x: aside + (at % partsInRow) * (partWidth + partGap),
      y: top + Math.floor(at / partsInRow) * (partHeight + partGap),
      width: partWidth,
      height: partHeight,
    };
  });
  const stretch = width / Math.max(1, parts.length);
  return {
    look: { as: "thing", name, parts: placed },
    width,
    height: top + rows * (partHeight + partGap) + fill,
    ports: parts.map((part, at) => ({ name: part, edge: "top", from: at * stretch, to: (at + 1) * stretch })),
  };
}

/** Names of parts without the words that all of them begin with. */
function toldShort(names: readonly string[]): readonly string[] {
  const all = names.map((name) => name.split(/\s+/u));
  const [first = []] = all;
  if (names.length < 2) return names;
  let shared = 0;
  while (all.every((words) => words.length > shared + 1 && words[shared] === first[shared])) shared++;
  const kept = Math.max(0, shared - 1);
  return all.map((words) => words.slice(kept).join(" "));
}
