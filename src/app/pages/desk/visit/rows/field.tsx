import { useId } from "react";
import type { HTMLAttributes, KeyboardEvent, ReactNode } from "react";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly help?: string;
  readonly invalid?: boolean;
  /** What is wrong with it. */
  readonly trouble?: ReactNode;
  readonly list?: readonly { readonly value: string; readonly text: string }[];
  readonly inputMode?: HTMLAttributes<HTMLInputElement>["inputMode"];
  readonly className?: string;
}

/** A line to write on, under its name. */
export function Line({ label, value, onChange, help, invalid, trouble, list, inputMode, className }: Props) {
  const id = useId();
  const bad = invalid === true || (trouble !== undefined && trouble !== null);
  return (
    <div className={`line ${className ?? ""}`}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        dir="auto"
        autoComplete="off"
        spellCheck={false}
        value={value}
        inputMode={inputMode}
        list={list === undefined ? undefined : `${id}-list`}
        aria-invalid={bad || undefined}
        aria-describedby={help === undefined && !bad ? undefined : `${id}-help`}
        onChange={(event) => onChange(event.target.value)}
        onKeyDown={goOn}
      />
      {list !== undefined && (
        <datalist id={`${id}-list`}>
          {list.map((one) => (
            <option key={one.value} value={one.value}>
              {one.text}
            </option>
          ))}
        </datalist>
      )}
      <span id={`${id}-help`} className={bad ? "trouble-said" : "help"}>
        {trouble ?? help}
      </span>
    </div>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly choices: readonly (readonly [value: string, text: string])[];
}

/** One of a few, under its name. */
export function Choice({ label, value, onChange, choices }: ChoiceProps) {
  const id = useId();
  return (
    <div className="line">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        {choices.map(([one, text]) => (
          <option key={one} value={one}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Enter goes on to the next line of the sheet: readings come one after the other. */
function goOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== "Enter" || event.ctrlKey || event.metaKey || event.nativeEvent.isComposing) return;
  event.preventDefault();
  const all = [
    ...(event.currentTarget.closest(".visit-page")?.querySelectorAll<HTMLElement>("input, select") ?? []),
  ];
  const shown = all.filter((one) => one.checkVisibility());
  shown[shown.indexOf(event.currentTarget) + 1]?.focus();
}
