import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import type { Checked } from "../../../../show/desk/forms/checked/checked.ts";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import { withEntered } from "../../../../show/desk/forms/filled/entered.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import type { Choice } from "../../../../show/desk/forms/offered/choices.ts";
import type { FormPage } from "../../../../show/desk/forms/page.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useChecked } from "./asking.ts";
import { deskDraft, draftOf, keepDraft } from "./drafts.ts";
import type { Hands } from "./hands.ts";
import { placeId } from "./hands.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

/** A form that is being filled in. */
export interface Filled {
  readonly form: FormAsked;
  readonly hands: Hands;
  readonly checked: Checked;
  readonly setChecked: (checked: Checked) => void;
  /** Something was typed that is not saved. */
  readonly touched: boolean;
  /** It was begun before, and goes on. */
  readonly restored: boolean;
  readonly setTried: (tried: boolean) => void;
  /** Takes up what the form is to say, and what the record is to be compared with. */
  readonly set: (entered: EnteredMap, seen: WrittenMap | null) => void;
  /** It is saved: what stands in it is no draft any more, whatever the page says next. */
  readonly settle: () => void;
  /** Back to how the form was opened, without a draft. */
  readonly drop: () => void;
}

/** Keeps what is typed into a form, at the address `at`, and what there is to say about it. */
export function useFilled(page: FormPage, at: string): Filled {
  const { list, id, singular } = page;
  const title = page.title === null ? null : inReadersWords(page.title);
  const [draft] = useState(() => draftOf(at));
  const [form, setForm] = useState(() => draft?.form ?? opened(page));
  const [touched, setTouched] = useState(draft !== null);
  const [restored, setRestored] = useState(draft !== null);
  const [tried, setTried] = useState(false);
  const [checked, setChecked] = useChecked(form, page.checked);
  const { names, learn } = useNames(checked);
  const writable = useDesk().state.readOnly === null;
  const toPlace = useFocusLater();

  useEffect(() => {
    if (touched) keepDraft(at, { form, title, singular }, writable);
  }, [touched, at, form, title, singular, writable]);
  const hasOwn = draft !== null;
  useEffect(() => {
    let stale = hasOwn;
    if (!hasOwn)
      void deskDraft(at).then((found) => {
        if (stale || !found) return;
        setTouched((before) => {
          // What is being typed already is newer than what was kept.
          if (before) return before;
          setForm(found.form);
          setRestored(true);
          return true;
        });
      });
    return () => {
      stale = true;
    };
  }, [at, hasOwn]);

  const put: Hands["put"] = useCallback((path, value) => {
    setTouched(true);
    setForm((before) => ({ ...before, entered: withEntered(before.entered, path, value) as EnteredMap }));
  }, []);
  const hands = useMemo((): Hands => {
    const meanings = new Map(checked.meanings.map((one) => [placeId(one.path), inReadersWords(one.text)]));
    return {
      list,
      put,
      learn,
      toPlace,
      troublesAt: (path) =>
        checked.troubles.filter(
          (one) =>
            isWithin(one.path, path) &&
            (tried || !one.fresh || !inEnglish(one.message).startsWith("Missing ")),
        ),
      meaningAt: (path) => meanings.get(placeId(path)) ?? null,
      named: (one) => names.get(one) ?? null,
    };
  }, [list, put, learn, toPlace, names, checked, tried]);
  const set: Filled["set"] = useCallback((entered, seen) => {
    setTouched(true);
    setForm((before) => ({ ...before, entered, seen, id: seen === null ? null : before.id }));
  }, []);
  const settle = (): void => {
    keepDraft(at, null, true);
    setTouched(false);
  };
  const drop = (): void => {
    keepDraft(at, null, writable);
    setTouched(false);
    setRestored(false);
    setTried(false);
    setForm(opened(page));
  };
  return { form, hands, checked, setChecked, touched, restored, setTried, set, settle, drop };

  function opened({ seen, entered }: FormPage): FormAsked {
    return { list, id, seen, entered };
  }
}

/** What records and sources are called that the form names: as the model tells, or as they were called where they were chosen. */
function useNames(checked: Checked): {
  readonly names: ReadonlyMap<string, Choice>;
  readonly learn: Hands["learn"];
} {
  const [learnt, setLearnt] = useState<ReadonlyMap<string, Choice>>(new Map());
  const learn: Hands["learn"] = useCallback(
    (choice) => setLearnt((before) => new Map(before).set(choice.id, choice)),
    [],
  );
  const names = useMemo(
    () => new Map([...learnt, ...checked.names.map((one) => [one.id, one] as const)]),
    [learnt, checked.names],
  );
  return { names, learn };
}

const stops = "input, select, textarea, button, a[href], [tabindex]";

/** Takes the focus to a place of the form, as soon as it is there. */
function useFocusLater(): Hands["toPlace"] {
  const wanted = useRef<string | null>(null);
  const [, again] = useState(0);
  useLayoutEffect(() => {
    if (wanted.current === null) return;
    const place = document.getElementById(wanted.current);
    const stop = place?.matches(stops) ? place : place?.querySelector<HTMLElement>(stops);
    if (!stop) return;
    wanted.current = null;
    stop.focus();
  });
  return useCallback((path: readonly Step[]) => {
    wanted.current = placeId(path);
    again((before) => before + 1);
  }, []);
}

/** A trouble belongs to a place when it is there, or in a value there. */
function isWithin(trouble: readonly Step[], place: readonly Step[]): boolean {
  return trouble.length >= place.length && place.every((step, at) => trouble[at] === step);
}
