import { useId } from "react";
import type { Choice } from "../../../../../show/desk/workbench/offered/choice.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  /** What the choice of nothing is called; left out where something must be chosen. */
  readonly nothing?: string;
  readonly onChosen: (value: string) => void;
  readonly hidden?: boolean;
}

/** One of several; a value that is not among them is kept and shown as it is. */
export function Chosen({ label, value, choices, nothing, onChosen, hidden }: Props) {
  const id = useId();
  const known = value === "" || choices.some((one) => one.value === value);
  return (
    <div className="chosen">
      <label htmlFor={id} className={hidden ? "unseen" : undefined}>
        {label}
      </label>
      <select id={id} dir="auto" value={value} onChange={(event) => onChosen(event.target.value)}>
        {(nothing !== undefined || value === "") && <option value="">{nothing ?? words.choose}</option>}
        {!known && <option value={value}>{value}</option>}
        {choices.map((one) => (
          <option key={one.value} value={one.value}>
            {inReadersWords(one.text)}
          </option>
        ))}
      </select>
    </div>
  );
}
