import { Link } from "wouter";
import type {
  ClaimChange,
  HistoryStep as Step,
  Publication,
} from "../../../../show/judged/history/history.ts";
import { broughtInWords, changesInWords, wasInWords } from "../../../../show/judged/history/sentence.ts";
import { underLens } from "../../../address.ts";
import { useSome } from "../../../parts/leaves/some.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { historyWords as words } from "../../../words/judged/history.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { yearIn } from "../../../words/index.ts";

/** So many publications and claims of a year are shown before the others are asked for. */
const firstOfYear = 40;

/** One year: what came into print, which claims changed and which are new, and the ways to see the dispute as it was. */
export function HistoryStep({ step, asOf }: { readonly step: Step; readonly asOf: number | null }) {
  const { year, publications, changes } = step;
  const changed = changes.filter((one) => one.was !== null);
  const named = changes.filter((one) => one.was === null);
  const [brought, more] = useSome(publications, firstOfYear);
  return (
    <li>
      <h2>
        <span className="when">{year === null ? words.withoutYear : yearIn(year)}</span>{" "}
        <span className="became">{inReadersWords(changesInWords(changes))}</span>
      </h2>
      {year === null ? (
        <p className="quiet">{words.own}</p>
      ) : (
        <>
          <ul className="brought" aria-label={words.brought}>
            {brought.map((one, place) => (
              <Brought key={one.source ?? place} publication={one} asOf={asOf} />
            ))}
          </ul>
          {more}
        </>
      )}
      {changed.length > 0 && <Changes title={words.changed} changes={changed} asOf={asOf} />}
      {named.length > 0 && <Changes title={words.named} changes={named} asOf={asOf} />}
      {year !== null && (
        <p className="crossing">
          <Link href={underLens("/map", year)}>{words.map(year)}</Link>{" "}
          <Link href={underLens("/", year)}>{words.questions(year)}</Link>
        </p>
      )}
    </li>
  );
}

function Brought({
  publication: { source, text, brought },
  asOf,
}: {
  readonly publication: Publication;
  readonly asOf: number | null;
}) {
  return (
    <li>
      {source === null || text === null ? (
        <span>{text === null ? words.noPublication : inReadersWords(text)}</span>
      ) : (
        <RecordLink id={source} text={text} asOf={asOf} />
      )}{" "}
      <span className="quiet">{inReadersWords(broughtInWords(brought))}</span>
    </li>
  );
}

function Changes({
  title,
  changes,
  asOf,
}: {
  readonly title: string;
  readonly changes: readonly ClaimChange[];
  readonly asOf: number | null;
}) {
  const [some, more] = useSome(changes, firstOfYear);
  return (
    <>
      <h3 className="label">{title}</h3>
      <ul className="became-of">
        {some.map(({ claim, text, was, is }) => (
          <li key={claim}>
            <StandingMark standing={is} />
            <span className="sentence">
              <RecordLink id={claim} text={text} asOf={asOf} />
            </span>
            {was !== null && <span className="quiet">{inReadersWords(wasInWords(was))}</span>}
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}
