import { useEffect, useLayoutEffect, useRef, useState } from "react";
import { useLocation } from "wouter";
import type { FormAsked } from "../../../../show/desk/forms/filled/asked.ts";
import type { Referring } from "../../../../show/desk/forms/offered/referring.ts";
import type { FormPage } from "../../../../show/desk/forms/page.ts";
import { recordPath } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { formWords as words } from "../../../words/desk/forms.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { askModel } from "./asking.ts";
import { keepDraft } from "./drafts.ts";

interface Props {
  readonly page: FormPage;
  readonly form: FormAsked;
  readonly id: string;
  /** Its name in the files is its own. */
  readonly named: boolean;
  readonly at: string;
}

/** What can be done with a record as a whole: another name, or out with it; each asks once, in its place. */
export function Whole({ page, form, id, named, at }: Props) {
  const [open, setOpen] = useState<"rename" | "take" | null>(null);
  const names = useRef<HTMLButtonElement>(null);
  const takes = useRef<HTMLButtonElement>(null);
  useActions(words.whole, [
    ...(named ? [{ name: words.rename, key: null, run: () => setOpen("rename") }] : []),
    { name: words.takeOut, key: null, run: () => setOpen("take") },
  ]);
  const shut = (): void => {
    const button = open === "take" ? takes : names;
    setOpen(null);
    requestAnimationFrame(() => button.current?.focus());
  };
  return (
    <section className="whole">
      <h2 className="label">{words.whole}</h2>
      {named ? (
        <p className="does">
          <span className="quiet">
            {words.idStays} <bdi>{id}</bdi>
          </span>
          <button
            type="button"
            ref={names}
            aria-expanded={open === "rename"}
            onClick={() => setOpen("rename")}
          >
            {words.rename}
          </button>
        </p>
      ) : (
        <p className="quiet">{words.unnamed}</p>
      )}
      {open === "rename" && <Rename id={id} at={at} onShut={shut} />}
      <p className="does">
        <button type="button" ref={takes} aria-expanded={open === "take"} onClick={() => setOpen("take")}>
          {words.takeOut}
        </button>
      </p>
      {open === "take" && <TakeOut page={page} form={form} id={id} at={at} onShut={shut} />}
    </section>
  );
}

/** What names a record, once the model has told it. */
function useReferring(id: string): Referring | null {
  const [referring, setReferring] = useState<Referring | null>(null);
  useEffect(() => {
    let stale = false;
    void askModel("referring", { id }).then((told) => {
      if (!stale) setReferring(told);
    });
    return () => {
      stale = true;
    };
  }, [id]);
  return referring;
}

interface OneProps {
  readonly page: FormPage;
  readonly form: FormAsked;
  readonly id: string;
  readonly at: string;
  readonly onShut: () => void;
}

function TakeOut({ page, form, id, at, onShut }: OneProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const [problem, setProblem] = useState<string | null>(null);
  const first = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => first.current?.focus(), []);
  const referring = useReferring(id);
  const { records, settings } = referring ?? { records: [], settings: false };
  const take = async (): Promise<void> => {
    // It goes as it was seen when the form was opened, and not as somebody else has made it since.
    const saying = await askModel("say", form);
    const saved = await desk.save({
      do: "take",
      ids: [id],
      ...(saying?.seen ? { seen: saying.seen } : {}),
    });
    if ("problem" in saved) return setProblem(saved.problem);
    if ("clashes" in saved && !saved.gone) return setProblem(words.clash);
    keepDraft(at, null, true);
    go("/records");
  };
  return (
    <fieldset className="asks">
      <legend className="unseen">{words.takeOutThis(page.singular)}</legend>
      <p>
        <strong>{words.takeOutThis(page.singular)}</strong> {words.undoable}
      </p>
      <p>{referring && words.refer(records.length)}</p>
      {records.length > 0 && (
        <ul>
          {records.slice(0, 12).map((one) => (
            <li key={one.id} className="sentence">
              <RecordLink id={one.id} text={one.label} asOf={null} />
            </li>
          ))}
          {records.length > 12 && <li className="quiet">… {records.length - 12}</li>}
        </ul>
      )}
      {records.length > 0 && <p className="quiet">{words.dangling}</p>}
      {settings && <p className="quiet">{words.settings}</p>}
      {problem !== null && <p role="alert">{problem}</p>}
      <p className="does">
        <button type="button" ref={first} onClick={onShut}>
          {words.keepIt}
        </button>
        <button type="button" onClick={() => void take()}>
          {words.takeItOut}
        </button>
      </p>
    </fieldset>
  );
}

function Rename({ id, at, onShut }: Omit<OneProps, "page" | "form">) {
  const referring = useReferring(id);
  const desk = useDesk();
  const [, go] = useLocation();
  const [to, setTo] = useState(id);
  const [trouble, setTrouble] = useState<string | null>(null);
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => field.current?.select(), []);
  const rename = async (): Promise<void> => {
    const name = to.trim();
    const against = await askModel("rename", { id, to: name });
    setTrouble(against === null ? null : inReadersWords(against));
    if (against !== null) return field.current?.focus();
    if (name === id) return onShut();
    const saved = await desk.save({ do: "rename", id, to: name });
    if ("problem" in saved) return setTrouble(saved.problem);
    keepDraft(at, null, true);
    go(recordPath(name));
  };
  return (
    <form
      className="asks"
      onSubmit={(event) => {
        event.preventDefault();
        void rename();
      }}
    >
      <label>
        {words.newName}
        <input
          ref={field}
          type="text"
          dir="ltr"
          autoComplete="off"
          spellCheck={false}
          value={to}
          aria-invalid={trouble !== null}
          aria-describedby="rename-told"
          onChange={(event) => setTo(event.target.value)}
        />
      </label>
      <p className="quiet" id="rename-told">
        <span role="alert" className="troubles">
          {trouble}
        </span>{" "}
        {referring && words.follows(referring.places)}
      </p>
      <p className="does">
        <button type="submit">{words.rename}</button>
        <button type="button" onClick={onShut}>
          {words.leaveIt}
        </button>
      </p>
    </form>
  );
}
