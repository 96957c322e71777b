import { useId } from "react";
import { Link } from "wouter";
import type { Piece } from "../../../../show/pages/pieces.ts";
import type { ComponentPage, Way } from "../../../../show/judged/standpoints/component.ts";
import { aboutInWords, acceptedInWords, waysInWords } from "../../../../show/judged/standpoints/wording.ts";
import { questionPath, underLens } from "../../../address.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { useNarrow } from "../../../parts/narrow.ts";
import { Pieces } from "../../../parts/pieces.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { marks } from "../../../words/reader/marks.ts";
import { FitLists } from "./fits.tsx";
import { WayList } from "./list.tsx";
import { WayTable } from "./table.tsx";
import { Told } from "./told.tsx";

interface Props {
  readonly part: ComponentPage;
  readonly asOf: number | null;
}

/** Alternatives that stand side by side in one table. */
const abreast = 4;

/** Contradictions that the heading names; more of them are folded below it. */
const named = 3;

/** One part of what is open: the contradiction it is about, and the ways to decide it side by side. */
export function Part({ part, place, asOf }: Props & { readonly place: number }) {
  const narrow = useNarrow();
  const name = useId();
  const ways = [...part.ways.entries()];
  const tables = ways.filter(([at]) => at % abreast === 0).map(([at]) => ways.slice(at, at + abreast));
  return (
    <section className="part" aria-labelledby={name}>
      <p className="label">{words.part(place + 1)}</p>
      <h2 id={name} className="about">
        {part.about.slice(0, named).map((about, at) => (
          <About key={at} lines={linesOf(aboutInWords(about))} joined={at > 0} asOf={asOf} />
        ))}
      </h2>
      {part.about.length > named && (
        <details className="about">
          <summary>{words.moreContradictions(part.about.length - named)}</summary>
          {part.about.slice(named).map((about, at) => (
            <About key={at} lines={linesOf(aboutInWords(about))} joined={false} asOf={asOf} />
          ))}
        </details>
      )}
      <p className="quiet">
        {inReadersWords(waysInWords(part))}
        {part.questions.length > 0 && ` ${words.bearsOn} `}
        {part.questions.map(({ id, text }, at) => (
          <span key={id}>
            {at > 0 && marks.comma}
            <Link href={underLens(questionPath(id), asOf)} dir="auto">
              {inReadersWords(text)}
            </Link>
          </span>
        ))}
      </p>
      {tables.map((some) =>
        narrow ? (
          some.map(([at]) => <WayList key={at} part={part} at={at} asOf={asOf} />)
        ) : (
          <WayTable key={some[0]?.[0]} part={part} places={some.map(([at]) => at)} asOf={asOf} />
        ),
      )}
      {part.more.length > 0 && <More ways={part.more} from={part.ways.length + 1} asOf={asOf} />}
      {part.accepted.length > 0 && <TooMany part={part} asOf={asOf} />}
    </section>
  );
}

/** A contradiction, each of its sides on a line of its own; a further one of the same part is joined to it. */
function About({
  lines,
  joined,
  asOf,
}: {
  readonly lines: readonly (readonly Piece[])[];
  readonly joined: boolean;
  readonly asOf: number | null;
}) {
  return (
    <span className="sides">
      {joined && <span className="joint">{words.and}</span>}
      {lines.map((line, at) => (
        <span key={at}>
          <Pieces pieces={line} asOf={asOf} />{" "}
        </span>
      ))}
    </span>
  );
}

/** Pieces in lines: what stands before a name is in the line of that name, and what is left at the end in the last. */
function linesOf(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const ends = [...pieces.keys()].filter((at) => pieces[at]?.to !== null);
  return ends.length === 0
    ? [pieces]
    : ends.map((end, line) => {
        const from = line === 0 ? 0 : (ends[line - 1] ?? 0) + 1;
        return pieces.slice(from, line === ends.length - 1 ? pieces.length : end + 1);
      });
}

/** Alternatives beyond those laid out, each by what tells it from all the others. */
function More({
  ways,
  from,
  asOf,
}: {
  readonly ways: readonly Way[];
  readonly from: number;
  readonly asOf: number | null;
}) {
  return (
    <details>
      <summary>{words.more(ways.length)}</summary>
      <ol className="more-ways" start={from}>
        {ways.map((way, at) => (
          <li key={at}>
            <Told way={way} />
            <FitLists fits={way.fits} unknown={[]} asOf={asOf} />
          </li>
        ))}
      </ol>
    </details>
  );
}

/** What is known of a part whose ways are too many: in how many of them each claim holds, and whom one fits. */
function TooMany({ part, asOf }: Props) {
  return (
    <>
      <table className="ways accepted">
        <thead>
          <tr>
            <th scope="col">{words.claim}</th>
            <th scope="col">{words.holds}</th>
          </tr>
        </thead>
        <tbody>
          {part.accepted.map(({ id, text, holds }) => (
            <tr key={id}>
              <th scope="row" className="sentence">
                <RecordLink id={id} text={text} asOf={asOf} />
              </th>
              <td>
                {holds === "all" && <StandingMark standing="stands" bare />}
                {holds === "none" && <StandingMark standing="falls" bare />}{" "}
                {inReadersWords(acceptedInWords[holds])}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {part.fits.length + part.unknown.length > 0 && (
        <>
          <h3 className="label">{words.someFit}</h3>
          <FitLists fits={part.fits} unknown={part.unknown} asOf={asOf} />
        </>
      )}
    </>
  );
}
