import { useEffect } from "react";
import { afterSeeing } from "../../../../show/desk/workbench/draft/looks.ts";
import type { WorkbenchPage as Page } from "../../../../show/desk/workbench/page.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { PageLink } from "../../../parts/link.tsx";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { numberWords } from "../../../words/shown/numbers.ts";
import { BenchProvider, benchOf } from "./bench.ts";
import { BearsOn } from "./bearing/bearings.tsx";
import { Input } from "./inputs/input.tsx";
import { Pairs } from "./inputs/pairs.tsx";
import { Methods } from "./methods.tsx";
import { draftNow, putDraft, useDeskDrafts, useDraft } from "./on-bench.ts";
import { Outcome } from "./outcome.tsx";
import { Saving } from "./saving.tsx";
import { Setting } from "./setting.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly page: Page;
  readonly asOf: number | null;
}

/** Where a derivation is made or changed: what it is computed on and what comes of it, before it is saved. */
export function WorkbenchPage({ page, asOf }: Props) {
  const draft = useDraft(page.of, page.draft);
  useSeen(page);
  useDeskDrafts(useDesk().state.readOnly === null);
  if (page.closed !== null)
    return (
      <>
        <h1>{words.titleOf(null)}</h1>
        <p className="lead">{words.closed[page.closed]}</p>
        {draftNow(page.of) !== null && (
          <p className="crossing">
            <button type="button" onClick={() => putDraft(page.of, null)}>
              {words.giveUp}
            </button>
          </p>
        )}
      </>
    );
  return (
    <BenchProvider value={benchOf(page, draft)}>
      <article className="workbench">
        <h1 dir="auto">{words.titleOf(page.title === null ? null : inReadersWords(page.title))}</h1>
        <p className="lead">{words.lead}</p>
        {page.of !== null && (
          <p className="crossing">
            <PageLink page="number" id={page.of} text={numberWords.wholeNumber} asOf={asOf} />
          </p>
        )}
        <div className="benches">
          <div className="making">
            <Methods />
            {page.form !== null && (
              <>
                <section>
                  <h2 className="label">{words.on}</h2>
                  {page.inputs.map((field) => (
                    <Input key={field.name} field={field} />
                  ))}
                  {page.pairs !== null && <Pairs pairs={page.pairs} />}
                </section>
                <section>
                  <h2 className="label">{words.settings}</h2>
                  {page.settings.length === 0 && <p className="quiet">{words.noSettings}</p>}
                  {page.settings.map((field) => (
                    <Setting key={field.name} field={field} />
                  ))}
                </section>
                <BearsOn />
                <Saving asOf={asOf} />
              </>
            )}
          </div>
          <Outcome asOf={asOf} />
        </div>
      </article>
    </BenchProvider>
  );
}

/** A number that is shown was seen: its settings count as a look from then on, whatever is changed back. */
function useSeen({ of, seen, draft, closed }: Page): void {
  useEffect(() => {
    if (seen === null || closed !== null) return;
    const now = draftNow(of) ?? draft;
    const after = afterSeeing(now, seen);
    if (after !== now) putDraft(of, after);
  }, [of, seen, draft, closed]);
}
