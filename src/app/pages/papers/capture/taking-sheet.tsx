import { useLayoutEffect, useRef } from "react";
import type { PaperData } from "../../../../show/desk/papers/page.ts";
import { useActions } from "../../../parts/actions.tsx";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { formWords } from "../../../words/desk/forms.ts";
import { AlsoTaken } from "./also-fields.tsx";
import type { Begun } from "./begun.ts";
import { PassageFields } from "./passage-fields.tsx";
import { useTaking } from "./taking.ts";
import type { Taking } from "./taking.ts";

interface Props {
  readonly source: PaperData;
  readonly begun: Begun;
  readonly title: string;
  /** It is saved, or left: what was put in stays a draft then. */
  readonly onDone: () => void;
}

/** The sheet on which a passage is written down and what is taken from it: Enter saves all of it, Escape leaves it. */
export function TakingSheet({ source, begun: opened, title, onDone }: Props) {
  const taking = useTaking(source, opened, onDone);
  const own = useRef<HTMLFormElement>(null);
  const isNew = opened.passage === null;
  useLayoutEffect(() => {
    if (isNew) own.current?.querySelector<HTMLElement>("input, textarea")?.focus();
  }, [isNew]);
  useFirstTrouble(own, taking.state);
  useActions(title, [
    { name: words.save, key: "Enter", run: () => void taking.save(), own: true },
    { name: words.leave, key: "Escape", run: onDone, own: true },
  ]);
  useKeys(own, () => void taking.save(), onDone);
  return (
    <section className="capture form-page" aria-label={title}>
      <h2 className="label">{title}</h2>
      <form
        ref={own}
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void taking.save();
        }}
      >
        {isNew && <PassageFields source={source} taking={taking} />}
        <AlsoTaken taking={taking} />
        <div className="saves">
          {(isNew || taking.begun.also.length > 0) && (
            <button type="submit" className="main">
              {words.save}
            </button>
          )}
          <button type="button" onClick={onDone}>
            {words.leave}
          </button>
          {taking.touched && (
            <button
              type="button"
              className="plain"
              onClick={() => {
                taking.drop();
                onDone();
              }}
            >
              {words.throwAway}
            </button>
          )}
          <output className={typeof taking.state === "string" ? "quiet" : "troubles"}>
            {stateTold(taking.state)}
          </output>
        </div>
        <p className="quiet keys">{words.keys}</p>
      </form>
    </section>
  );
}

/** Enter saves from any field, Escape leaves; a list that is open within a field hears them first. */
function useKeys(form: { readonly current: HTMLElement | null }, save: () => void, leave: () => void): void {
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const { target, key } = event;
      if (event.defaultPrevented || event.isComposing || event.altKey) return;
      if (!(target instanceof Element) || !form.current?.contains(target)) return;
      const saves = key === "Enter" && !event.shiftKey;
      const meant = event.ctrlKey || event.metaKey || !isPressed(target);
      if (key !== "Escape" && !(saves && meant)) return;
      event.preventDefault();
      if (key === "Escape") leave();
      else save();
    };
    // The fields' own handlers hear a key at the root of the page, so this one waits until it has passed there.
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  });
}

/** Whether Enter does something of its own at a place. */
function isPressed(target: Element): boolean {
  return target.closest("button, a, summary, select") !== null;
}

function stateTold(state: Taking["state"]): string {
  if (state === "still") return "";
  if (state === "saving") return formWords.saving;
  return "problem" in state ? state.problem : formWords.troubles(state.troubles);
}

/** Takes the focus to the first field that something is wrong with, once it says so. */
function useFirstTrouble(form: { readonly current: HTMLElement | null }, state: Taking["state"]): void {
  useLayoutEffect(() => {
    if (typeof state === "string" || "problem" in state) return;
    const troubles = form.current?.querySelectorAll(".field .troubles") ?? [];
    const field = [...troubles].find((one) => one.childElementCount > 0)?.closest(".field");
    field?.closest("details")?.setAttribute("open", "");
    field?.querySelector<HTMLElement>("input, select, textarea, button")?.focus();
  }, [form, state]);
}
