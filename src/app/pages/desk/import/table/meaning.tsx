import type { Meaning } from "../../../../../show/desk/grid/columns/meaning.ts";
import type { MeaningOption } from "../../../../../show/desk/import/table/told/options.ts";
import type { ColumnTold } from "../../../../../show/desk/import/table/told/told.ts";
import { fieldWord } from "../../../../words/index.ts";
import { tableWords as words } from "../../../../words/recording/tables.ts";

interface Props {
  readonly column: ColumnTold;
  readonly options: readonly MeaningOption[];
  readonly onMean: (meaning: Meaning) => void;
}

/** What a column is, to be chosen among what it can be, with the unit of figures that have none. */
export function MeaningOf({ column, options, onMean }: Props) {
  const { meaning } = column;
  const head = column.head === "" ? words.noHead : column.head;
  const unit = unitOf(meaning);
  const chosen = options.find(({ meaning: one }) => same(one, meaning));
  return (
    <span className="meaning">
      <select
        aria-label={words.meaningOf(head)}
        value={chosen?.key ?? ""}
        onChange={(event) => {
          const option = options.find(({ key }) => key === event.target.value);
          if (option) onMean(withUnit(option.meaning, unit ?? ""));
        }}
      >
        {groups.map(({ label, has }) => {
          const all = options.filter(({ meaning: one }) => has(one));
          return (
            all.length > 0 && (
              <optgroup key={label} label={label}>
                {all.map((one) => (
                  <option key={one.key} value={one.key}>
                    {meaningWords(one.meaning)}
                  </option>
                ))}
              </optgroup>
            )
          );
        })}
        <option value="nothing">{words.meanings.nothing}</option>
      </select>
      {unit !== null && (
        <label className="unit">
          {words.unit}{" "}
          <input
            type="text"
            aria-label={words.unitOf(head)}
            spellCheck={false}
            value={unit}
            onChange={(event) => onMean(withUnit(meaning, event.target.value))}
          />
        </label>
      )}
    </span>
  );
}

interface Group {
  readonly label: string;
  readonly has: (meaning: Meaning) => boolean;
}

const isOwn = (meaning: Meaning): boolean => meaning.is === "field" && meaning.field.startsWith("x-");

const groups: readonly Group[] = [
  { label: words.meanings.dimensions, has: ({ is }) => is === "dimension" },
  {
    label: words.meanings.fields,
    has: (one) => one.is === "unit" || (one.is === "field" && one.register === undefined && !isOwn(one)),
  },
  { label: words.meanings.uncertainties, has: ({ is }) => is === "uncertainty" },
  {
    label: words.meanings.registers,
    has: (one) => one.is === "number" || (one.is === "field" && one.register !== undefined),
  },
  { label: words.meanings.own, has: isOwn },
];

/** A meaning in the reader's words, without its unit. */
function meaningWords(meaning: Meaning): string {
  switch (meaning.is) {
    case "field":
      if (meaning.register !== undefined) return words.meanings.ofBy(meaning.register);
      return meaning.field.startsWith("x-") ? meaning.field : fieldWord(meaning.field);
    case "dimension":
      return meaning.dimension;
    case "uncertainty":
      return meaning.dimension === null
        ? words.meanings.uncertainty
        : words.meanings.uncertaintyOf(meaning.dimension);
    case "unit":
      return words.meanings.unit;
    case "number":
      return words.meanings.number(meaning.register);
    case "nothing":
      return words.meanings.nothing;
  }
}

/** The unit of what holds figures, empty where none is said; null of what holds none. */
function unitOf(meaning: Meaning): string | null {
  if (meaning.is === "dimension" || meaning.is === "uncertainty") return meaning.unit ?? "";
  return meaning.is === "field" && meaning.field === "value" ? (meaning.unit ?? "") : null;
}

function withUnit(meaning: Meaning, unit: string): Meaning {
  if (meaning.is === "dimension" || meaning.is === "uncertainty")
    return { ...meaning, unit: unit === "" ? null : unit };
  if (meaning.is !== "field" || meaning.field !== "value") return meaning;
  return { is: "field", field: "value", ...(unit === "" ? {} : { unit }) };
}

function same(one: Meaning, other: Meaning): boolean {
  return JSON.stringify(withUnit(one, "")) === JSON.stringify(withUnit(other, ""));
}
