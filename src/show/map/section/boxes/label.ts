import type { Id } from "../../../../base/finding.ts";
import { yearText } from "../../../../base/date/year.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Quantity } from "../../../../base/quantity.ts";
import { formatNumber } from "../../../../base/quantity/quantity-print.ts";
import type { Graph, MeasurementRecord } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { textWidth } from "../../letters/letters.ts";
import type { FindsLabel } from "../../scene.ts";
import type { Net } from "../net/net.ts";
import { mostInPile } from "../open/piles.ts";
import { roomier } from "./beam.ts";
import type { Sized } from "./claim.ts";
import { oneLine } from "./setting.ts";
import { labelUnder, labelValue } from "./words.ts";

/** A finds label in px, what its cut corner and hole take of it, and how far the next one of a pile peeps out. */
const least = 136;
const most = 184;
const height = 44;
const holed = 32;
const peeping = 4;

/** Labels that lie over each other; too many become one with their count and span. */
export function pileLook(net: Net, members: readonly Id[], conflict: boolean): Sized {
  const { graph, told } = net;
  const many = members.length > mostInPile;
  const labels = (many ? [summary(graph, members)] : members.map((id) => labelOfOne(graph, id))).map(
    ({ id, value, under }): FindsLabel => ({ id, value: told(value), under: told(under) }),
  );
  const width = Math.max(least, Math.min(most, Math.max(...labels.map(widthOf))));
  const over = (labels.length - 1) * peeping;
  return {
    look: { as: "pile", labels: labels.map((one) => fitted(one, width)), count: members.length, conflict },
    width: width + over,
    height: height + over,
  };
}

/** A label before it is put into a language. */
interface Unsaid {
  readonly id: Id;
  readonly value: Text;
  readonly under: Text;
}

function labelOfOne(graph: Graph, id: Id): Unsaid {
  return { id, value: labelValue(graph, id), under: labelUnder(graph, id) };
}

const valueLetters = { face: "serif", size: 16 } as const;
const underLetters = { face: "sans", size: 13 } as const;

/** The width that a label's words ask for, in steps of 8 px. */
function widthOf({ value, under }: FindsLabel): number {
  const words = Math.max(textWidth(value, "serif", 16), textWidth(under, "sans", 13) * roomier);
  return Math.ceil((words + holed) / 8) * 8;
}

function fitted({ id, value, under }: FindsLabel, width: number): FindsLabel {
  return {
    id,
    value: oneLine(value, { ...valueLetters, width: width - holed }),
    under: oneLine(under, { ...underLetters, width: width - holed }),
  };
}

/** `24 diameters` over `0.97–7.41 m, 1998`. */
function summary(graph: Graph, members: readonly Id[]): Unsaid {
  const records = members.flatMap((id) => {
    const record = graph.records.get(id);
    return record?.list === "measurements" ? [record] : [];
  });
  const [first] = records;
  const year = first ? (first.values.year ?? graph.provenance(first.id).year) : null;
  const span = spanOf(records);
  return {
    id: members[0] ?? "",
    value: first
      ? say`${count(members.length)} ${pluralOf(graph.dimensionName(first.values.dimension))}`
      : say`${count(members.length)} labels`,
    under: year === null ? span : span === "" ? yearText(year) : say`${span}, ${yearText(year)}`,
  };
}

/** A dimension's name for several of it; one in other letters, or whose last word has an `s` already, keeps it. */
function pluralOf(name: string): string {
  if (/\s(?:of|from|to|above)\s/u.test(name) || otherLetters.test(name)) return name;
  if (/[^aeiou]y$/u.test(name)) return `${name.slice(0, -1)}ies`;
  if (/radius$/iu.test(name)) return `${name.slice(0, -2)}i`;
  return /(?:s|x|ch|sh)$/u.test(name) ? `${name}es` : `${name}s`;
}

const otherLetters = /(?!\p{Script=Latin})\p{L}$/u;

/** Smallest to largest of some measurements, as written, where they are written in one unit. */
function spanOf(records: readonly MeasurementRecord[]): Text {
  const sorted = records.map((one) => one.values.value).toSorted((a, b) => a.value - b.value);
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (!low || !high) return "";
  if (low.unit !== high.unit) return say`${low.text} to ${high.text}`;
  const unit = low.unit === "1" ? "" : ` ${low.unit}`;
  const [from, to] = [numeralOf(low), numeralOf(high)];
  return from === to ? `${from}${unit}` : `${from}–${to}${unit}`;
}

/** The one figure of a quantity as it is written; of one that is written in parts or as a range, its value in the unit. */
function numeralOf({ text, value, unitSize }: Quantity): string {
  const written = /^\D*?(\d[\d.]*)(?:\s*±.*|\s*\D*)$/u.exec(text)?.[1];
  return written ?? formatNumber(value / unitSize, 3);
}

/** What a pile is called from elsewhere. */
export function pileTitle(graph: Graph, members: readonly Id[]): Text {
  if (members.length === 1) return labelText(graph, members[0] ?? "");
  const { value, under } = summary(graph, members);
  return say`${value}, ${under}`;
}
