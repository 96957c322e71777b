import type { DatedLine, Point, Track } from "../../../../show/scholars/line.ts";
import { Pieces } from "../../../parts/pieces.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { marks } from "../../../words/reader/marks.ts";
import { heldWord, scholarWords as words, stanceWords } from "../../../words/shown/scholars.ts";
import { choiceName } from "../../../../read/grammar/field-words.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { yearIn } from "../../../words/index.ts";

interface Props {
  readonly line: DatedLine;
  readonly asOf: number | null;
}

/** Positions on a dated line, years to scale; every track is told in words beside it. */
export function DatedTracks({ line, asOf }: Props) {
  return (
    <div className="dated">
      {line.span !== null && (
        <div className="dated-scale" aria-hidden="true">
          <div className="dated-years">
            {line.marks.map((year) => (
              <span key={year} style={{ insetInlineStart: `${shareOf(line.span, year)}%` }}>
                {yearIn(year)}
              </span>
            ))}
          </div>
        </div>
      )}
      <ul>
        {line.tracks.map((track) => (
          <li key={track.claim} className="track">
            <p className="claim-head">
              <span className="sentence">
                <RecordLink id={track.claim} text={track.text} asOf={asOf} />
              </span>
              <StandingMark standing={track.standing} />
            </p>
            {line.span !== null && <Drawn track={track} line={line} />}
            <ol className="points">
              {track.points.map((point) => (
                <li key={point.position}>
                  <Said point={point} asOf={asOf} />
                </li>
              ))}
              {track.left !== null && (
                <li>
                  <span className="figure">{track.left.year === null ? "" : yearIn(track.left.year)}</span>{" "}
                  <b className="stance">{stanceWords.holds}</b>{" "}
                  <span className="sentence">
                    <RecordLink id={track.left.claim} text={track.left.text} asOf={asOf} />
                  </span>
                  {words.whichExcludes}
                </li>
              )}
            </ol>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** How far along the line a year lies, in percent; the ends are kept a little inside. */
function shareOf(span: DatedLine["span"], year: number): number {
  if (span === null) return 0;
  return 2 + (96 * (year - span.from)) / (span.to - span.from);
}

/** A track as it is drawn: a stretch from each position to the next, with the stance over its beginning. */
function Drawn({ track, line }: { readonly track: Track; readonly line: DatedLine }) {
  const dated = track.points.flatMap((point) => (point.year === null ? [] : [{ point, year: point.year }]));
  const places = dated.map(({ year }) => shareOf(line.span, year));
  const levels = levelsOf(places);
  const height = 1 + Math.max(0, ...levels);
  return (
    <div className={`drawn levels-${height}`} aria-hidden="true">
      {line.marks.map((year) => (
        <span key={year} className="mark" style={{ insetInlineStart: `${shareOf(line.span, year)}%` }} />
      ))}
      {dated.map(({ point, year }, place) => {
        const from = shareOf(line.span, year);
        const to = point.until === null ? 100 : shareOf(line.span, point.until);
        const word = track.left !== null && place === dated.length - 1 ? heldWord : stanceWords[point.stance];
        const side = from > 80 ? "said late" : "said";
        return (
          <span key={point.position}>
            <span
              className="stretch"
              style={{ insetInlineStart: `${from}%`, inlineSize: `${Math.max(0, to - from)}%` }}
            />
            <span className={`tick level-${levels[place] ?? 0}`} style={{ insetInlineStart: `${from}%` }} />
            {point.until !== null && place === dated.length - 1 && (
              <span className="end" style={{ insetInlineStart: `${to}%` }} />
            )}
            <span
              className={`${side} level-${levels[place] ?? 0}`}
              style={from > 80 ? { insetInlineEnd: `${100 - from}%` } : { insetInlineStart: `${from}%` }}
            >
              {word} {yearIn(year)}
            </span>
          </span>
        );
      })}
    </div>
  );
}

/** Words that would meet stand over each other, the earlier ones higher; in percent of the line a word takes about 30. */
function levelsOf(places: readonly number[]): readonly number[] {
  const levels: number[] = places.map(() => 0);
  for (let at = places.length - 2; at >= 0; at--) {
    const near = levels.filter(
      (_, after) => after > at && Math.abs((places[after] ?? 0) - (places[at] ?? 0)) < 30,
    );
    let level = 0;
    while (near.includes(level) && level < 3) level++;
    levels[at] = level;
  }
  return levels;
}

/** One position in words: when, how, how sure, in what words, said where. */
function Said({ point, asOf }: { readonly point: Point; readonly asOf: number | null }) {
  return (
    <>
      <span className="figure">{point.year === null ? words.undated : yearIn(point.year)}</span>{" "}
      <b className="stance">
        <RecordLink id={point.position} text={stanceWords[point.stance]} asOf={asOf} />
      </b>
      {point.certainty !== null && ` (${inReadersWords(choiceName(point.certainty))})`}
      {point.words !== null && (
        <>
          {" "}
          <q className="sentence" dir="auto" lang={point.lang ?? undefined}>
            {point.words}
          </q>
        </>
      )}
      {point.from.map((pieces, place) => (
        <span key={place} className="quiet">
          {place === 0 ? " " : marks.semicolon}
          <Pieces pieces={pieces} asOf={asOf} />
        </span>
      ))}
      {point.via.length > 0 && (
        <span className="quiet">
          {marks.comma}
          {words.via} <Pieces pieces={point.via} asOf={asOf} />
        </span>
      )}
    </>
  );
}
