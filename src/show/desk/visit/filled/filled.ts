import * as z from "zod";

/** A text as it was typed, without signs that nobody types: they mean something inside the program. */
const text = z
  .string()
  .transform((said) => said.replace(/[\p{Cc}\p{Cs}]/gu, (sign) => (/\s/.test(sign) ? sign : "")));

/** What was written for one dimension of one thing; every text as it was typed. */
const measured = z.object({
  readings: z.array(text).default([]),
  /** For figures that have no unit of their own. */
  unit: text.default(""),
  between: text.optional(),
  instrument: text.default(""),
  nearest: text.default(""),
  state: text.default(""),
  note: text.default(""),
  /** Earlier values were looked at before all readings were taken. */
  seen: z.boolean().default(false),
});

const looked = z.object({
  present: z.enum(["", "true", "false", "unclear"]).default(""),
  text: text.default(""),
  /** What others had seen was looked at before. */
  seen: z.boolean().default(false),
});

const picture = z.object({ file: text.default(""), scale: text.default("") });

const filled = z.object({
  by: text.default(""),
  /** The day: `2026-05-04`. */
  on: text.default(""),
  from: text.default(""),
  basis: text.default(""),
  instrument: text.default(""),
  nearest: text.default(""),
  conditions: z.record(z.string(), text).default({}),
  measured: z.record(z.string(), measured).default({}),
  looked: z.record(z.string(), looked).default({}),
  pictures: z.record(z.string(), picture).default({}),
  /** Examinations with the outcome that was found. */
  found: z.record(z.string(), text).default({}),
});

type Frozen<T> = { readonly [K in keyof T]: T[K] extends object ? Frozen<T[K]> : T[K] };

/** What was written on the sheet of a visit, by the keys of its rows. */
export type Filled = Frozen<z.infer<typeof filled>>;
/** What was written for one dimension of one thing. */
export type MeasuredFields = Filled["measured"][string];
/** What was written for one feature. */
export type LookedFields = Filled["looked"][string];

/** A sheet on which nothing is written. */
export const nothingFilled: Filled = filled.parse({});
/** A row for a dimension in which nothing is written. */
export const nothingMeasured: MeasuredFields = measured.parse({});
/** A row for a feature in which nothing is written. */
export const nothingLooked: LookedFields = looked.parse({});

/** What was filled in, from a draft or a file that may be anybody's; null for anything else. */
export function filledIn(value: unknown): Filled | null {
  const read = filled.safeParse(value);
  return read.success ? read.data : null;
}

/** A row's own fields among all; never what an object has of itself. */
export function fieldsOf<T>(all: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(all, key) ? all[key] : undefined;
}

/** Whether anything was read in a row. */
export function isTouched({ readings }: MeasuredFields): boolean {
  return readings.some((one) => one.trim() !== "");
}

/** What the instrument of a row was read to: by its own word, else by that of the head; a bare figure has the row's unit. */
export function nearestOf(fields: MeasuredFields, filled: Filled): string {
  const said = (fields.nearest.trim() === "" ? filled.nearest : fields.nearest).trim();
  return /^[\d.,]+$/.test(said) && fields.unit !== "" ? `${said} ${fields.unit}` : said;
}
