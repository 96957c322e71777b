import type { Quantity, QuantityKind } from "../../../../base/quantity.ts";

/** Units that a visit measures in, by kind, the usual one first; as they are written. */
const units: Readonly<Partial<Record<QuantityKind, readonly (readonly [written: string, size: number])[]>>> =
  {
    length: [
      ["mm", 0.001],
      ["cm", 0.01],
      ["m", 1],
    ],
    mass: [
      ["g", 0.001],
      ["kg", 1],
      ["mg", 1e-6],
    ],
    angle: [["°", Math.PI / 180]],
    time: [["s", 1]],
  };

/** The units to choose from; none for what has no unit, and for kinds whose readings bring their own. */
export function unitsOf(kind: QuantityKind | null): readonly string[] {
  if (kind === null) return ["mm", "cm", "m", "g", "kg", "°"];
  return (units[kind] ?? []).map(([written]) => written);
}

/** The unit for figures that have none: that of the last earlier value that has one of these, else the usual one. */
export function unitFor(kind: QuantityKind | null, before: readonly Quantity[]): string {
  const all = kind === null ? [] : (units[kind] ?? []);
  const written = before.flatMap(
    (one) => all.find(([, size]) => Math.abs(one.unitSize / size - 1) < 1e-9)?.[0] ?? [],
  );
  return written.at(-1) ?? all[0]?.[0] ?? "";
}
