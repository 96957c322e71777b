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
