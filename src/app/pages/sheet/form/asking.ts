import { useEffect, useRef, useState } from "react";
import type { Asked } from "../../../worker/messages.ts";
import type { Checked } from "../../../../show/desk/forms/checked/checked.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import type { FormQuestions, FormsAsked, FormsTold } from "../../../worker/forms.ts";

let door: MessagePort | null = null;
let number = 0;
const waiting = new Map<number, (told: FormsTold["told"]) => void>();

/** Opens a door for forms to the worker that holds the model. */
export function formsIn(holder: Worker): void {
  const { port1, port2 } = new MessageChannel();
  door = port2;
  port2.onmessage = ({ data }: MessageEvent<FormsTold>) => {
    waiting.get(data.number)?.(data.told);
    waiting.delete(data.number);
  };
  const lend: Asked = { ask: "forms", port: port1 };
  holder.postMessage(lend, [port1]);
}

/** Answers all that was asked with null, where the model failed at it. */
export function leaveAsking(): void {
  for (const resolve of waiting.values()) resolve(null);
  waiting.clear();
}

/** Asks the model something about a form; null where the corpus cannot be read. */
export function askModel<A extends keyof FormQuestions>(
  ask: A,
  given: Parameters<FormQuestions[A]>[0],
): Promise<ReturnType<FormQuestions[A]> | null> {
  return new Promise((resolve) => {
    number += 1;
    waiting.set(number, (told) => resolve(told as ReturnType<FormQuestions[A]> | null));
    const message: FormsAsked = { number, ask, given };
    door?.postMessage(message);
  });
}

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
