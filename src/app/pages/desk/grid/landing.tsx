import { useLayoutEffect, useRef, useState } from "react";
import type { Meaning } from "../../../../show/desk/grid/columns/meaning.ts";
import type { Coming, Landing } from "../../../../show/desk/grid/landing.ts";
import { gridWords as words } from "../../../words/recording/grid.ts";
import { marks } from "../../../words/reader/marks.ts";
import { columnWord } from "./table/rows.tsx";

interface Props {
  readonly landing: Landing;
  /** Columns that a grid may have. */
  readonly fields: readonly string[];
  readonly onChange: (landing: Landing) => void;
  readonly onHead: (head: boolean) => void;
  readonly onPut: () => void;
  readonly onLeave: () => void;
}

/** How many lines of what is pasted are shown before it is put in. */
const shownLines = 3;

/** What was pasted before it is put in: what becomes of each column, and what the comma is. */
export function LandingPart({ landing, fields, onChange, onHead, onPut, onLeave }: Props) {
  const { block, head, columns, commas, decimal } = landing;
  const body = head ? block.slice(1) : block;
  const own = useRef<HTMLFormElement>(null);
  const undecided = commas.length > 0 && decimal === null;
  const [asked, setAsked] = useState(false);
  const leave = useRef(onLeave);
  useLayoutEffect(() => {
    leave.current = onLeave;
  });
  useLayoutEffect(() => {
    const { current } = own;
    current?.querySelector<HTMLElement>("input, select, button")?.focus();
    current?.scrollIntoView({ block: "nearest" });
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === "Enter" && event.target instanceof HTMLSelectElement) current?.requestSubmit();
      else if (event.key === "Escape") leave.current();
      else return;
      event.preventDefault();
    };
    current?.addEventListener("keydown", onKey);
    return () => current?.removeEventListener("keydown", onKey);
  }, []);
  const put = (place: number, coming: Partial<Coming>): void =>
    onChange({
      ...landing,
      columns: columns.map((one, at) => (at === place ? { ...one, ...coming, unsure: false } : one)),
    });
  return (
    <form
      ref={own}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!undecided) return onPut();
        setAsked(true);
        own.current?.querySelector<HTMLElement>(".commas input")?.focus();
      }}
    >
      <fieldset className="landing">
        <legend>{words.landing}</legend>
        <p>{words.landingRows(body.length, columns.length)}</p>
        {block.length > 1 && (
          <label className="tick">
            <input type="checkbox" checked={head} onChange={(event) => onHead(event.target.checked)} />
            {words.headLine}
          </label>
        )}
        {commas.length > 0 && <Commas landing={landing} onChange={onChange} />}
        {undecided && asked && <p role="alert">{words.commaAsked}</p>}
        <div className="matching">
          <table>
            <thead>
              <tr>
                {head && <th scope="col">{words.becomesHead}</th>}
                <th scope="col">{words.becomesFirst}</th>
                <th scope="col">{words.becomesIs}</th>
                <th scope="col">{words.becomesUnit}</th>
              </tr>
            </thead>
            <tbody>
              {columns.map((coming, place) => (
                <ColumnLine
                  key={place}
                  coming={coming}
                  place={place}
                  head={head}
                  samples={body.slice(0, shownLines).map((line) => line[place] ?? "")}
                  options={optionsFor(columns, place, fields)}
                  onChange={(next) => put(place, next)}
                />
              ))}
            </tbody>
          </table>
        </div>
        <p className="does">
          <button type="submit" className="main">
            {words.put}
          </button>
          <button type="button" onClick={onLeave}>
            {words.leave}
          </button>
        </p>
      </fieldset>
    </form>
  );
}

function Commas({ landing, onChange }: Pick<Props, "landing" | "onChange">) {
  const choices = [
    ["comma", words.commaDecimal],
    ["point", words.commaStays],
  ] as const;
  return (
    <div className="commas" role="radiogroup" aria-labelledby="grid-commas">
      <p id="grid-commas">
        {words.commas}{" "}
        {landing.commas.map(([written, read], place) => (
          <bdi key={written} className="figures">
            {place > 0 && marks.semicolon}
            {written === read ? written : words.asRead(written, read)}
          </bdi>
        ))}
      </p>
      {choices.map(([decimal, name]) => (
        <label className="tick" key={decimal}>
          <input
            type="radio"
            name="grid-decimal"
            checked={landing.decimal === decimal}
            onChange={() => onChange({ ...landing, decimal })}
          />
          {name}
        </label>
      ))}
    </div>
  );
}

interface LineProps {
  readonly coming: Coming;
  readonly place: number;
  readonly head: boolean;
  readonly samples: readonly string[];
  readonly options: readonly Meaning[];
  readonly onChange: (coming: Partial<Coming>) => void;
}

function ColumnLine({ coming, place, head, samples, options, onChange }: LineProps) {
  const { meaning, unsure } = coming;
  const chosen = options.findIndex((one) => sameMeaning(one, meaning));
  const name = head ? words.becomes(coming.head) : words.becomesNth(place + 1);
  return (
    <tr>
      {head && (
        <th scope="row" dir="auto">
          {coming.head}
        </th>
      )}
      <td dir="auto" className="samples">
        {samples.filter((one) => one !== "").join(" · ")}
      </td>
      <td>
        <select
          aria-label={name}
          value={chosen}
          onChange={(event) => {
            const next = options[Number(event.target.value)];
            if (next) onChange({ meaning: withUnit(next, unitIn(meaning)) });
          }}
        >
          {options.map((one, at) => (
            <option key={at} value={at}>
              {meaningWord(one, coming.head)}
            </option>
          ))}
        </select>
        {unsure && <span className="quiet"> {words.lookAt}</span>}
      </td>
      <td className="of-unit">
        {takesUnit(meaning) && (
          <span className="quiet" aria-hidden="true">
            {words.becomesUnit}
          </span>
        )}
        {takesUnit(meaning) && (
          <input
            type="text"
            className="unit"
            dir="ltr"
            autoComplete="off"
            spellCheck={false}
            aria-label={words.unitOf(head ? coming.head : String(place + 1))}
            value={unitIn(meaning) ?? ""}
            onChange={(event) =>
              onChange({
                meaning: withUnit(meaning, event.target.value.trim() === "" ? null : event.target.value),
              })
            }
          />
        )}
      </td>
    </tr>
  );
}

/** What a column may become: what it is taken for, left out, a field, figures of a dimension, their uncertainty or unit. */
function optionsFor(
  columns: readonly Coming[],
  place: number,
  fields: readonly string[],
): readonly Meaning[] {
  const own = columns[place];
  const dimensions = columns.flatMap(({ meaning }) =>
    meaning.is === "dimension" ? [meaning.dimension] : [],
  );
  const all: readonly Meaning[] = [
    { is: "nothing" },
    ...fields.map((field): Meaning => ({ is: "field", field })),
    ...(own && own.head !== ""
      ? [{ is: "dimension", dimension: own.head, unit: null } satisfies Meaning]
      : []),
    { is: "uncertainty", dimension: null, unit: null },
    ...dimensions.map((dimension): Meaning => ({ is: "uncertainty", dimension, unit: null })),
    { is: "unit" },
  ];
  return own && !all.some((one) => sameMeaning(one, own.meaning)) ? [own.meaning, ...all] : all;
}

function sameMeaning(a: Meaning, b: Meaning): boolean {
  const bare = (one: Meaning): string =>
    one.is === "field"
      ? `field ${one.field}`
      : one.is === "dimension" || one.is === "uncertainty"
        ? `${one.is} ${one.dimension ?? ""}`
        : one.is === "number"
          ? `number ${one.register}`
          : one.is;
  return bare(a) === bare(b);
}

function meaningWord(meaning: Meaning, head: string): string {
  switch (meaning.is) {
    case "nothing":
      return words.leaveOut;
    case "field":
      return words.fieldIs(columnWord(meaning.field));
    case "dimension":
      return meaning.dimension === head ? words.newDimension(head) : words.dimensionIs(meaning.dimension);
    case "uncertainty":
      return words.uncertaintyIs(meaning.dimension);
    case "unit":
      return words.unitIs;
    case "number":
      return words.numberIs(meaning.register);
  }
}

function takesUnit(meaning: Meaning): boolean {
  if (meaning.is === "field") return meaning.field === "value";
  return meaning.is === "dimension" || meaning.is === "uncertainty";
}

function unitIn(meaning: Meaning): string | null {
  if (meaning.is === "dimension" || meaning.is === "uncertainty") return meaning.unit;
  return meaning.is === "field" ? (meaning.unit ?? null) : null;
}

function withUnit(meaning: Meaning, unit: string | null): Meaning {
  if (meaning.is === "dimension" || meaning.is === "uncertainty") return { ...meaning, unit };
  if (meaning.is !== "field" || meaning.field !== "value") return meaning;
  return unit === null ? { is: "field", field: "value" } : { ...meaning, unit };
}
