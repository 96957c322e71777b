import * as z from "zod";
import { isSteering, onOneLine } from "../../base/text/steering.ts";
import type { Computation, Plugin, Refusal } from "../../plugin.ts";

/** A text of a stranger of at most so many signs, none of which steers anything. */
export const clean = (most: number): z.ZodString =>
  z
    .string()
    .max(most)
    .refine((text) => !isSteering(text), "expected no control characters");
/** A line, and a paragraph, of a stranger's. */
export const line = clean(300);
export const prose = clean(4000);
const written = z.string().max(20_000);
const word = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "expected small letters, digits and hyphens")
  // Looked up among what a record gives, a name that every object has would be found there always.
  .refine((name) => !(name in {}), "expected another name");
const few = <T extends z.ZodType>(one: T): z.ZodArray<T> => z.array(one).max(40);

const input = z.object({
  name: word.refine((name) => name !== "pairs", "expected another name than `pairs`"),
  kind: z.enum(["measurements", "observations", "dates", "number"]),
  doc: prose,
  optional: z.boolean().optional(),
  pairedWith: word.optional(),
  takesBounds: z.boolean().optional(),
  takesObservations: z.boolean().optional(),
  takesAlong: word.optional(),
});
const parameter = z.object({
  name: word,
  kind: z.enum(["number", "quantity", "text", "choice", "unit"]),
  doc: prose,
  choices: few(line).optional(),
  default: line.optional(),
});
const number = z.object({
  name: word,
  kind: z.enum(["probability", "chance", "count", "number", "input"]),
  doc: prose,
});

/** What a plug-in says of itself, as data, and which of its functions are there. */
export const aboutSchema = z
  .object({
    id: word,
    version: line,
    title: line,
    doc: prose,
    sources: few(prose).default([]),
    inputs: few(input).min(1),
    parameters: few(parameter).default([]),
    numbers: few(number).min(1),
    cautions: few(z.object({ id: word, text: prose, whenMet: z.literal(true).optional() })).default([]),
    examples: few(
      z.object({
        title: line,
        source: prose,
        files: z.record(line, written),
        derivation: line,
        expected: z.record(word, z.object({ value: z.number(), tolerance: z.number() })),
      }),
    ).default([]),
    compute: z.literal("function"),
    figure: z.enum(["function", "undefined"]),
    sentence: z.literal("function"),
  })
  .superRefine(({ inputs, parameters, numbers, cautions }, context) => {
    const wrong = (path: string, message: string): void =>
      context.addIssue({ code: "custom", path: [path], message });
    for (const [path, names] of Object.entries({
      inputs: inputs.map((one) => one.name),
      parameters: parameters.map((one) => one.name),
      numbers: numbers.map((one) => one.name),
      cautions: cautions.map((one) => one.id),
    }))
      if (new Set(names).size < names.length) wrong(path, "expected each name once");
    for (const { name, pairedWith, takesAlong } of inputs) {
      const pairs = inputs.some((one) => one.name === pairedWith && one.name !== name);
      if (pairedWith !== undefined && !pairs) wrong("inputs", "expected another input in `pairedWith`");
      const along = parameters.some((one) => one.name === takesAlong);
      if (takesAlong !== undefined && !along) wrong("inputs", "expected a parameter in `takesAlong`");
    }
  });

/** What a plug-in says of itself, after checking. */
export type Declarations = Pick<
  Plugin,
  | "id"
  | "version"
  | "title"
  | "doc"
  | "sources"
  | "inputs"
  | "parameters"
  | "numbers"
  | "cautions"
  | "examples"
> & { readonly figure: "function" | "undefined" };

const refusal = z.object({
  refused: word,
  message: prose,
  details: z.record(word, z.number()).default({}),
});
/** The largest size, either way, of a number that a guest may give: what is computed on it stays finite. */
export const largest = 1e100;
const kept = z.number().min(-largest).max(largest);
/** What a number of each kind may be; an end of its interval may be anything finite. */
const values: Readonly<Record<z.output<typeof number>["kind"], z.ZodNumber>> = {
  probability: kept.min(0).max(1),
  chance: kept.min(0).max(1),
  count: kept.min(0),
  number: kept,
  input: kept,
};
const end = kept.nullable();
const computed = (kind: keyof typeof values): z.ZodType =>
  z
    .object({ value: values[kind], low: end, high: end })
    .refine(
      ({ low, high }) => low === null || high === null || low <= high,
      "expected `low` not above `high`",
    );

/** A result as far as it keeps to what was declared: known numbers, known warnings, nothing left out that was not given. */
export function resultIn(
  given: unknown,
  about: Declarations,
  ids: ReadonlySet<string>,
): { readonly result: Refusal | Omit<Computation, "data"> } | { readonly trouble: string } {
  const isRefusal = typeof given === "object" && given !== null && "refused" in given;
  const read = readAs(isRefusal ? refusal : computationOf(about, ids), given);
  return "trouble" in read ? read : { result: read.made as Refusal | Omit<Computation, "data"> };
}

function computationOf(about: Declarations, ids: ReadonlySet<string>): z.ZodType {
  const numbers = about.numbers.map(({ name, kind }) => [name, computed(kind).optional()] as const);
  const warnings = about.cautions.map((one) => one.id);
  return z.object({
    numbers: z
      .strictObject(Object.fromEntries(numbers))
      .refine((numbers) => Object.values(numbers).some((one) => one !== undefined), "expected a number"),
    leftOut: z
      .array(
        z.object({
          id: z.string().refine((id) => ids.has(id), "expected an id of an input"),
          why: line,
        }),
      )
      .max(100_000)
      .default([]),
    warnings: few(z.enum(warnings)).default([]),
  });
}

/** What a guest prints of its result. */
export const sentenceSchema = prose.min(1);

/** What a guest gave, as it is expected; or the first thing that is wrong with it, in words. */
export function readAs<T extends z.ZodType>(
  expected: T,
  given: unknown,
): { readonly made: z.output<T> } | { readonly trouble: string } {
  try {
    const read = expected.safeParse(given);
    return read.success ? { made: read.data } : { trouble: wrongIn(read.error) };
  } catch (error) {
    // More that is wrong than there is room to tell.
    if (error instanceof RangeError) return { trouble: "too much in it that is not expected" };
    throw error;
  }
}

/** The first thing that is wrong, in words: where, and what was expected there. */
function wrongIn(error: z.ZodError): string {
  const issue = error.issues[0];
  const at = (issue?.path ?? []).map(String).join(".");
  const where = tidy(at) === "" ? "" : `\`${tidy(at).slice(0, 80)}\`: `;
  return `${where}${tidy(issue?.message ?? "")
    .replace(/^Invalid input: /, "")
    .slice(0, 200)}`;
}

/** A stranger's words on one line that steers nothing, with an end. */
export function tidy(text: string): string {
  return onOneLine(text).slice(0, 300);
}
