import { useState } from "react";
import type { KeyboardEvent } from "react";
import type { ArgumentDraft } from "../../../../show/map/arguing/draft.ts";
import type { InHandTold, Turned } from "../../../../show/map/arguing/told.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { isTyping, useActions } from "../../../parts/actions.tsx";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { askArguing, useTold } from "../asking.ts";
import { letGo, putAway, setFolded, useFolded } from "../hand.ts";
import { places, toPlace } from "../ways.ts";
import { Because, Leads, toNewClaim } from "./leading.tsx";
import { MoreOfStep, Step } from "./step.tsx";
import { WouldChange } from "./turned.tsx";

interface Props {
  readonly draft: ArgumentDraft;
  readonly corpus: unknown;
  /** It is being made on the map, where lines can be drawn. */
  readonly onMap: boolean;
  readonly asOf: number | null;
  readonly onSaved: (turned: readonly Turned[]) => void;
}

/** The argument in hand: what it leans on, where it leads, the step in words, and what would change with it. */
export function Slip({ draft, corpus, onMap, asOf, onSaved }: Props) {
  const told = useTold(draft, corpus);
  const folded = useFolded();
  const { save, trouble, readOnly } = useSave(draft, onSaved);
  useActions(
    words.title,
    [
      { name: words.newClaim, key: "n", run: toNewClaim },
      { name: words.toStep, key: "w", run: () => toPlace(places.step) },
      { name: words.save, key: "Ctrl+Enter", run: readOnly === null ? save : null, own: true },
      { name: words.away, key: "Escape", run: leave },
    ],
    "everywhere",
  );
  const onKey = (event: KeyboardEvent): void => {
    if (event.nativeEvent.isComposing) return;
    // From a field back to the page, to choose more; from there, or anywhere else, the argument is put away.
    if (event.key === "Escape") (isTyping(event.target) ? backToPage : leave)();
    else if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) save();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const part = { draft, told, asOf };
  return (
    <section
      id={places.head}
      tabIndex={-1}
      className={folded ? "in-hand folded" : "in-hand"}
      aria-label={draft.of === null ? words.title : words.changing}
    >
      <div className="hears" role="presentation" onKeyDown={onKey}>
        <div className="head">
          <h2>{draft.of === null ? words.title : words.changing}</h2>
          <button type="button" className="folds" aria-expanded={!folded} onClick={() => setFolded(!folded)}>
            {folded ? words.open : words.fold}
          </button>
        </div>
        <output className="state">{stateOf(draft)}</output>
        <div className="parts">
          {onMap && draft.aim.to === "nothing" && <p className="quiet by-mouse">{words.drawn}</p>}
          <Because {...part} />
          <Leads {...part} />
          <Step {...part} />
          <MoreOfStep {...part} />
          <WouldChange told={told} asOf={asOf} />
          <Remarks told={told} />
        </div>
        {trouble !== "" && (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        )}
        {readOnly !== null && readOnly !== "" && <p className="quiet">{words.readOnly(readOnly)}</p>}
        <p className="saves">
          {readOnly === null && (
            <button type="button" className="main" aria-keyshortcuts="Control+Enter" onClick={save}>
              {words.save}
            </button>
          )}
          <button type="button" title={words.awayWhy} aria-keyshortcuts="Escape" onClick={leave}>
            {words.away}
          </button>
          <button
            type="button"
            onClick={() => {
              letGo();
              backToPage();
            }}
          >
            {words.drop}
          </button>
        </p>
      </div>
    </section>
  );
}

function Remarks({ told }: { readonly told: InHandTold | null }) {
  if (!told || told.remarks.length === 0) return null;
  return (
    <ul className="remarks">
      {told.remarks.map((one) => {
        const said = inReadersWords(one);
        return <li key={said}>{said}</li>;
      })}
    </ul>
  );
}

/** Lays the argument aside and goes back to the page it was made on. */
function leave(): void {
  putAway();
  backToPage();
}

/** To the map where there is one, else to the page. */
function backToPage(): void {
  const page = document.querySelector<HTMLElement>(".map-widget") ?? document.getElementById("page");
  page?.focus({ preventScroll: true });
}

/** What the argument has, and what it asks for next. */
function stateOf({ because, aim, text }: ArgumentDraft): string {
  return words.state({
    premises: because.length,
    aim: aim.to,
    worded: aim.to === "new" && aim.text.trim() !== "",
    answers: aim.to === "new" && aim.question !== null,
    said: text.trim() !== "",
  });
}

/** Saves an argument as one step, with all that is made with it; what stands in the way is told. */
function useSave(
  draft: ArgumentDraft,
  onSaved: (turned: readonly Turned[]) => void,
): { readonly save: () => void; readonly trouble: string; readonly readOnly: string | null } {
  const desk = useDesk();
  const [troubled, setTroubled] = useState({ of: draft, text: "" });
  const trouble = troubled.of === draft ? troubled.text : "";
  const setTrouble = (text: string): void => setTroubled({ of: draft, text });
  const [saving, setSaving] = useState(false);
  const saved = async (): Promise<void> => {
    // What is shown may be of a moment ago: one saves faster than an argument is tried.
    const [action, told] = await Promise.all([askArguing("save", draft), askArguing("tell", draft)]);
    if (!action || "problem" in action) return setTrouble(action ? inReadersWords(action.problem) : "");
    const what = await desk.save(action);
    if ("problem" in what) return setTrouble(what.problem);
    if (!("done" in what)) return setTrouble(words.gone);
    onSaved(told?.turned ?? []);
    letGo();
    backToPage();
  };
  const save = (): void => {
    if (saving || desk.state.readOnly !== null) return;
    setSaving(true);
    void saved().finally(() => setSaving(false));
  };
  return { save, trouble, readOnly: desk.state.readOnly };
}
