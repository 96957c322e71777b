import { useLayoutEffect, useRef, useState } from "react";
import { Link } from "wouter";
import type { Fields } from "../../../../read/grammar/field.ts";
import { kindOf } from "../../../../read/grammar/kinds.ts";
import { formFields } from "../../../../show/desk/forms/filled/asked.ts";
import { enteredAt } from "../../../../show/desk/forms/filled/entered.ts";
import { fieldsIn, layoutOf } from "../../../../show/desk/forms/layout.ts";
import type { FormPage as Page } from "../../../../show/desk/forms/page.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { RecordLink, dirOf } from "../../../parts/link.tsx";
import { formWords as words } from "../../../words/desk/forms.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { TakenFrom } from "../taken-from.tsx";
import { Clashes } from "./clashes.tsx";
import { FieldIn } from "./fields/field.tsx";
import { formPath } from "./paths.ts";
import { useFilled } from "./filled.ts";
import type { Filled } from "./filled.ts";
import { HandsProvider, labelOf } from "./hands.ts";
import { saysNothingNew, stateWords, useSaving } from "./saving.ts";
import { Whole } from "./whole.tsx";
import { marks } from "../../../words/reader/marks.ts";

/** The form of a new record, or of one that is to be changed. */
export function FormPage({ page }: { readonly page: Page }) {
  const at = formPath(page);
  if (page.takenFrom !== null)
    return (
      <article className="form-page">
        <Heading page={page} />
        <TakenFrom corpus={page.takenFrom} />
      </article>
    );
  // Another address is another form, with nothing of this one in it.
  return <Form key={at} page={page} at={at} />;
}

function Form({ page, at }: { readonly page: Page; readonly at: string }) {
  const filled = useFilled(page, at);
  const { state, save, still } = useSaving(page, filled);
  const { readOnly } = useDesk().state;
  const own = useRef<HTMLFormElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const { form, checked, touched, restored } = filled;
  // What is typed while the form is being saved would be in no file and in no draft.
  const hands = state.is === "saving" ? { ...filled.hands, put: putNothing } : filled.hands;
  useActions(words.help, [
    { name: words.help, key: "Ctrl+Enter", run: () => own.current?.requestSubmit(), own: true },
    { name: words.move, key: "Alt+↑ Alt+↓", run: null, own: true },
  ]);
  useLayoutEffect(() => {
    const form = own.current;
    const page = form?.closest("main");
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey) || event.isComposing) return;
      // One who has just come to the page is still at its head; what stands beside the form has this key to itself.
      if (event.target !== page && !(event.target instanceof Node && form?.contains(event.target))) return;
      event.preventDefault();
      form?.requestSubmit();
    };
    page?.addEventListener("keydown", onKey);
    return () => page?.removeEventListener("keydown", onKey);
  }, []);
  return (
    <article className="form-page">
      <Heading page={page} />
      {readOnly !== null && readOnly !== "" && (
        <p className="trouble" role="note">
          {words.readOnly(readOnly)}
        </p>
      )}
      {restored && <p className="quiet">{words.restored}</p>}
      {state.is === "clash" && (
        <Clashes
          filled={filled}
          fields={state.fields}
          now={state.now}
          onSettled={() => {
            still();
            requestAnimationFrame(() => button.current?.focus());
          }}
        />
      )}
      <form
        ref={own}
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <HandsProvider value={hands}>
          <FieldsOf page={page} filled={filled} />
        </HandsProvider>
        <Unplaced filled={filled} />
        <div className="saves">
          {readOnly === null && (
            <button type="submit" ref={button} className="main" aria-keyshortcuts="Control+Enter">
              {words.save}
            </button>
          )}
          {touched && (
            <button type="button" onClick={filled.drop}>
              {words.drop}
            </button>
          )}
          <output className={state.is === "troubled" || state.is === "problem" ? "troubles" : "quiet"}>
            {stateWords(state) ||
              (touched && saysNothingNew(form, checked) ? words.nothingNew : touched ? words.unsaved : "")}
          </output>
        </div>
      </form>
      {page.id !== null && readOnly === null && (
        <Whole page={page} form={form} id={page.id} named={page.seen?.["id"] !== undefined} at={at} />
      )}
    </article>
  );
}

const putNothing = (): void => undefined;

function Heading({ page }: { readonly page: Page }) {
  const { id, title, singular, list, answers } = page;
  return (
    <>
      <p className="label kind">
        {id === null ? inReadersWords(kindOf(list).doc).replace(/\.$/, "") : words.changeOf(singular)}
      </p>
      <h1 dir={dirOf(inReadersWords(title ?? ""))}>
        {id !== null && title !== null ? (
          <RecordLink id={id} text={title} asOf={null} />
        ) : (
          words.new(singular)
        )}
      </h1>
      {answers && (
        <p className="answer-to">
          <span className="quiet">{words.answerTo}</span>{" "}
          <span className="sentence">
            <RecordLink id={answers.id} text={answers.text} asOf={null} />
          </span>
        </p>
      )}
      {list === "derivations" && (
        <p className="crossing">
          <Link href={id === null ? "/workbench" : `/workbench?of=${encodeURIComponent(id)}`}>
            {words.toWorkbench}
          </Link>
        </p>
      )}
    </>
  );
}

/** The fields: those that are always thought of, those that are filled in, and the rest folded. */
function FieldsOf({ page, filled }: { readonly page: Page; readonly filled: Filled }) {
  const { form, checked } = filled;
  const fields = formFields(form.list, form.seen);
  const { first, more } = layoutOf(form.list);
  const named = form.id !== null && form.seen?.["id"] !== undefined;
  const [shown] = useState(() => new Set(more.filter((name) => enteredAt(form.entered, name) !== null)));
  const [open, setOpen] = useState(false);
  const amiss = (name: string): boolean => filled.hands.troublesAt([name]).length > 0;
  const folded = more.filter((name) => !shown.has(name));
  const own = Object.keys(form.seen ?? {}).filter((name) => name.startsWith("x-"));
  const one = (name: string) => (
    <OneField key={name} name={name} fields={fields} page={page} filled={filled} />
  );
  return (
    <>
      {[...first, ...more.filter((name) => shown.has(name))]
        .filter((name) => name !== "id" || !named)
        .map((name) => (
          <div key={name}>
            {one(name)}
            {name === compared(form.list) && checked.alike.length > 0 && <Alike filled={filled} />}
          </div>
        ))}
      {own.length > 0 && <p className="quiet">{words.own(own.join(marks.comma))}</p>}
      <details open={open || folded.some(amiss)} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <h2 className="label">{words.more}</h2>
        </summary>
        {folded.map(one)}
      </details>
    </>
  );
}

function compared(list: Page["list"]): string {
  return list === "artefacts" || list === "scholars" ? "name" : "text";
}

interface OneProps {
  readonly name: string;
  readonly fields: Fields;
  readonly page: Page;
  readonly filled: Filled;
}

function OneField({ name, fields, page, filled }: OneProps) {
  const field = fields[name];
  if (!field) return null;
  const { form, checked } = filled;
  const said = form.entered["lang"];
  const quoted = (name === "quote" || name === "words") && typeof said === "string" && said !== "";
  return (
    <FieldIn
      path={[name]}
      field={field}
      value={enteredAt(form.entered, name)}
      help={helpOf()}
      lang={quoted ? said : undefined}
    />
  );

  function helpOf(): string | null {
    if (name === "id") {
      if (checked.proposed !== null) return words.idLeftEmpty(checked.proposed);
      return field?.required === true ? null : words.idOptional;
    }
    if (name === "from" && page.head) return words.head(inReadersWords(page.head.label));
    return page.kept.includes(name) ? words.kept(labelOf(name)) : null;
  }
}

/** What is wrong with the record as a whole, and with no field of it. */
function Unplaced({ filled }: { readonly filled: Filled }) {
  const all = filled.hands
    .troublesAt([])
    .filter(({ path: [first] }) => first === undefined || !Object.hasOwn(fieldsIn(filled.form.list), first));
  return (
    <div className="troubles" aria-live="polite">
      {all.map((one) => (
        <p key={inReadersWords(one.message)} dir="auto">
          {inReadersWords(one.message)}
        </p>
      ))}
    </div>
  );
}

function Alike({ filled }: { readonly filled: Filled }) {
  return (
    <div className="alike" aria-live="polite">
      <p className="quiet">{words.alike}</p>
      <ul>
        {filled.checked.alike.map((one) => (
          <li key={one.id} className="sentence">
            <RecordLink id={one.id} text={one.text} asOf={null} />
          </li>
        ))}
      </ul>
    </div>
  );
}
