import { useState } from "react";
import { useLocation } from "wouter";
import type { Clash } from "../../../../link/edit/action.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import { withWritten } from "../../../../show/desk/workbench/draft/draft.ts";
import type { Draft } from "../../../../show/desk/workbench/draft/draft.ts";
import { savingOf } from "../../../../show/desk/workbench/draft/record.ts";
import { pathOf, underLens } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import type { Saved } from "../../../desk/saving.ts";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { useBench } from "./bench.ts";
import { Typed } from "./fields/typed.tsx";
import { putDraft } from "./on-bench.ts";
import { marks } from "../../../words/reader/marks.ts";

/** The name and the sentence that the number is saved with, and saving it; or why that cannot be done. */
export function Saving({ asOf }: { readonly asOf: number | null }) {
  const { page, draft, set } = useBench();
  const desk = useDesk();
  const [, go] = useLocation();
  const [saved, setSaved] = useState<Saved | null>(null);
  const [busy, setBusy] = useState(false);
  const save = async (what: Draft): Promise<void> => {
    setBusy(true);
    const outcome = await desk.save(savingOf(what, page.id, page.looks));
    setBusy(false);
    if (!("done" in outcome)) return setSaved(outcome);
    putDraft(page.of, null);
    go(underLens(pathOf("number", outcome.made[0] ?? page.id), asOf));
  };
  const text = draft.values["text"];
  const typedId = draft.values["id"];
  return (
    <section className="saving">
      <h2 className="label">{words.saveTitle}</h2>
      <Typed
        label={words.text}
        long
        value={typeof text === "string" ? text : ""}
        onTaken={(value) => set(["text"], value === "" ? null : value)}
      />
      {draft.of === null && (
        <Typed
          label={words.id}
          value={typeof typedId === "string" ? typedId : page.id}
          understood={{
            as: null,
            problem: page.idProblem === null ? null : page.idProblem === "bad" ? words.idBad : words.idTaken,
          }}
          hint={words.idProposed}
          onTaken={(value) => set(["id"], value === "" ? null : value)}
        />
      )}
      {desk.state.readOnly === null ? (
        <p>
          <button
            type="button"
            className="strong"
            disabled={busy || page.idProblem !== null || page.form === null || page.problems.length > 0}
            onClick={() => void save(draft)}
          >
            {draft.of === null ? words.saveNew : words.saveChange}
          </button>
        </p>
      ) : (
        desk.state.readOnly !== "" && <p className="quiet">{words.readOnly(desk.state.readOnly)}</p>
      )}
      {saved !== null && <NotSaved saved={saved} save={save} />}
      <GiveUp />
    </section>
  );
}

function NotSaved({
  saved,
  save,
}: {
  readonly saved: Saved;
  readonly save: (draft: Draft) => Promise<void>;
}) {
  const { page, draft, put } = useBench();
  if ("done" in saved) return null;
  if ("problem" in saved)
    return (
      <p className="problem" role="alert">
        {saved.problem}
      </p>
    );
  if (saved.gone)
    return (
      <p className="problem" role="alert">
        {words.gone}
      </p>
    );
  const over = (): void => {
    const next = { ...draft, recorded: asTheirs(draft, saved.clashes) };
    put(next);
    void save(next);
  };
  return (
    <div role="alert">
      <p className="problem">{words.clash}</p>
      <ul>
        {saved.clashes.map((clash) => (
          <li key={clash.field} dir="auto">
            {words.clashField(clash.field, said(clash.theirs), said(clash.mine))}
          </li>
        ))}
      </ul>
      <p>
        <button type="button" onClick={over}>
          {words.keepMine}
        </button>{" "}
        <button type="button" onClick={() => putDraft(page.of, null)}>
          {words.takeTheirs}
        </button>
      </p>
    </div>
  );
}

/** What the record said when it was last seen: now that what stands there was shown. */
function asTheirs({ recorded }: Draft, clashes: readonly Clash[]): Draft["recorded"] {
  return clashes.reduce((before, { field, theirs }) => withWritten(before ?? {}, [field], theirs), recorded);
}

function said(value: Written | null): string {
  if (value === null) return words.nothingSaid;
  if (typeof value === "string") return value;
  if (isList(value)) return value.map(said).join(marks.semicolon);
  return Object.entries(value)
    .map(([name, one]) => `${name} ${said(one)}`)
    .join(marks.comma);
}

function GiveUp() {
  const { page } = useBench();
  const [sure, setSure] = useState(false);
  if (!sure)
    return (
      <p>
        <button type="button" onClick={() => setSure(true)}>
          {words.giveUp}
        </button>
      </p>
    );
  return (
    <p>
      <button
        type="button"
        onClick={() => {
          setSure(false);
          putDraft(page.of, null);
        }}
      >
        {words.giveUpSure}
      </button>{" "}
      <button type="button" onClick={() => setSure(false)}>
        {words.keep}
      </button>
    </p>
  );
}
