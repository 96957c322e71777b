import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { FeatureRow } from "../sheet/features.ts";
import type { MeasureRow } from "../sheet/measures.ts";
import type { OldValue } from "../sheet/old.ts";
import type { PictureRow } from "../sheet/pictures.ts";
import { sightOf } from "../sheet/sight.ts";
import { line } from "./block.ts";
import type { Field, FieldRow } from "./block.ts";

/** As many readings are asked for of each dimension; earlier values are told after them. */
export const readingsAsked = 3;
/** As many fit on a sheet of paper. */
const onPaper = 5;

/** A dimension to be measured, with fields for its readings. */
export function measureFields(one: MeasureRow): FieldRow {
  const at = ["measured", one.key] as const;
  const readings = Array.from({ length: onPaper }, (_, place): Field => ({
    ...line([...at, "readings", place], say`reading ${String(place + 1)}`),
    is: "figure",
  }));
  const unit: readonly Field[] =
    one.units.length === 0
      ? []
      : [
          {
            ...line([...at, "unit"], say`unit`, one.unit),
            is: "choice",
            choices: one.units.map((written) => ({ value: written, text: written })),
          },
        ];
  return {
    name: say`${one.dimension} of ${one.of.text}`,
    says: waysOf(one),
    fields: [
      ...readings,
      ...unit,
      { ...line([...at, "state"], say`state`), is: "choice", choices: states },
      line([...at, "between"], say`between`, one.between),
      line([...at, "instrument"], say`instrument, where another`),
      line([...at, "note"], say`note`),
    ],
    after: one.old.length === 0 ? null : { told: one.old.map(oldWords), fields: readingsAsked },
  };
}

/** How a dimension is taken: between which points, and with what before. */
export function waysOf({ taken, between, instruments }: MeasureRow): readonly Text[] {
  return [
    ...(between === "" ? [] : [say`between: ${between}`]),
    ...(taken === null ? [] : [say`taken: ${taken}`]),
    ...(instruments.length === 0 ? [] : [say`measured before with: ${row(instruments, "comma")}`]),
  ];
}

const states = [
  { value: "", text: say`complete` },
  { value: "preserved", text: say`preserved: broken there, so at least this` },
  { value: "reconstructed", text: say`reconstructed` },
] as const;

/** A feature to be looked for. */
export function featureFields(one: FeatureRow): FieldRow {
  const at = ["looked", one.key] as const;
  return {
    name: say`${one.feature}, on ${row(one.of.map((thing) => thing.text))}`,
    says: [],
    fields: [
      {
        ...line([...at, "present"], say`seen or not`),
        is: "choice",
        choices: [
          { value: "", text: say`not looked for` },
          ...(["true", "false", "unclear"] as const).map((value) => ({ value, text: sightOf(value) })),
        ],
      },
      line([...at, "text"], say`in a sentence: where, how much, in which light`),
    ],
    after: one.old.length === 0 ? null : { told: one.old.map(oldWords), fields: 1 },
  };
}

/** A picture to be taken. */
export function pictureFields(one: PictureRow): FieldRow {
  const at = ["pictures", one.key] as const;
  return {
    name: one.of.text,
    says: [one.shows],
    fields: [line([...at, "file"], say`file of the picture`), line([...at, "scale"], say`scale in it`)],
    after: null,
  };
}

/** An earlier value in a line, with who says it. */
export function oldWords({ said, by, year }: OldValue): Text {
  const who = row([...by, ...(year === null ? [] : [year])], "comma");
  return by.length === 0 && year === null ? said : say`${said} (${who})`;
}
