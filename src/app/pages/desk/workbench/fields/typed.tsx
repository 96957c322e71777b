import { useId, useState } from "react";
import type { ChangeEvent, KeyboardEvent } from "react";
import type { Understood } from "../../../../../show/desk/workbench/settings.ts";
import { understoodWords } from "./understood.ts";

interface Props {
  readonly label: string;
  readonly value: string;
  /** Called when the field is left or Enter is pressed, with another text than before. */
  readonly onTaken: (text: string) => void;
  /** Called with each change of the text; null when nothing is being typed any more. */
  readonly onTyping?: (text: string | null) => void;
  /** How the text is read, or what is wrong with it. */
  readonly understood?: Understood | null;
  readonly hint?: string;
  readonly offers?: readonly string[];
  readonly hidden?: boolean;
  /** Room for a sentence. */
  readonly long?: boolean;
}

/** A field for a text that is taken when it is left; meanwhile it tells how it is read. */
export function Typed(props: Props) {
  const { label, value, onTaken, onTyping, understood = null, hint, offers = [], hidden, long } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? value;
  const take = (): void => {
    if (text.trim() !== value) onTaken(text.trim());
    else if (typed !== null) onTyping?.(null);
    setTyped(null);
  };
  const problem = understood?.problem ?? null;
  const told = [hint === undefined ? "" : `${id}-hint`, understood === null ? "" : `${id}-read`];
  const field = {
    id,
    dir: "auto",
    value: text,
    "aria-invalid": problem !== null,
    "aria-describedby": told.some((one) => one !== "") ? told.join(" ").trim() : undefined,
    onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) => {
      setTyped(event.target.value);
      onTyping?.(event.target.value);
    },
    onBlur: take,
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key !== "Enter" || event.nativeEvent.isComposing) return;
      event.preventDefault();
      take();
    },
  };
  return (
    <div className={long ? "typed long" : "typed"}>
      <label htmlFor={id} className={hidden ? "unseen" : undefined}>
        {label}
      </label>
      {long ? (
        <textarea rows={2} {...field} />
      ) : (
        <input
          type="text"
          autoComplete="off"
          spellCheck={false}
          list={offers.length > 0 ? `${id}-offers` : undefined}
          {...field}
        />
      )}
      {offers.length > 0 && (
        <datalist id={`${id}-offers`}>
          {offers.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </datalist>
      )}
      {understood !== null && (
        <output className={problem === null ? "quiet" : "problem"} id={`${id}-read`}>
          {understoodWords(understood)}
        </output>
      )}
      {hint !== undefined && (
        <p className="quiet" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
