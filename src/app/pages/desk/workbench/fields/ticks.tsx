import { choiceName } from "../../../../../read/grammar/field-words.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly label: string;
  readonly values: readonly string[];
  readonly choices: readonly string[];
  readonly named?: Readonly<Record<string, string>>;
  readonly onChange: (values: readonly string[]) => void;
}

/** Any of a few, each with a box to tick; none ticked means all. */
export function Ticks({ label, values, choices, named = {}, onChange }: Props) {
  const all = [...new Set([...choices, ...values])];
  if (all.length === 0) return null;
  return (
    <fieldset className="ticks">
      <legend className="field-label">{label}</legend>
      {all.map((one) => (
        <label key={one}>
          <input
            type="checkbox"
            checked={values.includes(one)}
            onChange={(event) =>
              onChange(event.target.checked ? [...values, one] : values.filter((other) => other !== one))
            }
          />
          {named[one] ?? choiceShown(one)}
        </label>
      ))}
    </fieldset>
  );
}

/** A choice in the reader's words; one of the corpus's own as it is written. */
function choiceShown(value: string): string {
  const name = choiceName(value);
  return typeof name === "string" ? value : inReadersWords(name);
}
