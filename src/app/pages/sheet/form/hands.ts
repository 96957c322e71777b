import { createContext, useContext } from "react";
import type { ListName } from "../../../../read/grammar/field.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import type { Trouble } from "../../../../show/desk/forms/checked/troubles.ts";
import type { Entered } from "../../../../show/desk/forms/filled/entered.ts";
import type { Choice } from "../../../../show/desk/forms/offered/choices.ts";
import { fieldWord } from "../../../words/index.ts";

/** What the fields of a form have in hand: the form's state about them, and ways to change it. */
export interface Hands {
  readonly list: ListName;
  /** Puts a value at a place of the form; null takes the place out. */
  readonly put: (path: readonly Step[], value: Entered | null) => void;
  /** Takes the focus to a place of the form once it is shown. */
  readonly toPlace: (path: readonly Step[]) => void;
  /** What is wrong at a place or within it; what is only missing is told once somebody tried to save. */
  readonly troublesAt: (path: readonly Step[]) => readonly Trouble[];
  readonly meaningAt: (path: readonly Step[]) => string | null;
  /** A record or source that was chosen, as it is called. */
  readonly named: (id: string) => Choice | null;
  /** Keeps what a record or source is called that is being chosen. */
  readonly learn: (choice: Choice) => void;
}

const HandsContext = createContext<Hands | null>(null);

/** Gives the fields below it their form. */
export const HandsProvider = HandsContext.Provider;

/** The form that a field stands in. */
export function useHands(): Hands {
  const hands = useContext(HandsContext);
  if (!hands) throw new Error("unexpected field outside of a form, expected it within one");
  return hands;
}

/** By what a place of a form is known in the document. */
export function placeId(path: readonly Step[]): string {
  return `at-${path.join(".")}`;
}

/** A field's name in words. */
export function labelOf(name: string): string {
  return fieldWord(name);
}

/** A place of a form in words: its field, and the number of the entry in it. */
export function labelAt(path: readonly Step[]): string {
  const [first, ...rest] = path;
  const inner = rest.map((step) => (typeof step === "number" ? String(step + 1) : labelOf(step)));
  return [labelOf(String(first)), ...inner].join(" ");
}
