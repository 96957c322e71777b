import { useCallback, useEffect, useState } from "react";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import {
  capturing,
  filledByStep,
  newForm,
  valuesToWrite,
  writtenPassage,
} from "../../../../show/desk/papers/capture/captured.ts";
import type { TakenList, ToMake } from "../../../../show/desk/papers/capture/captured.ts";
import type { PaperData } from "../../../../show/desk/papers/page.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { formWords } from "../../../words/desk/forms.ts";
import { askModel } from "../../sheet/form/asking.ts";
import { draftNameOf, keepBegun, withAlso } from "./begun.ts";
import type { Also, Begun } from "./begun.ts";
import { isMissing } from "./part.ts";

type Change = (change: (before: EnteredMap) => EnteredMap) => void;

/** A sheet on which something is being taken from a paper. */
export interface Taking {
  readonly begun: Begun;
  readonly state: "still" | "saving" | { readonly troubles: number } | { readonly problem: string };
  /** Somebody tried to save. */
  readonly tried: boolean;
  /** Something was put in that is not saved. */
  readonly touched: boolean;
  readonly putPassage: Change;
  readonly putAlso: (place: number, change: Partial<Also> | ((before: EnteredMap) => EnteredMap)) => void;
  readonly add: (list: TakenList) => void;
  readonly leaveOut: (place: number) => void;
  readonly save: () => Promise<void>;
  readonly drop: () => void;
}

/** Keeps what is being taken as a draft, and saves all of it as one step. */
export function useTaking(source: PaperData, opened: Begun, onSaved: () => void): Taking {
  const desk = useDesk();
  const [begun, setBegun] = useState(opened);
  const [state, setState] = useState<Taking["state"]>("still");
  const [tried, setTried] = useState(false);
  const [touched, setTouched] = useState(false);
  const name = draftNameOf(opened);
  const writable = desk.state.readOnly === null;
  useEffect(() => {
    if (touched && writable) keepBegun(name, begun);
  }, [touched, writable, name, begun]);

  const change = useCallback((next: (before: Begun) => Begun): void => {
    setTouched(true);
    setBegun(next);
  }, []);
  const putPassage: Change = useCallback(
    (next) => change((before) => ({ ...before, entered: next(before.entered) })),
    [change],
  );
  const putAlso: Taking["putAlso"] = useCallback(
    (place, next) =>
      change((before) => ({
        ...before,
        also: before.also.map((one, at) =>
          at !== place
            ? one
            : typeof next === "function"
              ? { ...one, entered: next(one.entered) }
              : { ...one, ...next },
        ),
      })),
    [change],
  );
  const drop = (): void => {
    setTouched(false);
    if (writable) keepBegun(name, null);
  };
  const save = async (): Promise<void> => {
    if (!writable || state === "saving") return;
    setState("saving");
    const said = await sayAll(begun);
    if (said === null) return setState("still");
    if ("troubles" in said) {
      setTried(true);
      return setState(said);
    }
    const passage =
      begun.passage === null ? { values: said.passage, selector: begun.selector } : { id: begun.passage };
    const saved = await desk.save(capturing(passage, said.also));
    if ("problem" in saved) return setState(saved);
    if ("clashes" in saved) return setState({ problem: formWords.gone });
    drop();
    setState("still");
    onSaved();
  };
  return {
    begun,
    state,
    tried,
    touched,
    putPassage,
    putAlso,
    add: (list) => change((before) => withAlso(before, list, source)),
    leaveOut: (place) => change((before) => ({ ...before, also: before.also.toSpliced(place, 1) })),
    save,
    drop,
  };
}

/** The forms of what is taken, the passage's own left out. */
export function formsOf({ also }: Begun): readonly FormAsked[] {
  return also.map(({ list, entered }) => newForm(list, entered));
}

type AllSaid =
  { readonly troubles: number } | { readonly passage: ToMake["values"]; readonly also: readonly ToMake[] };

/** What all forms of the sheet have written, or how many fields are not right yet; null where the model cannot tell. */
async function sayAll(begun: Begun): Promise<AllSaid | null> {
  const forms = formsOf(begun);
  const passage = writtenPassage(begun.entered);
  const all = begun.passage === null ? [passage, ...forms] : forms;
  const given = (form: FormAsked): readonly string[] => {
    const scholars = begun.also[forms.indexOf(form)]?.scholars.length ?? 0;
    return filledByStep(form, forms, scholars);
  };
  const checks = await Promise.all(all.map((form) => askModel("check", form)));
  const troubles = checks.flatMap((checked, place) => {
    const form = all[place];
    return (checked?.troubles ?? []).filter(
      ({ message, path, fresh }) =>
        fresh && form && !(isMissing(inEnglish(message)) && given(form).includes(String(path[0]))),
    );
  });
  if (checks.includes(null)) return null;
  if (troubles.length > 0) return { troubles: troubles.length };
  const sayings = await Promise.all([passage, ...forms].map((form) => askModel("say", form)));
  const values = sayings.map((saying, place) =>
    valuesToWrite([passage, ...forms][place] ?? passage, saying?.values ?? {}),
  );
  if (sayings.includes(null)) return null;
  return {
    passage: values[0] ?? {},
    also: begun.also.map(({ list, scholars }, place) => ({
      list,
      values: values[place + 1] ?? {},
      scholars,
    })),
  };
}
