import type { ReactNode } from "react";
import type { Field } from "../../../../../read/grammar/field.ts";
import type { Step } from "../../../../../read/yaml/tree.ts";
import { formWords as words } from "../../../../words/desk/forms.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { labelAt, labelOf, placeId, useHands } from "../hands.ts";

interface Props {
  readonly path: readonly Step[];
  readonly field: Field;
  /** Several controls stand under the one name. */
  readonly group?: boolean;
  /** More to say below the field's own line of help. */
  readonly help?: ReactNode;
  readonly children: ReactNode;
}

/** A field's name, its line of help, what is understood and what is wrong, round whatever it is filled in with. */
export function Frame({ path, field, group = false, help, children }: Props) {
  const { troublesAt, meaningAt, put } = useHands();
  const id = placeId(path);
  const name = String(path.at(-1));
  const troubles = troublesAt(path);
  const meaning = meaningAt(path);
  const label = (
    <>
      <span className="name">{labelOf(name)}</span>{" "}
      {field.required === true && name !== "id" && <span className="quiet">{words.required}</span>}
    </>
  );
  return (
    <div className="field" {...(group ? { role: "group", "aria-labelledby": `${id}-name` } : {})}>
      {group ? (
        <p className="head" id={`${id}-name`}>
          {label}
        </p>
      ) : (
        <label className="head" id={`${id}-name`} htmlFor={id}>
          {label}
        </label>
      )}
      <div className="body">
        {children}
        <p className="quiet help" id={`${id}-help`}>
          {inReadersWords(field.doc)} {help}
        </p>
        <p className="meaning" id={`${id}-meaning`}>
          {meaning !== null && (
            <>
              {words.understood} <bdi>{meaning}</bdi>
            </>
          )}
        </p>
        <div className="troubles" id={`${id}-trouble`} aria-live="polite">
          {troubles.map((one) => (
            <p key={`${one.path.join(".")} ${inReadersWords(one.message)}`}>
              <span dir="auto">{inReadersWords(one.message)}</span>
              {one.fixes.map((fix) => (
                <button
                  key={fix}
                  type="button"
                  aria-label={`${words.write(fix)}: ${labelAt(one.path)}`}
                  onClick={() => put(one.path, fix)}
                >
                  <bdi>{words.write(fix)}</bdi>
                </button>
              ))}
            </p>
          ))}
        </div>
      </div>
    </div>
  );
}

/** How a control says that it has help, a meaning and troubles beside it. */
export function useTold(path: readonly Step[]): {
  readonly id: string;
  readonly "aria-describedby": string;
  readonly "aria-invalid": boolean;
} {
  const { troublesAt } = useHands();
  const id = placeId(path);
  return {
    id,
    "aria-describedby": `${id}-trouble ${id}-meaning ${id}-help`,
    "aria-invalid": troublesAt(path).length > 0,
  };
}
