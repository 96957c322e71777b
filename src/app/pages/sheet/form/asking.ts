import { useEffect, useRef, useState } from "react";
import { doorTo } from "../../../model/door/asking.ts";
import type { Checked } from "../../../../show/desk/forms/checked/checked.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import type { FormQuestions } from "../../../worker/forms.ts";

const door = doorTo<FormQuestions>("forms");

/** Opens a door for forms to the worker that holds the model. */
export const formsIn = door.open;

/** Asks the model something about a form; null where the corpus cannot be read. */
export const askModel = door.ask;

/** What there is to say about a form; while one check is under way only the latest state of the form waits for the next. */
export function useChecked(form: FormAsked, opened: Checked): readonly [Checked, (told: Checked) => void] {
  const [checked, setChecked] = useState(opened);
  const next = useRef<FormAsked | null>(null);
  const busy = useRef(false);
  useEffect(() => {
    next.current = form;
    if (busy.current) return;
    busy.current = true;
    const round = async (): Promise<void> => {
      for (let one = next.current; one; one = next.current) {
        next.current = null;
        const told = await askModel("check", one);
        if (told) setChecked(told);
      }
      busy.current = false;
    };
    void round();
    // The form is checked again, too, when the corpus is another: `opened` then is.
  }, [form, opened]);
  return [checked, setChecked];
}
