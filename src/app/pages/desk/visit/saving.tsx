import { useLayoutEffect, useRef, useState } from "react";
import type { Returned } from "../../../../show/desk/visit/returned.ts";
import type { VisitTold } from "../../../../show/desk/visit/filled/told.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";
import { KeepFile } from "./along/along.tsx";
import { isBlank } from "./keeping.ts";
import type { Kept } from "./keeping.ts";

interface Props {
  readonly sheet: Returned;
  readonly told: VisitTold | null;
  readonly kept: Kept | null;
  readonly onSaved: (counts: VisitTold["coming"]) => void;
  readonly clear: () => void;
}

/** What would be saved and what stays out, the one step that does it, and where the rest is kept meanwhile. */
export function Saving({ sheet, told, kept, onSaved, clear }: Props) {
  const desk = useDesk();
  const { readOnly } = desk.state;
  const [saving, setSaving] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const save = async ({ action, coming }: VisitTold): Promise<void> => {
    if (!action || saving) return;
    setSaving(true);
    const saved = await desk.save(action);
    setSaving(false);
    if ("done" in saved) return onSaved(coming);
    setTrouble("problem" in saved ? saved.problem : words.alone);
  };
  const own = useRef<HTMLElement>(null);
  useSaveKey(() => {
    if (told?.action && readOnly === null) void save(told);
    // What stands in the way is said there.
    else own.current?.focus();
  });
  const blank = isBlank(sheet.filled);
  const places = { desk: words.kept, browser: words.here, alone: words.alone, nowhere: words.nowhere };
  return (
    <section className="to-corpus" ref={own} tabIndex={-1}>
      {told && told.bad > 0 && <p>{words.bad(told.bad)}</p>}
      {!blank &&
        told?.head.map(({ field, message }) => (
          <p className="trouble-said" key={field}>
            {inReadersWords(message)}
          </p>
        ))}
      {blank && <p className="quiet">{words.nothing}</p>}
      {readOnly !== null && readOnly !== "" && <p role="note">{words.readOnly(readOnly)}</p>}
      {trouble !== null && <p role="alert">{trouble}</p>}
      <p className="at-foot">
        {told?.action && readOnly === null && (
          <button type="button" className="save" disabled={saving} onClick={() => void save(told)}>
            {saving ? words.saving : words.save(told.coming)}
          </button>
        )}
        {!blank && <KeepFile sheet={sheet} />}
        {!blank && (
          <button type="button" onClick={clear}>
            {words.clear}
          </button>
        )}
      </p>
      <output className="quiet">{kept === null ? "" : places[kept]}</output>
    </section>
  );
}

/** Saves by Ctrl and Enter from wherever one is on the sheet. */
function useSaveKey(save: () => void): void {
  useActions(words.title, [{ name: words.saveKey, key: "Ctrl+Enter", run: save, own: true }]);
  useLayoutEffect(() => {
    const sheet = document.querySelector(".visit-page");
    const page = sheet?.closest("main");
    const onKey = (event: Event): void => {
      if (!(event instanceof KeyboardEvent) || event.key !== "Enter" || !(event.ctrlKey || event.metaKey))
        return;
      if (event.target !== page && !(event.target instanceof Node && sheet?.contains(event.target))) return;
      event.preventDefault();
      save();
    };
    page?.addEventListener("keydown", onKey);
    return () => page?.removeEventListener("keydown", onKey);
  });
}
