import { useId } from "react";
import type { Text } from "../../../../../base/text/said/said.ts";
import type { Called } from "../../../../../show/artefacts/picture/page.ts";
import type { PictureTold, PictureTrouble } from "../../../../../show/artefacts/picture/asked.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Shared {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string;
  readonly trouble?: Text | null;
}

/** What is amiss with one thing that was typed; null where nothing is. */
export function troubleAt(told: PictureTold | null, at: PictureTrouble["at"]): Text | null {
  return told?.troubles.find((one) => one.at === at)?.message ?? null;
}

/** A field for a text, taken as it is typed. */
export function TextField(props: Shared & { readonly offers?: readonly string[] }) {
  const { label, value, onChange, hint, trouble = null, offers = [] } = props;
  const id = useId();
  return (
    <div className="entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        dir="auto"
        autoComplete="off"
        spellCheck={false}
        value={value}
        list={offers.length > 0 ? `${id}-offers` : undefined}
        aria-invalid={trouble !== null}
        aria-describedby={`${id}-said`}
        onChange={(event) => onChange(event.target.value)}
      />
      {offers.length > 0 && (
        <datalist id={`${id}-offers`}>
          {offers.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </datalist>
      )}
      <Beneath id={`${id}-said`} hint={hint} trouble={trouble} />
    </div>
  );
}

/** A field for one of several; with `none`, for none of them, too. */
export function ChoiceField(props: Shared & { readonly choices: readonly Called[]; readonly none?: string }) {
  const { label, value, onChange, hint, trouble = null, choices, none } = props;
  const id = useId();
  return (
    <div className="entry">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={`${id}-said`}
        onChange={(event) => onChange(event.target.value)}
      >
        {none !== undefined && <option value="">{none}</option>}
        {choices.map((one) => (
          <option key={one.id} value={one.id}>
            {inReadersWords(one.name)}
          </option>
        ))}
      </select>
      <Beneath id={`${id}-said`} hint={hint} trouble={trouble} />
    </div>
  );
}

function Beneath({
  id,
  hint,
  trouble,
}: {
  readonly id: string;
  readonly hint: string | undefined;
  readonly trouble: Text | null;
}) {
  return (
    <div className="beneath" id={id}>
      {trouble !== null && <p className="problem">{inReadersWords(trouble)}</p>}
      {hint !== undefined && hint !== "" && <p className="quiet">{hint}</p>}
    </div>
  );
}

/** One of a few, all in sight. */
export function Few<Value extends string>({
  label,
  name,
  value,
  choices,
  hidden = false,
  onChange,
}: {
  readonly label: string;
  /** The heading above it says the same. */
  readonly hidden?: boolean;
  readonly name: string;
  readonly value: Value;
  readonly choices: Readonly<Record<Value, string>>;
  readonly onChange: (value: Value) => void;
}) {
  return (
    <fieldset className="few">
      <legend className={hidden ? "unseen" : undefined}>{label}</legend>
      {(Object.keys(choices) as Value[]).map((one) => (
        <label key={one}>
          <input type="radio" name={name} checked={one === value} onChange={() => onChange(one)} />{" "}
          {choices[one]}
        </label>
      ))}
    </fieldset>
  );
}
