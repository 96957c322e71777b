import { useLayoutEffect, useRef, useState } from "react";
import { useLocation } from "wouter";
import { recordPath } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import type { Saved } from "../../../desk/saving.ts";
import type { Checked } from "../../../../show/desk/forms/checked/checked.ts";
import { enteredFrom } from "../../../../show/desk/forms/filled/asked.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import { enteredAt, isEnteredList } from "../../../../show/desk/forms/filled/entered.ts";
import type { FormPage } from "../../../../show/desk/forms/page.ts";
import { isList, saysSame } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { formWords as words } from "../../../words/desk/forms.ts";
import { askModel } from "./asking.ts";
import { choicesMade } from "./fields/due.ts";
import type { Filled } from "./filled.ts";

type Saying = NonNullable<Awaited<ReturnType<typeof askModel<"say">>>>;

/** How saving a form went so far. */
export type State =
  | { readonly is: "still" | "saving" }
  | { readonly is: "troubled"; readonly count: number }
  | { readonly is: "problem"; readonly text: string }
  /** What the files now say where they were changed meanwhile, as the form shows it; null where the record is gone. */
  | { readonly is: "clash"; readonly fields: readonly string[]; readonly now: WrittenMap | null };

/** Saves a form: refused with the focus at the first trouble, shown where somebody else was quicker, else on to the sheet. */
export function useSaving(
  page: FormPage,
  filled: Filled,
): { readonly state: State; readonly save: () => Promise<void>; readonly still: () => void } {
  const desk = useDesk();
  const [, go] = useLocation();
  const [state, setState] = useState<State>({ is: "still" });
  // Only once the troubles are shown is there a place to go to.
  useLayoutEffect(() => {
    if (state.is === "troubled") toFirstTrouble();
  }, [state]);

  const latest = useRef(filled);
  const isDue = useRef(false);
  useLayoutEffect(() => {
    latest.current = filled;
  });

  const save = async (): Promise<void> => {
    if (desk.state.readOnly !== null || state.is === "saving" || isDue.current) return;
    // While it is saved, nothing more goes into the form.
    isDue.current = true;
    await choicesMade();
    isDue.current = false;
    setState({ is: "saving" });
    const { form } = latest.current;
    const checked = await askModel("check", form);
    if (!checked) return setState({ is: "still" });
    filled.setChecked(checked);
    filled.setTried(true);
    const troubles = checked.troubles.filter((one) => one.fresh);
    if (troubles.length > 0) {
      return setState({ is: "troubled", count: new Set(troubles.map((one) => one.path.join("."))).size });
    }
    const saying = await askModel("say", form);
    if (!saying) return setState({ is: "still" });
    const saved = await desk.save(actionOf(form, saying));
    if ("problem" in saved) return setState({ is: "problem", text: saved.problem });
    if ("clashes" in saved) {
      const now = form.id === null ? null : await askModel("seen", { list: form.list, id: form.id });
      return setState({ is: "clash", fields: saved.clashes.map((one) => one.field), now });
    }
    filled.settle();
    await answering(page, saying, desk.save);
    setState({ is: "still" });
    go(recordPath(await nameOf(form, saying, saved)));
  };
  return { state, save, still: () => setState({ is: "still" }) };
}

function actionOf(
  { list, id }: FormAsked,
  { seen, values }: Saying,
): Parameters<ReturnType<typeof useDesk>["save"]>[0] {
  return id === null || seen === null
    ? { do: "add", list, records: [values] }
    : { do: "change", id, seen, values };
}

/** Puts a new claim among the answers of the question it was made for. */
async function answering(
  { answers }: FormPage,
  { values }: Saying,
  save: ReturnType<typeof useDesk>["save"],
): Promise<void> {
  const claim = values["id"];
  if (!answers || typeof claim !== "string") return;
  const { id } = answers;
  const seen = (await askModel("seen", { list: "questions", id })) ?? answers.seen;
  const entered = enteredFrom("questions", seen);
  const before = enteredAt(entered, "answers") ?? [];
  const listed = isEnteredList(before) ? before : [before];
  const form = { list: "questions", id, seen, entered: { ...entered, answers: [...listed, claim] } } as const;
  const saying = await askModel("say", form);
  if (saying?.seen) await save({ do: "change", id, seen: saying.seen, values: saying.values });
}

/** What the record is called that was saved; one without an id of its own is found by what it says. */
async function nameOf(
  form: FormAsked,
  { values }: Saying,
  saved: Extract<Saved, { readonly done: true }>,
): Promise<string> {
  const own = values["id"];
  if (typeof own === "string") return own;
  const found = await askModel("find", { list: form.list, values });
  return found ?? form.id ?? saved.made[0] ?? firstNamed(values);
}

/** The first record that a record is about. */
function firstNamed(values: WrittenMap): string {
  const about: Written = values["of"] ?? values["claim"] ?? values["from"] ?? "";
  const first = typeof about !== "string" && isList(about) ? about[0] : about;
  return typeof first === "string" ? (first.split(/\s/u)[0] ?? "") : "";
}

/** Whether saving would write anything. */
export function saysNothingNew({ id, seen }: FormAsked, { values }: Checked): boolean {
  return id !== null && seen !== null && saysSame(seen, values);
}

/** Takes the focus to the first field that something is wrong with, once it says so. */
function toFirstTrouble(): void {
  const trouble = [...document.querySelectorAll(".form .field .troubles")].find(
    (one) => one.childElementCount > 0,
  );
  const field = trouble?.closest(".field");
  field?.closest("details")?.setAttribute("open", "");
  field?.querySelector<HTMLElement>("input, select, textarea, button")?.focus();
}

/** What to say about how saving went. */
export function stateWords(state: State): string {
  switch (state.is) {
    case "saving":
      return words.saving;
    case "troubled":
      return words.troubles(state.count);
    case "problem":
      return state.text;
    default:
      return "";
  }
}
