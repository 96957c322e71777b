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

const rivals = z.tuple([id, id]);
const examined = z.strictObject({
  examination: id,
  decides: z.array(id).describe("Answers that an outcome would make stand or fall."),
  changes: z.int().describe("How many claims change in at least one outcome."),
  outcomes: z
    .record(id, z.record(id, z.tuple([standing, standing])))
    .describe("By outcome, the standings it would change, from and to."),
  cost: z.number().nullable(),
  gain: z.number().nullable().describe("Expected, in bits, about the question it tells most of."),
  idle: z.boolean().describe("No claim stands differently between its outcomes."),
});

const withheldOr = id.nullable().describe("Null for something withheld.");
const lossSets = z
  .array(z.array(withheldOr))
  .describe(
    "With --rests-on, of claims that answer a question and stand: the sets of at most three losses that end each, none of which could be spared.",
  );
const lines = z
  .strictObject({
    count: z
      .int()
      .describe("Lines that share nothing but the claim: the most there can be, not how safe it is."),
    paths: z.array(z.array(withheldOr)).describe("Each from the thing or the report up to the claim."),
    through: z.array(withheldOr).describe("What every line passes through."),
    circles: z.array(z.array(withheldOr)).describe("Claims that hold each other up in a circle."),
  })
  .describe("With --rests-on, of claims that answer a question and stand.");

/** What `--json` prints: one document in which all keys are always there. */
export const reportSchema = z
  .strictObject({
    format: z.literal(1),
    title: z.string(),
    asOf: z.int().nullable().describe("Astronomical year: 480 BC is -479."),
    supposed: z
      .strictObject({ examination: id, outcome: id })
      .nullable()
      .describe("With --suppose, the outcome that is taken as found, else null."),
    counts: z.record(z.string(), z.int()).describe("How many of each list, and sources, were loaded."),
    standings: z.record(
      id,
      z.strictObject({
        standing,
        footing: z.enum(["observed", "silent", "attested", "bare"]).optional().describe("Of claims."),
        restsOn: z.array(id).optional().describe("Of claims that answer a question; of all with --rests-on."),
        lossSets: lossSets.optional(),
        lossSetsUpTo: z
          .int()
          .optional()
          .describe("The size up to which these are all the sets there are; 3 but where there are too many."),
        lines: lines.optional(),
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
    plan: z.array(examined).describe("The examinations of the record, ranked; empty unless asked for."),
    proposed: z
      .array(examined)
      .describe("Examinations that the record suggests, ranked among themselves; empty unless asked for."),
    trips: z
      .array(
        z.strictObject({
          keeper: z.string().nullable().describe("Null where the record names nobody to ask."),
          examinations: z.array(id),
          cost: z.number().nullable(),
          permits: z.array(z.string()),
          leadTimes: z.array(z.string()).describe("The longest first."),
          together: z
            .strictObject({ question: id, examinations: z.array(id), bits: z.number(), sum: z.number() })
            .nullable()
            .describe("What they are expected to tell of one question together, in bits."),
        }),
      )
      .describe("The examinations of the record by keeper; empty unless asked for."),
    contest: z
      .strictObject({
        pairs: z.array(z.strictObject({ answers: rivals, by: z.array(id) })),
        set: z.array(id).describe("The fewest, by cost, that separate every pair that any separates."),
        nearMinimal: z.boolean(),
        undecidedPairs: z.array(z.strictObject({ answers: rivals, proposed: z.array(id) })),
        undecidedAnswers: z.array(z.strictObject({ answer: id, proposed: z.array(id) })),
      })
      .nullable()
      .describe("Rival answers and what separates them; null unless a plan is asked for."),
  })
  .meta({ title: "Variorum report", description: "The machine-readable result of a check." });

/** The report as a type. */
export type Report = z.output<typeof reportSchema>;
