import type { TableChoices, TablePage } from "../../../../../show/desk/import/table/told/page.ts";
import { fieldWord } from "../../../../words/index.ts";
import { tableWords as words } from "../../../../words/recording/tables.ts";

interface Props {
  readonly name: string;
  readonly page: TablePage;
  readonly chosen: TableChoices;
  readonly onChoose: (chosen: TableChoices) => void;
}

/** Fields that are often the same in every row of a table, and stand in none. */
const often = {
  measurements: ["from", "by", "year", "instrument"],
  artefacts: ["part-of", "material", "held-at"],
} as const;

/** What holds for a whole table: what its rows are, how figures are written, and what every row gets. */
export function TableSettings({ name, page, chosen, onChoose }: Props) {
  const written = page.commas + page.points > 0;
  const said = page.columns.flatMap(({ meaning }) => (meaning.is === "field" ? [meaning.field] : []));
  const fields = often[page.list].filter((field) => !said.includes(field) || chosen.all[field] !== undefined);
  return (
    <div className="table-settings">
      <Ways
        legend={words.rowsAre}
        name={`${name} list`}
        ways={[
          ["measurements", words.lists.measurements],
          ["artefacts", words.lists.artefacts],
        ]}
        value={page.list}
        onChange={(list) => onChoose({ ...chosen, list, meanings: [], choices: [] })}
      />
      {written && page.list === "measurements" && (
        <Ways
          legend={words.sign}
          name={`${name} sign`}
          ways={[
            ["point", words.signs.point],
            ["comma", words.signs.comma],
          ]}
          value={chosen.decimal}
          onChange={(decimal) => onChoose({ ...chosen, decimal })}
        />
      )}
      {page.commas > 0 && page.list === "measurements" && chosen.decimal === "point" && (
        <p className="quiet">{words.commas(page.commas)}</p>
      )}
      <fieldset className="all-rows">
        <legend>{words.all}</legend>
        {fields.map((field) => (
          <label key={field}>
            <span>{fieldWord(field)}</span>
            <input
              type="text"
              dir="auto"
              value={chosen.all[field] ?? ""}
              onChange={(event) => {
                const { [field]: _, ...others } = chosen.all;
                const { value } = event.target;
                onChoose({ ...chosen, all: value === "" ? others : { ...others, [field]: value } });
              }}
            />
          </label>
        ))}
      </fieldset>
    </div>
  );
}

/** One of a few ways, each with its words. */
export function Ways<Way extends string>({
  legend,
  name,
  ways,
  value,
  onChange,
}: {
  readonly legend: string;
  readonly name: string;
  readonly ways: readonly (readonly [way: Way, text: string])[];
  readonly value: Way;
  readonly onChange: (way: Way) => void;
}) {
  return (
    <fieldset className="ways">
      <legend>{legend}</legend>
      {ways.map(([way, text]) => (
        <label key={way}>
          <input type="radio" name={name} checked={value === way} onChange={() => onChange(way)} />
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  );
}
