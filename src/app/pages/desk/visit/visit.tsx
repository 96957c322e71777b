import { useMemo, useState } from "react";
import type { VisitSheet } from "../../../../show/desk/visit/sheet/sheet.ts";
import type { VisitTold } from "../../../../show/desk/visit/filled/told.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import type { VisitPage as Data } from "../../../worker/planning/visit.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";
import { BringBack, TakeAlong } from "./along/along.tsx";
import { Before } from "./before.tsx";
import { After, Decided } from "./decided.tsx";
import { Head } from "./head.tsx";
import { useFilled } from "./keeping.ts";
import { Rows } from "./rows/rows.tsx";
import { Saving } from "./saving.tsx";
import { Start } from "./start.tsx";
import { useTold } from "./telling.ts";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** The sheet of a visit: what to measure and look for, filled in at the thing itself; or from what to choose one. */
export function VisitPage({ page, address }: Props) {
  const { sheet, visits, asked } = page;
  const { asOf } = address;
  return (
    <article className="visit-page">
      <h1 dir="auto">{sheet === null ? words.title : inReadersWords(sheet.title)}</h1>
      {sheet === null && visits === null && <p>{words.notThere}</p>}
      {visits && <Start visits={visits} asOf={asOf} />}
      {visits && <BringBack corpus={visits.corpus} take={() => false} />}
      {sheet && (
        <Sheet
          key={JSON.stringify([asked.examination, asked.keeper])}
          sheet={sheet}
          page={page}
          address={address}
        />
      )}
    </article>
  );
}

interface Done {
  readonly counts: VisitTold["coming"];
  readonly before: Data["standings"];
}

function Sheet({ sheet, page, address }: Props & { readonly sheet: VisitSheet }) {
  const { asked } = page;
  const { asOf } = address;
  const desk = useDesk();
  const [filled, change, kept, clear] = useFilled(sheet.corpus, asked, desk.state.readOnly === null);
  const returned = useMemo(() => ({ asked, filled }), [asked, filled]);
  const told = useTold(returned, page);
  const [done, setDone] = useState<Done | null>(null);
  if (done)
    return (
      <section className="done" aria-live="polite">
        <p>{words.done(done.counts)}</p>
        <Decided before={done.before} now={page.standings} pending={page.pending} asOf={asOf} />
        <p>
          <button type="button" onClick={() => setDone(null)}>
            {words.again}
          </button>
        </p>
      </section>
    );
  return (
    <>
      <p className="lead">{words.lead}</p>
      <Before sheet={sheet} asOf={asOf} />
      <TakeAlong sheet={sheet} />
      <Head
        sheet={sheet}
        filled={filled}
        troubles={told?.head ?? []}
        put={(more) => change((now) => ({ ...now, ...more }))}
        asOf={asOf}
      />
      <Rows sheet={sheet} filled={filled} told={told} change={change} address={address} />
      <After
        sheet={sheet}
        found={filled.found}
        choose={(examination, outcome) =>
          change((now) => ({ ...now, found: { ...now.found, [examination]: outcome } }))
        }
      />
      <Saving
        sheet={returned}
        told={told}
        kept={kept}
        clear={clear}
        onSaved={(counts) => {
          setDone({ counts, before: page.standings });
          clear();
          document.getElementById("page")?.focus();
        }}
      />
      <BringBack
        corpus={sheet.corpus}
        take={(back) => {
          const same = back.asked.examination === asked.examination && back.asked.keeper === asked.keeper;
          if (same) change(() => back.filled);
          return same;
        }}
      />
    </>
  );
}
