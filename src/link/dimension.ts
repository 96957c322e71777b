import { finding } from "../base/finding.ts";
import type { Finding, Span } from "../base/finding.ts";
import type { QuantityKind } from "../base/quantity.ts";
import { isShare } from "../base/quantity/quantity-text.ts";
import { remembered } from "../base/text/remembered.ts";
import { kindWords } from "../base/unit/kind-words.ts";
import { coded, say } from "../base/text/said/said.ts";
import { spanOf } from "../read/record.ts";
import type { DimensionSetting } from "../read/settings/settings.ts";
import type { MeasurementRecord } from "./graph.ts";

/** Names compared in NFC, without regard to case and spaces. */
export function folded(written: string): string {
  return written.normalize("NFC").toLowerCase().replace(/\s+/g, "");
}

/** One name for all spellings: the declared one, else the spelling met first. */
export function namesOf(
  declared: readonly { readonly name: string; readonly also: readonly string[] }[],
  met: Iterable<string>,
): (written: string) => string {
  const names = new Map<string, string>();
  for (const one of declared) {
    for (const spelling of [one.name, ...one.also]) names.set(folded(spelling), one.name);
  }
  for (const written of new Set(met)) {
    if (!names.has(folded(written))) names.set(folded(written), written);
  }
  return remembered((written) => names.get(folded(written)) ?? written);
}

/** The kind of each dimension: declared, or that of most of its measurements. */
export function dimensionKinds(
  declared: readonly DimensionSetting[],
  measurements: readonly MeasurementRecord[],
  nameOf: (written: string) => string,
): ReadonlyMap<string, QuantityKind> {
  const kinds = new Map<string, QuantityKind>();
  const counts = new Map<string, Map<QuantityKind, number>>();
  for (const { values } of measurements) {
    const name = nameOf(values.dimension);
    const count = counts.get(name) ?? new Map<QuantityKind, number>();
    counts.set(name, count.set(values.value.kind, (count.get(values.value.kind) ?? 0) + 1));
  }
  for (const [name, count] of counts) {
    const most = [...count].reduce((best, one) => (one[1] > best[1] ? one : best));
    kinds.set(name, most[0]);
  }
  for (const one of declared) if (one.kind) kinds.set(one.name, one.kind);
  return kinds;
}

/**
 * What is wrong with a measurement's value: another kind than its dimension's, or a length or mass not above 0; or with
 * the errors stated beside it: a shared one that is no share, a rounding of another kind.
 */
export function valueTrouble(
  record: MeasurementRecord,
  name: string,
  kind: QuantityKind | undefined,
  anySign: boolean,
): Finding | null {
  const { value, "shares-error": shares, "to-nearest": nearest } = record.values;
  const at = (): Span => spanOf(record, "value");
  if (kind !== undefined && value.kind !== kind) {
    const message = say`Unexpected ${kindWords[value.kind]} \`${value.text}\`, expected a ${kindWords[kind]} for ${name}`;
    return finding("bad-value", message, at(), { about: [record.id] });
  }
  const signed = value.kind === "length" || value.kind === "mass";
  if (signed && !anySign && !(value.value > 0)) {
    const message = say`Unexpected \`${value.text}\`, expected a ${kindWords[value.kind]} above 0`;
    return finding("bad-value", message, at(), { about: [record.id] });
  }
  if (shares !== undefined && !isShare(shares.of)) {
    const message = say`Unexpected share \`${shares.of.text}\`, expected one such as ${coded("1 %")}`;
    return finding("bad-value", message, spanOf(record, "shares-error", "of"), { about: [record.id] });
  }
  if (nearest !== undefined && nearest.kind !== value.kind) {
    const message = say`Unexpected ${kindWords[nearest.kind]} \`${nearest.text}\`, expected a ${kindWords[value.kind]} for ${name}`;
    return finding("bad-value", message, spanOf(record, "to-nearest"), { about: [record.id] });
  }
  return null;
}
