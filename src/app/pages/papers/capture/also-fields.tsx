import { useCallback, useEffect, useLayoutEffect, useState } from "react";
import { fieldsIn } from "../../../../show/desk/forms/layout.ts";
import { enteredAt } from "../../../../show/desk/forms/filled/entered.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import { filledByStep, newForm, takenLists } from "../../../../show/desk/papers/capture/captured.ts";
import type { TakenList } from "../../../../show/desk/papers/capture/captured.ts";
import type { QuantityIn } from "../../../../show/desk/papers/capture/quantities.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { formWords } from "../../../words/desk/forms.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { askModel } from "../../sheet/form/asking.ts";
import { FieldIn } from "../../sheet/form/fields/field.tsx";
import { HandsProvider } from "../../sheet/form/hands.ts";
import type { Also } from "./begun.ts";
import { usePart } from "./part.ts";
import { textAt } from "./passage-fields.tsx";
import { formsOf } from "./taking.ts";
import type { Taking } from "./taking.ts";

/** The fields of each kind of record that are thought of while one reads; its own form has the rest. */
const shown: Readonly<Record<TakenList, readonly string[]>> = {
  claims: ["text", "about"],
  observations: ["of", "text", "feature", "present", "basis"],
  measurements: ["of", "dimension", "value", "state", "basis"],
  positions: ["who", "claim", "stance", "words", "certainty"],
};

/** What is taken from the passage beside it, and ways to take more. */
export function AlsoTaken({ taking }: { readonly taking: Taking }) {
  const { begun, add } = taking;
  return (
    <>
      {begun.also.map((one, place) => (
        <OneTaken key={`${place} ${one.list}`} one={one} place={place} taking={taking} />
      ))}
      <p className="and-from">
        <span className="quiet">{words.andFrom}</span>{" "}
        {takenLists.map((list) => (
          <button key={list} type="button" onClick={() => add(list)}>
            {words.also[list]}
          </button>
        ))}
      </p>
    </>
  );
}

interface OneProps {
  readonly one: Also;
  readonly place: number;
  readonly taking: Taking;
}

function OneTaken({ one, place, taking }: OneProps) {
  const { begun, tried, putAlso, leaveOut } = taking;
  const { list, entered, scholars } = one;
  const form = newForm(list, entered);
  const given = filledByStep(form, formsOf(begun), scholars.length);
  const change = useCallback(
    (next: (before: EnteredMap) => EnteredMap) => putAlso(place, next),
    [putAlso, place],
  );
  const name = `also-${place}`;
  const { hands, checked } = usePart({ name, form, given, tried, change });
  const fields = fieldsIn(list);
  const quote = textAt(begun.entered, "quote");
  const lang = textAt(begun.entered, "lang");
  const [head = "", ...others] = shown[list];
  useFirstField(name, head);
  const field = (one: string) =>
    fields[one] && (
      <FieldIn
        key={one}
        path={[name, one]}
        field={fields[one]}
        value={enteredAt(entered, one)}
        lang={one === "words" && lang !== "" ? lang : undefined}
      />
    );
  return (
    <fieldset className="also">
      <legend>
        <h3 className="label">{words.alsoTitle[list]}</h3>
      </legend>
      <button
        type="button"
        className="plain leave"
        aria-label={words.leaveOutOne(words.alsoTitle[list])}
        onClick={(event) => {
          // The button goes with what is left out: the focus waits where something else can be taken.
          event.currentTarget
            .closest("form")
            ?.querySelector<HTMLElement>(`.and-from button:nth-of-type(${takenLists.indexOf(list) + 1})`)
            ?.focus();
          leaveOut(place);
        }}
      >
        {words.leaveOut}
      </button>
      {list === "claims" && quote !== "" && (
        <blockquote className="sentence" dir="auto" lang={lang === "" ? undefined : lang}>
          {quote}
        </blockquote>
      )}
      <HandsProvider value={hands}>
        {field(head)}
        {list === "positions" && <NewScholars one={one} place={place} taking={taking} />}
        {others.map((other) => (
          <div key={other}>
            {other === "value" && (
              <Quantities
                text={quote}
                onTake={(written) => change((before) => ({ ...before, value: written }))}
              />
            )}
            {field(other)}
            {other === "claim" && given.includes("claim") && textAt(entered, "claim") === "" && (
              <p className="quiet told">{words.claimAbove}</p>
            )}
          </div>
        ))}
      </HandsProvider>
      {checked.alike.length > 0 && (
        <div className="told" aria-live="polite">
          <p className="quiet">{formWords.alike}</p>
          <ul>
            {checked.alike.map((other) => (
              <li key={other.id} className="sentence">
                <RecordLink id={other.id} text={other.text} asOf={null} />
              </li>
            ))}
          </ul>
        </div>
      )}
    </fieldset>
  );
}

/** Takes the focus to the first field of what was just added. */
function useFirstField(name: string, field: string): void {
  useLayoutEffect(() => {
    const place = document.getElementById(`at-${name}.${field}`);
    place?.focus();
  }, [name, field]);
}

/** Authors who become scholars of the corpus with a position that is theirs. */
function NewScholars({ one, place, taking }: OneProps) {
  const [names] = useState(one.scholars);
  if (names.length === 0) return null;
  return (
    <p className="told">
      <label>
        <input
          type="checkbox"
          checked={one.scholars.length > 0}
          onChange={(event) => taking.putAlso(place, { scholars: event.target.checked ? names : [] })}
        />{" "}
        {words.addScholars(names)}
      </label>
    </p>
  );
}

/** The quantities that stand in the quotation, with how they are understood. */
function Quantities({ text, onTake }: { readonly text: string; readonly onTake: (written: string) => void }) {
  const [found, setFound] = useState<readonly QuantityIn[]>([]);
  useEffect(() => {
    let stale = false;
    void askModel("quantities", { text }).then((told) => {
      if (!stale) setFound(told ?? []);
    });
    return () => {
      stale = true;
    };
  }, [text]);
  if (found.length === 0) return null;
  return (
    <div className="told quantities">
      <p className="quiet">{words.quantities}</p>
      <ul>
        {found.map(({ written, meaning }) => (
          <li key={written}>
            <button type="button" aria-label={words.take(written)} onClick={() => onTake(written)}>
              <bdi>{written}</bdi>
            </button>{" "}
            <span className="quiet">{inReadersWords(meaning)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
