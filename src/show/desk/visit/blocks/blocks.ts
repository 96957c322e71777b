import { row, say } from "../../../../base/text/said/said.ts";
import { bases } from "../filled/who.ts";
import type { VisitSheet } from "../sheet/sheet.ts";
import type { ThingLine } from "../sheet/things.ts";
import { afterBlocks, valuesBlocks } from "./after.ts";
import { beforeBlocks } from "./before.ts";
import { heading, line, sentence } from "./block.ts";
import type { Block, Field, FieldRow } from "./block.ts";
import { featureFields, measureFields, pictureFields } from "./rows.ts";

/** A visit sheet as the pieces that any format is made of; earlier values by word only where that is asked for. */
export function visitBlocks(
  sheet: VisitSheet,
  { withValues }: { readonly withValues: boolean },
): readonly Block[] {
  const { measures, features, pictures, things } = sheet;
  return [
    { is: "title", text: sheet.title, lead: sheet.corpus },
    ...beforeBlocks(sheet),
    heading(say`On the day`),
    { is: "row", row: headFields(sheet) },
    ...(things.length > 0 ? [heading(say`The things, and their condition`)] : []),
    ...things.map((one): Block => ({ is: "row", row: conditionFields(one) })),
    ...(measures.length > 0 ? [heading(say`To measure`), ...measuring.map((one) => sentence(one))] : []),
    ...inTwo(measures, measureFields),
    ...(features.length > 0 ? [heading(say`To look for`), sentence(looking)] : []),
    ...inTwo(features, featureFields),
    ...(pictures.length > 0 ? [heading(say`Pictures to take`)] : []),
    ...pictures.map((one): Block => ({ is: "row", row: pictureFields(one) })),
    heading(say`Whatever else is seen`),
    { is: "room", lines: 8 },
    ...afterBlocks(sheet),
    ...(withValues ? valuesBlocks(sheet) : []),
  ];
}

/** Rows that an outcome asks for, then those of what is recorded besides. */
function inTwo<T extends { readonly asked: boolean }>(
  rows: readonly T[],
  fields: (row: T) => FieldRow,
): readonly Block[] {
  const [asked, besides] = [rows.filter((one) => one.asked), rows.filter((one) => !one.asked)];
  const block = (one: T): Block => ({ is: "row", row: fields(one) });
  const both = asked.length > 0 && besides.length > 0;
  return [
    ...asked.map(block),
    ...(both
      ? [sentence(say`Recorded before, and worth doing again while the thing lies there:`, true)]
      : []),
    ...besides.map(block),
  ];
}

/** How readings are repeated; the sums are GUM 4.2. */
export const measuring = [
  say`Three readings at least of each, the instrument taken off and set again between them; every reading as it comes, none left out (common practice).`,
  say`The instrument is held against a known length before and after: what is wrong with every reading alike, their scatter does not show (common practice).`,
  say`Earlier values stay hidden until the new readings are in, so that they do not lead the eye.`,
] as const;

const looking = say`That something was looked for and is not there is worth as much as that it is.`;

function headFields({ scholars, sources }: VisitSheet): FieldRow {
  const choice = (field: Field, texts: readonly string[]): Field => ({
    ...field,
    is: "choice",
    choices: texts.map((text) => ({ value: text, text: basisWords[text] ?? text })),
  });
  return {
    name: say`Who, when, with what`,
    says: [],
    fields: [
      {
        ...line(["by"], say`who looks and measures`),
        choices: scholars.map((one) => ({ value: one.id, text: one.text })),
      },
      { ...line(["on"], say`day`), is: "day" },
      choice(line(["basis"], say`what is looked at`, "autopsy"), bases),
      line(["instrument"], say`instrument`),
      line(["nearest"], say`read to the nearest`),
      {
        ...line(["from"], say`entry of the bibliography for this visit, if there is one`),
        choices: sources.map((one) => ({ value: one.id, text: one.text })),
      },
    ],
    after: null,
  };
}

/** What each basis is called where somebody looks at something. */
export const basisWords: Readonly<Record<string, ReturnType<typeof say>>> = {
  autopsy: say`the thing itself`,
  cast: say`a cast`,
  replica: say`a replica`,
  scan: say`a scan`,
  photograph: say`a photograph`,
  drawing: say`a drawing`,
  report: say`a report`,
};

function conditionFields({ id, text, numbers, heldAt }: ThingLine): FieldRow {
  return {
    name: text,
    says: [
      ...(numbers.length > 0
        ? [
            say`${row(
              numbers.map(([register, number]) => `${register} ${number}`),
              "comma",
            )}`,
          ]
        : []),
      ...(heldAt === null ? [] : [heldAt]),
    ],
    fields: [line(["conditions", id], say`condition`)],
    after: null,
  };
}
