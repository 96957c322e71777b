import * as z from "zod";

const id = z.string();
const standing = z.enum(["stands", "open", "falls", "unsupported"]);
const edit = z.strictObject({ file: z.string(), start: z.int(), end: z.int(), text: z.string() });
const number = z.strictObject({
  value: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  unit: z.string(),
});

const fate = z.enum(["stands", "open", "falls"]);
const fits = z
  .array(
    z.strictObject({
      scholar: id,
      positions: z.int().describe("How many of the scholar's latest positions were looked at."),
      but: z
        .strictObject({
          claim: id,
          stance: z.enum(["holds", "rejects"]),
          standing: standing
            .nullable()
            .describe("How the claim stands there; null where that was not asked."),
        })
        .nullable()
        .describe("The one position that does not fit; null where all do."),
    }),
  )
  .describe("Scholars whose latest positions fit wholly, or all but one.");
const unknown = z.array(id).describe("Scholars of whom the effort did not suffice to tell.");
const count = z.string().regex(/^[1-9][0-9]*$/);
const acceptance = { inAll: z.boolean().nullable(), inSome: z.boolean().nullable() };
const component = z.strictObject({
  about: z.array(
    z.strictObject({
      kind: z.enum(["rivals", "for-and-against", "evidence", "attack", "against-itself", "withheld"]),
      between: z.array(id),
    }),
  ),
  count: count.describe("Ways to decide it; at least so many where not exact."),
  exact: z.boolean(),
  claims: z.record(
    id,
    z
      .strictObject(acceptance)
      .describe("Whether it holds in all standpoints, and in some; null where the effort did not suffice."),
  ),
  alternatives: z
    .array(
      z.strictObject({
        ways: z.int().describe("Above 1 where only what is withheld tells them apart."),
        toldBy: z.record(id, fate).describe("The fewest things that tell it from its rivals."),
        stands: z.array(id),
        open: z.array(id),
        falls: z.array(id),
        fits,
      }),
    )
    .describe("None where there are more than 1,000 ways."),
  fits: fits.describe("Where the alternatives are not laid out: scholars whom one of them fits."),
  unknown,
});

const step = z.strictObject({
  year: z
    .int()
    .nullable()
    .describe("Astronomical year; null at the end for what the corpus adds itself and has no year."),
  publications: z.array(
    z.strictObject({
      source: id
        .nullable()
        .describe("Null for dated records that come from no source, or from one that is withheld."),
      brought: z.record(z.string(), z.int()).describe("How many records of each list."),
    }),
  ),
  changes: z
    .record(id, z.tuple([standing.nullable(), standing]))
    .describe("Claims, from and to; from null where the claim is named for the first time."),
});

/** What `--json` prints: one document in which all keys are always there. */
export const reportSchema = z
  .strictObject({
    format: z.literal(1),
    title: z.string(),
    asOf: z.int().nullable().describe("Astronomical year: 480 BC is -479."),
    counts: z.record(z.string(), z.int()).describe("How many of each list, and sources, were loaded."),
    standings: z.record(
      id,
      z.strictObject({
        standing,
        footing: z.enum(["observed", "silent", "attested", "bare"]).optional().describe("Of claims."),
        restsOn: z.array(id).optional().describe("Of claims that answer a question; of all with --rests-on."),
      }),
    ),
    questions: z.record(id, z.strictObject({ exclusive: z.boolean(), answers: z.record(id, standing) })),
    numbers: z.record(
      id,
      z.strictObject({
        status: z.enum(["computed", "refused", "failed", "withheld", "pending"]),
        why: z.string().nullable(),
        used: z.array(id),
        leftOut: z.array(z.strictObject({ id, why: z.string() })),
        numbers: z.record(z.string(), number).describe("In SI; unit is 1 for pure numbers."),
        bearsOn: z.record(id, z.enum(["supports", "disputes", "inconclusive"])),
      }),
    ),
    findings: z.array(
      z.strictObject({
        rule: z.string(),
        level: z.enum(["error", "warning", "note"]),
        about: z.array(id),
        message: z.string(),
        at: z
          .strictObject({
            file: z.string(),
            line: z.int(),
            column: z.int(),
            endLine: z.int(),
            endColumn: z.int(),
          })
          .nullable()
          .describe("Counted from 1, columns in UTF-16 units."),
        fix: z.strictObject({ label: z.string(), edits: z.array(edit) }).nullable(),
        accepted: z.string().nullable(),
      }),
    ),
    standpoints: z
      .strictObject({
        count: count.describe(
          "Of coherent standpoints, by multiplication; at least so many where not exact.",
        ),
        exact: z.boolean(),
        components: z.array(component),
        joint: z
          .record(id, z.strictObject({ on: z.array(z.int()), ...acceptance }))
          .describe("Claims that hang on several components, whose places count from 0."),
        fits,
        unknown,
      })
      .nullable()
      .describe("With --standpoints, else null."),
    history: z.array(step).nullable().describe("With --history, by year of print, else null."),
    plan: z.array(
      z.strictObject({
        examination: id,
        decides: z.array(id),
        changes: z.int(),
        outcomes: z.record(id, z.record(id, z.tuple([standing, standing]))),
        cost: z.number().nullable(),
        gain: z.number().nullable(),
        idle: z.boolean(),
      }),
    ),
  })
  .meta({ title: "Variorum report", description: "The machine-readable result of a check." });

/** The report as a type. */
export type Report = z.output<typeof reportSchema>;
