import type { MeasureRow } from "../../../../../show/desk/visit/sheet/measures.ts";
import { readingsAsked, waysOf } from "../../../../../show/desk/visit/blocks/rows.ts";
import { nothingMeasured } from "../../../../../show/desk/visit/filled/filled.ts";
import type { MeasuredFields } from "../../../../../show/desk/visit/filled/filled.ts";
import type { ReadingsTold } from "../../../../../show/desk/visit/filled/readings.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";
import { Choice, Line } from "./field.tsx";
import { Earlier } from "./earlier.tsx";

interface Props {
  readonly row: MeasureRow;
  readonly fields: MeasuredFields | undefined;
  readonly told: ReadingsTold | undefined;
  /** The corpus has it already. */
  readonly already: boolean;
  readonly change: (fields: MeasuredFields) => void;
  readonly asOf: number | null;
}

/** One dimension: its readings, what they come to, and its earlier values once they are in. */
export function Measure({ row, fields = nothingMeasured, told, already, change, asOf }: Props) {
  const put = (more: Partial<MeasuredFields>): void =>
    change({ ...fields, unit: fields.unit === "" ? row.unit : fields.unit, ...more });
  const typed = fields.readings.filter((one) => one.trim() !== "");
  const shown = Math.max(readingsAsked, lastFilled(fields.readings) + 2);
  const beside = told?.troubles.filter((one) => one.at === null) ?? [];
  const isIn = typed.length >= readingsAsked && told !== undefined && told.troubles.length === 0;
  return (
    <li className="row measure">
      <h3>
        <bdi>{row.dimension}</bdi> <RecordLink {...row.of} asOf={asOf} />
      </h3>
      {waysOf(row)
        .map(inReadersWords)
        .map((one) => (
          <p className="manner" dir="auto" key={one}>
            {one}
          </p>
        ))}
      <div className="fields">
        {Array.from({ length: shown }, (_, at) => {
          const trouble = told?.troubles.find((one) => one.at === at);
          const { fix = null } = trouble ?? {};
          const reading = (text: string): void => put({ readings: replaced(fields.readings, at, text) });
          return (
            <Line
              key={at}
              className="one-reading"
              label={words.reading(at + 1)}
              value={fields.readings[at] ?? ""}
              inputMode="decimal"
              onChange={reading}
              trouble={
                trouble && (
                  <>
                    {inReadersWords(trouble.message)}
                    {fix !== null && (
                      <button
                        type="button"
                        onClick={(event) => {
                          // It goes with what was wrong: the focus goes on in the field that it mends.
                          const line = event.currentTarget.closest(".one-reading");
                          line?.querySelector("input")?.focus();
                          reading(fix);
                        }}
                      >
                        {words.put(fix)}
                      </button>
                    )}
                  </>
                )
              }
            />
          );
        })}
        {row.units.length > 0 && (
          <Choice
            label={words.unit}
            value={fields.unit === "" ? row.unit : fields.unit}
            choices={row.units.map((unit) => [unit, unit])}
            onChange={(unit) => put({ unit })}
          />
        )}
      </div>
      <Sums told={told} already={already} />
      {beside.map(({ message }, at) => (
        <p className="trouble-said" role="alert" key={at}>
          {inReadersWords(message)}
        </p>
      ))}
      <details>
        <summary>{words.more}</summary>
        <div className="fields">
          <Line
            label={words.between}
            value={fields.between ?? row.between}
            onChange={(between) => put({ between })}
          />
          <Line
            label={words.instrument}
            value={fields.instrument}
            onChange={(instrument) => put({ instrument })}
          />
          <Line label={words.nearest} value={fields.nearest} onChange={(nearest) => put({ nearest })} />
          <Choice
            label={words.state}
            value={fields.state}
            choices={Object.entries(words.states)}
            onChange={(state) => put({ state })}
          />
          <Line label={words.note} value={fields.note} onChange={(note) => put({ note })} />
        </div>
      </details>
      <Earlier
        old={row.old}
        title={words.old}
        show={words.showOld}
        shown={isIn || fields.seen}
        onShow={() => put({ seen: true })}
        asOf={asOf}
      />
    </li>
  );
}

/** The mean of what was read, with its uncertainty, as it will be written down. */
function Sums({ told, already }: Pick<Props, "told" | "already">) {
  const value = told?.value ?? null;
  const summary = told?.summary ?? null;
  return (
    <output className="sums">
      {summary !== null && (
        <>
          <bdi>{words.sums(summary)}</bdi>; <bdi>{words.combined(summary.u, summary.half, summary.t)}</bdi>
          .{" "}
        </>
      )}
      {value !== null && (
        <>
          {words.written} <strong dir="ltr">{value}</strong>.{" "}
        </>
      )}
      {already && words.already}
    </output>
  );
}

function lastFilled(readings: readonly string[]): number {
  return readings.findLastIndex((one) => one.trim() !== "");
}

function replaced(readings: readonly string[], at: number, text: string): readonly string[] {
  const length = Math.max(readings.length, at + 1);
  return Array.from({ length }, (_, place) => (place === at ? text : (readings[place] ?? "")));
}
