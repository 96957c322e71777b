import { StandingMark } from "../../../parts/standing.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { numberName, numberWords, printed } from "../../../words/shown/numbers.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { withoutStop } from "../../../../link/names/label.ts";
import type { NumberPage } from "../../../../show/numbers/number.ts";
import { Figure } from "../../numbers/figure.tsx";
import { Losses } from "../../numbers/tried/losses.tsx";
import { Turns } from "../../numbers/tried/turns.tsx";
import { useBench } from "./bench.ts";
import { useProgress } from "./on-bench.ts";

/** What comes of the draft as it is: its number and figure, the standings it would change, and its cautions. */
export function Outcome({ asOf }: { readonly asOf: number | null }) {
  const { page } = useBench();
  const { number } = page;
  return (
    <section className="outcome" aria-labelledby="outcome">
      <h2 className="label" id="outcome">
        {words.outcome}
      </h2>
      <div className="at-hand">
        <Came number={number} />
        {number !== null && number.status === "computed" && <Changes asOf={asOf} />}
      </div>
      {page.problems.map((problem) => (
        <p className="problem" key={inReadersWords(problem)}>
          {inReadersWords(problem)}
        </p>
      ))}
      {number !== null && page.seen !== null && (
        <p className="looks quiet">
          {page.looks > 1 ? `${words.looks(page.looks)} ${words.looksKept}` : words.firstLook}
        </p>
      )}
      {number !== null && number.sentence !== null && (
        <p className="sentence">{printed(inReadersWords(number.sentence))}</p>
      )}
      {number !== null && number.figure !== null && <Figure shown={number.figure} id={number.id} />}
      {number !== null && <Cautions number={number} />}
      {number !== null && number.turns !== null && <Turns turns={number.turns} asOf={asOf} />}
      {number !== null && number.losses !== null && <Losses losses={number.losses} asOf={asOf} />}
    </section>
  );
}

/** The numbers, or why there are none; in one place, whatever changes. */
function Came({ number }: { readonly number: NumberPage | null }) {
  const { page, draft, put } = useBench();
  const progress = useProgress();
  if (page.form === null) return <p className="came quiet">{words.pickMethod}</p>;
  if (number === null || (number.status === "refused" && page.inputs.every((one) => one.counts.taken === 0)))
    return <p className="came quiet">{words.nothingYet}</p>;
  if (number.status === "pending")
    return (
      <div className="came">
        <output>{draft.stopped ? words.stopped : `${words.computing} …`}</output>
        {!draft.stopped && (
          <progress aria-label={words.computing} {...(progress === null ? {} : { value: progress })} />
        )}
        <button type="button" onClick={() => put({ ...draft, stopped: !draft.stopped })}>
          {draft.stopped ? words.goOn : words.stop}
        </button>
      </div>
    );
  if (number.status !== "computed")
    return (
      <output className="came">
        <b>{words.refused}</b>: {withoutStop(inReadersWords(number.why ?? numberWords.status[number.status]))}
      </output>
    );
  return (
    <dl className="came came-out" aria-live="polite">
      {number.numbers.map((line) => (
        <div key={line.name}>
          <dt title={inReadersWords(line.doc)}>{numberName(line.name)}</dt>
          <dd>
            <b>
              <bdi>{line.value}</bdi>
            </b>
            {line.interval !== null && <bdi className="quiet"> ({inReadersWords(line.interval)})</bdi>}
          </dd>
        </div>
      ))}
    </dl>
  );
}

function Changes({ asOf }: { readonly asOf: number | null }) {
  const { page } = useBench();
  return (
    <output className="would-change">
      <span className="field-label">{words.changes}</span>
      {page.pending > 0 && <span className="quiet">{words.changesPending(page.pending)}</span>}
      {page.changes.length === 0 && page.pending === 0 && <span>{words.changesNothing}</span>}
      {page.changes.map((one) => (
        <span className="change" key={one.claim}>
          <RecordLink id={one.claim} text={one.text} asOf={asOf} />{" "}
          {one.is !== null && <StandingMark standing={one.is} />}{" "}
          <span className="quiet">{words.was(one.was)}</span>
        </span>
      ))}
    </output>
  );
}

function Cautions({ number: { cautions } }: { readonly number: NumberPage }) {
  if (cautions.met.length + cautions.general.length === 0) return null;
  return (
    <div className="cautions">
      <h3>{numberWords.takeCare}</h3>
      <ul>
        {[...cautions.met, ...cautions.general].map(inReadersWords).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}
