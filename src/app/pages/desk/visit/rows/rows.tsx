import type { Filled } from "../../../../../show/desk/visit/filled/filled.ts";
import { fieldsOf } from "../../../../../show/desk/visit/filled/filled.ts";
import type { VisitTold } from "../../../../../show/desk/visit/filled/told.ts";
import type { MeasureRow } from "../../../../../show/desk/visit/sheet/measures.ts";
import type { VisitSheet } from "../../../../../show/desk/visit/sheet/sheet.ts";
import { visitPath } from "../../../../address.ts";
import type { useAddress } from "../../../../address.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { marks } from "../../../../words/reader/marks.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";
import { useLocation } from "wouter";
import { Line } from "./field.tsx";
import { LookFor } from "./looked.tsx";
import { Measure } from "./measure.tsx";

interface Props {
  readonly sheet: VisitSheet;
  readonly filled: Filled;
  readonly told: VisitTold | null;
  readonly change: (how: (filled: Filled) => Filled) => void;
  readonly address: ReturnType<typeof useAddress>;
}

/** The things with their condition, what is measured, what is looked for, and the pictures. */
export function Rows(props: Props) {
  return (
    <>
      <Things {...props} />
      <Measures {...props} />
      <Features {...props} />
      <Pictures {...props} />
    </>
  );
}

function Things({ sheet, filled, change, address }: Props) {
  const [, go] = useLocation();
  const { asked, things, others } = sheet;
  return (
    <section>
      <h2>{words.conditions}</h2>
      <ul className="rows">
        {things.map(({ id, text, numbers, heldAt }) => (
          <li className="row" key={id}>
            <h3>
              <RecordLink id={id} text={text} asOf={address.asOf} />
            </h3>
            <p className="manner" dir="auto">
              {[...numbers.map((one) => one.join(" ")), ...(heldAt === null ? [] : [heldAt])].join(
                marks.semicolon,
              )}
            </p>
            <Line
              label={words.condition}
              value={fieldsOf(filled.conditions, id) ?? ""}
              onChange={(condition) =>
                change((now) => ({ ...now, conditions: { ...now.conditions, [id]: condition } }))
              }
            />
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <details>
          <summary>{words.others}</summary>
          <ul className="others">
            {others.map(({ id, text }) => (
              <li key={id}>
                <button type="button" onClick={() => go(visitPath({ ...asked, also: [...asked.also, id] }))}>
                  {words.add(inReadersWords(text))}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Measures({ sheet, filled, told, change, address }: Props) {
  const { measures } = sheet;
  if (measures.length === 0) return null;
  const row = (one: MeasureRow) => (
    <Measure
      key={one.key}
      row={one}
      fields={fieldsOf(filled.measured, one.key)}
      told={told ? fieldsOf(told.measured, one.key) : undefined}
      already={told?.already.includes(one.key) ?? false}
      change={(fields) => change((now) => ({ ...now, measured: { ...now.measured, [one.key]: fields } }))}
      asOf={address.asOf}
    />
  );
  const asked = measures.filter((one) => one.asked);
  const besides = measures.filter((one) => !one.asked);
  return (
    <section>
      <h2>{words.measure}</h2>
      <ul className="rows">{asked.map(row)}</ul>
      {asked.length > 0 && besides.length > 0 && <p className="label besides">{words.besides}</p>}
      <ul className="rows">{besides.map(row)}</ul>
      <details>
        <summary>{words.how}</summary>
        <ul className="formulas">
          {Object.values(words.formulas).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

function Features({ sheet, filled, told, change, address }: Props) {
  if (sheet.features.length === 0) return null;
  return (
    <section>
      <h2>{words.look}</h2>
      <ul className="rows">
        {sheet.features.map((one) => (
          <LookFor
            key={one.key}
            row={one}
            fields={fieldsOf(filled.looked, one.key)}
            already={told?.already.includes(one.key) ?? false}
            change={(fields) => change((now) => ({ ...now, looked: { ...now.looked, [one.key]: fields } }))}
            asOf={address.asOf}
          />
        ))}
      </ul>
    </section>
  );
}

function Pictures({ sheet, filled, change, address }: Props) {
  return (
    <section>
      <h2>{words.pictures}</h2>
      <p className="quiet">{words.pictureHelp}</p>
      <ul className="rows">
        {sheet.pictures.map(({ key, of, shows }) => {
          const fields = fieldsOf(filled.pictures, key) ?? { file: "", scale: "" };
          const put = (more: Partial<typeof fields>): void =>
            change((now) => ({ ...now, pictures: { ...now.pictures, [key]: { ...fields, ...more } } }));
          return (
            <li className="row" key={key}>
              <h3>
                <RecordLink {...of} asOf={address.asOf} />
              </h3>
              <p className="manner">{inReadersWords(shows)}</p>
              <div className="fields">
                <Line label={words.file} value={fields.file} onChange={(file) => put({ file })} />
                <Line label={words.scale} value={fields.scale} onChange={(scale) => put({ scale })} />
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
