import { useId, useRef, useState } from "react";
import type { Choice } from "../../../../../show/desk/workbench/offered/choice.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly label: string;
  readonly values: readonly string[];
  readonly choices: readonly Choice[];
  readonly onChange: (values: readonly string[]) => void;
  /** Their order says something. */
  readonly ordered?: boolean;
}

/** Several in a row, each to be taken away, and a choice of further ones; adding is a step of its own. */
export function Several({ label, values, choices, onChange, ordered = false }: Props) {
  const id = useId();
  const [next, setNext] = useState("");
  const adder = useRef<HTMLSelectElement>(null);
  const textOf = (value: string): string =>
    inReadersWords(choices.find((one) => one.value === value)?.text ?? value);
  const left = choices.filter((one) => !values.includes(one.value));
  const chosen = left.some((one) => one.value === next) ? next : "";
  const add = (): void => {
    if (chosen !== "") onChange([...values, chosen]);
    setNext("");
    adder.current?.focus();
  };
  const change = (after: readonly string[]): void => {
    onChange(after);
    adder.current?.focus();
  };
  return (
    <div className="several">
      <p className="field-label" id={`${id}-label`}>
        {label}
      </p>
      {values.length > 0 && (
        <ul aria-labelledby={`${id}-label`}>
          {values.map((value, place) => (
            <li key={value}>
              <span dir="auto">{textOf(value)}</span>
              {ordered && place > 0 && (
                <button
                  type="button"
                  aria-label={words.up(textOf(value))}
                  onClick={() => change(values.toSpliced(place, 1).toSpliced(place - 1, 0, value))}
                >
                  {words.upShort}
                </button>
              )}
              <button
                type="button"
                aria-label={words.takeAway(textOf(value))}
                onClick={() => change(values.toSpliced(place, 1))}
              >
                {words.awayShort}
              </button>
            </li>
          ))}
        </ul>
      )}
      {left.length > 0 && (
        <div className="adder">
          <select
            ref={adder}
            aria-labelledby={`${id}-label`}
            dir="auto"
            value={chosen}
            onChange={(event) => setNext(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === "Enter" && chosen !== "") {
                event.preventDefault();
                add();
              }
            }}
          >
            <option value="">{words.choose}</option>
            {left.map((one) => (
              <option key={one.value} value={one.value}>
                {inReadersWords(one.text)}
              </option>
            ))}
          </select>
          <button type="button" disabled={chosen === ""} aria-label={`${words.add}: ${label}`} onClick={add}>
            {words.add}
          </button>
        </div>
      )}
    </div>
  );
}
