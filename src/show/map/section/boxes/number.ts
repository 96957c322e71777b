import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { isList } from "../../../../base/json.ts";
import type { Json } from "../../../../base/json.ts";
import { formatNumber } from "../../../../base/quantity/quantity-print.ts";
import type { Derivations } from "../../../../derive/derive.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Net } from "../net/net.ts";
import type { Sized } from "./claim.ts";
import { oneLine } from "./setting.ts";

/** A label of a computed number in px, and the white in it beside the words. */
const width = 176;
const height = 48;
const aside = 8;

/** A computed number on its label with the graduated edge: the number, and what computed it. */
export function numberLook({ graph, told }: Net, derivations: Derivations, id: Id): Sized {
  const record = graph.records.get(id);
  const plugin = record?.list === "derivations" ? record.values.plugin.replace(/-/g, " ") : "";
  const derived = derivations.byId.get(id);
  const dimension = dimensionOf(graph, derived?.used ?? []);
  const under = dimension === null ? plugin : told(say`${plugin}, from ${dimension}`);
  return {
    look: {
      as: "number",
      value: oneLine(told(numberValue(graph, derived)), {
        face: "serif",
        size: 16,
        width: width - 2 * aside,
      }),
      under: oneLine(under, { face: "sans", size: 13, width: width - 2 * aside }),
    },
    width,
    height,
  };
}

/** The one dimension that a number was computed on; null where there are several. */
function dimensionOf(graph: Graph, used: readonly Id[]): string | null {
  const names = used.flatMap((id) => {
    const record = graph.records.get(id);
    return record?.list === "measurements" ? [graph.dimensionName(record.values.dimension)] : [];
  });
  const [first = null, ...others] = new Set(names);
  return others.length === 0 ? first : null;
}

/** The number that is asked about with its interval, `p 0.004`, or why there is none. */
export function numberValue(graph: Graph, derived: Derived | undefined): Text {
  if (!derived) return say`not computed`;
  if (derived.status === "pending") return say`being computed`;
  if (derived.status !== "computed") return derived.status === "refused" ? say`refused` : say`not computed`;
  const name = askedName(graph, derived.id) ?? Object.keys(derived.numbers)[0] ?? "";
  const number = derived.numbers[name];
  if (!number) return say`not computed`;
  const unit = number.unit === "1" ? "" : ` ${number.unit}`;
  const ends = [number.low, number.high].map((end) => (end === null ? "…" : formatNumber(end, 3)));
  const interval = number.low === null && number.high === null ? "" : ` (${ends.join("–")})`;
  return `${name.replace(/-/g, " ")} ${formatNumber(number.value, 3)}${unit}${interval}`;
}

/** The number that a bearing asks about first. */
function askedName(graph: Graph, id: Id): string | undefined {
  const record = graph.records.get(id);
  if (record?.list !== "derivations") return undefined;
  for (const { supports, disputes } of record.values["bears-on"] ?? []) {
    const name = firstName(supports) ?? firstName(disputes);
    if (name !== undefined) return name;
  }
  return undefined;
}

function firstName(condition: Json | undefined): string | undefined {
  const map = isList(condition ?? null) ? (condition as readonly Json[])[0] : condition;
  return map !== null && typeof map === "object" && !Array.isArray(map) ? Object.keys(map)[0] : undefined;
}
