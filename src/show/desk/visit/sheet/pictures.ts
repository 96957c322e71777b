import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Named } from "../../../judged/standpoints/named.ts";
import type { ThingLine } from "./things.ts";
import type { FeatureRow } from "./features.ts";
import { pictureKey } from "./keys.ts";
import type { MeasureRow } from "./measures.ts";

/** A picture that is to be taken, always with a scale in it. */
export interface PictureRow {
  readonly key: string;
  readonly of: Named;
  readonly shows: Text;
}

/** The pictures of a visit: each thing whole, each feature that is asked for, and what is measured (common practice). */
export function pictureRows(
  things: readonly ThingLine[],
  measures: readonly MeasureRow[],
  features: readonly FeatureRow[],
): readonly PictureRow[] {
  const rows: PictureRow[] = things.map(({ id, text }) => ({
    key: pictureKey(id, ""),
    of: { id, text },
    shows: say`the whole, square on, with a scale and the inventory number`,
  }));
  for (const { of, feature } of features.filter((one) => one.asked))
    for (const thing of of)
      rows.push({
        key: pictureKey(thing.id, `feature:${feature}`),
        of: thing,
        shows: say`${feature}: close, in raking light, with a scale; also where it was looked for and is not there`,
      });
  for (const { of, dimension, between } of measures.filter((one) => one.asked))
    rows.push({
      key: pictureKey(of.id, `dimension:${dimension}:${between}`),
      of,
      shows: say`${dimension}: its landmarks, with a scale in their plane`,
    });
  return [...new Map(rows.map((one) => [one.key, one])).values()];
}
