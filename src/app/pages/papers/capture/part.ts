import { useCallback, useMemo, useState } from "react";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import type { Checked } from "../../../../show/desk/forms/checked/checked.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import { withEntered } from "../../../../show/desk/forms/filled/entered.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import type { Choice } from "../../../../show/desk/forms/offered/choices.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { useChecked } from "../../sheet/form/asking.ts";
import { placeId } from "../../sheet/form/hands.ts";
import type { Hands } from "../../sheet/form/hands.ts";

/** Nothing said of a form before the model has read it. */
const unchecked: Checked = { values: {}, troubles: [], meanings: [], alike: [], proposed: null, names: [] };

interface Part {
  /** What parts the places of its fields from those of other records on the sheet. */
  readonly name: string;
  readonly form: FormAsked;
  /** Fields that the step fills by itself where they are left empty. */
  readonly given: readonly string[];
  /** Somebody tried to save: what is missing is told. */
  readonly tried: boolean;
  readonly change: (change: (before: EnteredMap) => EnteredMap) => void;
}

/** What the fields of one record on the sheet have in hand, and what there is to say of it. */
export function usePart({ name, form, given, tried, change }: Part): {
  readonly hands: Hands;
  readonly checked: Checked;
} {
  const [checked] = useChecked(form, unchecked);
  const [learnt, setLearnt] = useState<ReadonlyMap<string, Choice>>(new Map());
  const learn: Hands["learn"] = useCallback(
    (choice) => setLearnt((before) => new Map(before).set(choice.id, choice)),
    [],
  );
  const { list } = form;
  const hands = useMemo((): Hands => {
    const names = new Map([...learnt, ...checked.names.map((one) => [one.id, one] as const)]);
    const troubles = checked.troubles
      .filter((one) => !isMissing(inEnglish(one.message)) || (tried && !given.includes(String(one.path[0]))))
      .map((one) => ({ ...one, path: [name, ...one.path] }));
    return {
      list,
      put: (path, value) => change((before) => withEntered(before, path.slice(1), value) as EnteredMap),
      learn,
      toPlace: (path) =>
        requestAnimationFrame(() => {
          const place = document.getElementById(placeId(path));
          const stop = place?.matches(stops) ? place : place?.querySelector<HTMLElement>(stops);
          stop?.focus();
        }),
      troublesAt: (path) => troubles.filter((one) => isWithin(one.path, path)),
      meaningAt: (path) => {
        const meaning = checked.meanings.find((one) => placeId([name, ...one.path]) === placeId(path));
        return meaning ? inReadersWords(meaning.text) : null;
      },
      named: (one) => names.get(one) ?? null,
    };
  }, [list, name, given, tried, change, learn, learnt, checked]);
  return { hands, checked };
}

const stops = "input, select, textarea, button, a[href]";

/** Whether a trouble is only that something is not there yet. */
export function isMissing(message: string): boolean {
  return message.startsWith("Missing ");
}

function isWithin(trouble: readonly Step[], place: readonly Step[]): boolean {
  return trouble.length >= place.length && place.every((step, at) => trouble[at] === step);
}
