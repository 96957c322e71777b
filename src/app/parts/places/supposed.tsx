import { inReadersWords } from "../../words/reader/said.ts";
import { useLocation } from "wouter";
import type { SupposedChange, SupposedTold } from "../../../show/judged/suppose/supposed.ts";
import { recordPath } from "../../address.ts";
import type { useAddress } from "../../address.ts";
import { supposeWords as words } from "../../words/judged/suppose.ts";
import { useActions } from "../actions.tsx";
import { RecordLink } from "../link.tsx";
import { StandingTurn } from "../standing.tsx";

interface Props {
  readonly told: SupposedTold;
  readonly address: ReturnType<typeof useAddress>;
}

const shown = 6;

/** The band over every page that is looked at under a supposition: what is supposed, what it changes, and the way back. */
export function Supposed({ told, address }: Props) {
  const [, go] = useLocation();
  const { asOf, wanted, toLook } = address;
  const back = (): void => {
    const elsewhere = told.known && "id" in wanted ? recordedInstead(wanted.id, told.examination.id) : null;
    // The button goes with the band: the focus is handed on to the page.
    document.getElementById("page")?.focus();
    if (elsewhere === null) toLook({ suppose: null });
    else go(asOf === null ? elsewhere : `${elsewhere}?as-of=${asOf}`);
  };
  useActions(words.supposed, [{ name: words.back, key: "b", run: back }], "everywhere");
  return (
    <section className="supposed" aria-label={words.band}>
      <div className="strip">
        {told.known ? (
          <p className="what">
            <span className="label">{words.supposed}:</span>{" "}
            <span className="sentence" dir="auto">
              {inReadersWords(told.outcome.text)}
            </span>{" "}
            <strong>{words.notFound}</strong>
          </p>
        ) : (
          <p className="what">{words.unknown(told.written)}</p>
        )}
        <p className="back">
          <strong className="still" aria-hidden="true">
            {told.known && words.still}
          </strong>
          <button type="button" className="plain" onClick={back} aria-keyshortcuts="b">
            {words.back} <kbd>b</kbd>
          </button>
        </p>
      </div>
      {told.known && (
        <div className="changing">
          <p className="by">
            {words.from} <RecordLink id={told.examination.id} text={told.examination.text} asOf={asOf} />.
          </p>
          <Changed changed={told.changed} pending={told.pending} asOf={asOf} />
        </div>
      )}
    </section>
  );
}

/** The page of the record beside one that only the supposition has; null where the page is there in the record, too. */
function recordedInstead(id: string, examination: string): string | null {
  if (id !== examination && !id.startsWith(`${examination}~`)) return null;
  const colon = examination.indexOf(":");
  return recordPath(examination.slice(colon + 1));
}

interface ChangedProps {
  readonly changed: readonly SupposedChange[];
  readonly pending: boolean;
  readonly asOf: number | null;
}

function Changed({ changed, pending, asOf }: ChangedProps) {
  if (pending) return <p className="quiet">{words.notYet}</p>;
  if (changed.length === 0) return <p className="quiet">{words.changesNothing}</p>;
  const more = changed.length - shown;
  return (
    <>
      <p className="label">{words.changes}</p>
      <ul>
        {changed.slice(0, shown).map((one) => (
          <li key={one.id}>
            <RecordLink id={one.id} text={one.text} asOf={asOf} />{" "}
            <StandingTurn was={one.was} is={one.is} said={words.change(one.was, one.is)} />
          </li>
        ))}
        {more > 0 && <li className="quiet">{words.more(more)}</li>}
      </ul>
    </>
  );
}
