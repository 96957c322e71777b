import type { Event } from "../../../show/artefacts/history/events.ts";
import { historyLine } from "../../../show/artefacts/history/line.ts";
import type { HistoryLine, LineMark } from "../../../show/artefacts/history/line.ts";
import type { Look } from "../../../show/artefacts/history/looks.ts";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { marks } from "../../words/reader/marks.ts";
import { yearIn } from "../../words/index.ts";
import { direction, mirrored } from "../../words/reader/language.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { useNarrow } from "../../parts/narrow.ts";
import { choiceName } from "../../../read/grammar/field-words.ts";
import { Pieces } from "../../parts/pieces.tsx";

interface Props {
  readonly events: readonly Event[];
  readonly looks: readonly Look[];
  readonly asOf: number | null;
}

const label = {
  event: ({ kind, when }: Event): string => `${words.kinds[kind]}${marks.comma}${inReadersWords(when)}`,
  look: ({ who, year }: Look): string => `${inReadersWords(who)}${marks.comma}${yearIn(year)}`,
  year: yearIn,
};

/** What befell a thing and when it was looked at, on a line of years and in words. */
export function History({ events, looks, asOf }: Props) {
  const narrow = useNarrow();
  const line = historyLine(events, looks, narrow ? 340 : 760, label);
  if (line === null) return null;
  return (
    <section className="history">
      <h2 className="label">{words.history}</h2>
      <p className="quiet">{words.historyHelp}</p>
      <Line line={line} events={events} />
      <ol className="chronicle">
        {inOrder(events, looks).map((one, place) => (
          <li key={place} className={"look" in one ? "looked" : one.event.alters ? "alters" : ""}>
            <span className="when">
              {"look" in one ? yearIn(one.look.year) : inReadersWords(one.event.when)}
            </span>
            {"look" in one ? <Looked look={one.look} /> : <Befell event={one.event} asOf={asOf} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

type Entry = { readonly look: Look } | { readonly event: Event };

/** Both in one row by their years; in one year what befell it comes first. */
function inOrder(events: readonly Event[], looks: readonly Look[]): readonly Entry[] {
  const year = (one: Entry): number =>
    "look" in one ? one.look.year : (one.event.low ?? one.event.high ?? -Infinity);
  const all: readonly Entry[] = [...events.map((event) => ({ event })), ...looks.map((look) => ({ look }))];
  return all.toSorted((a, b) => (year(a) === year(b) ? 0 : year(a) < year(b) ? -1 : 1));
}

function Befell({ event, asOf }: { readonly event: Event; readonly asOf: number | null }) {
  return (
    <span>
      <span className="event-kind">{words.kinds[event.kind]}</span>
      {": "}
      <span className="sentence" dir="auto">
        {event.what}
      </span>{" "}
      {event.befell.length > 0 && (
        <span className="quiet">
          {words.befell(event.befell.map((one) => inReadersWords(one.name)).join(marks.comma))}{" "}
        </span>
      )}
      <span className="quiet">
        <Pieces pieces={event.from} asOf={asOf} />
      </span>
    </span>
  );
}

function Looked({ look }: { readonly look: Look }) {
  return (
    <span>
      {inReadersWords(look.who)}
      {": "}
      {words.looked(look.measured, look.seen)}
      {look.bases.length > 0 && (
        <span className="quiet"> {words.from(look.bases.map((one) => inReadersWords(choiceName(one))))}</span>
      )}
      {look.after !== null && (
        <span className="quiet" dir="auto">
          {" "}
          {words.after(look.after.what, inReadersWords(look.after.when))}
        </span>
      )}
    </span>
  );
}

const laneHeight = 19;

function Line({ line, events }: { readonly line: HistoryLine; readonly events: readonly Event[] }) {
  const staff = 14 + line.lanesAbove * laneHeight;
  const foot = staff + 30;
  const height = foot + line.lanesBelow * laneHeight + 10;
  return (
    <svg
      className="years"
      direction="ltr"
      width={line.width}
      height={height}
      viewBox={`0 0 ${line.width} ${height}`}
      role="img"
      aria-label={words.historyPicture}
    >
      <path className="staff" d={`M0 ${staff}H${line.width}`} />
      {line.ticks.map((tick) => (
        <g key={tick.at} className="tick">
          <path d={`M${tick.at} ${staff}v6`} />
          <text x={tick.at} y={staff + 19} textAnchor="middle">
            {tick.label}
          </text>
        </g>
      ))}
      {line.above.map((mark) => {
        const y = staff - 12 - mark.lane * laneHeight;
        return (
          <g key={mark.of} className="seen">
            <path className="leader" d={`M${mark.from} ${staff}V${y}`} />
            <circle cx={mark.from} cy={staff} r="3" />
            <MarkLabel mark={mark} y={y} />
          </g>
        );
      })}
      {line.below.map((mark) => {
        const y = foot + 8 + mark.lane * laneHeight;
        const middle = (mark.from + mark.to) / 2;
        return (
          <g key={mark.of} className={events[mark.of]?.alters === true ? "befell alters" : "befell"}>
            <path className="leader" d={`M${middle} ${staff}V${y - 4}`} />
            <path className={mark.vague ? "span vague" : "span"} d={spanOf(mark, staff)} />
            {mark.brokenStart && <path className="span broken" d={`M0 ${staff + 4}H${mark.to}`} />}
            {mark.brokenEnd && (
              <path className="span broken" d={`M${mark.from} ${staff + 4}H${line.width}`} />
            )}
            <MarkLabel mark={mark} y={y} />
          </g>
        );
      })}
    </svg>
  );
}

/** A year is an upright stroke through the line, a span of years a bar under it. */
function spanOf(mark: LineMark, staff: number): string {
  if (mark.brokenStart) return `M${mark.to} ${staff - 6}v12`;
  if (mark.brokenEnd || mark.to - mark.from < 2) return `M${mark.from} ${staff - 6}v12`;
  return `M${mark.from} ${staff + 4}H${mark.to}M${mark.from} ${staff - 2}v8M${mark.to} ${staff - 2}v8`;
}

function MarkLabel({ mark, y }: { readonly mark: LineMark; readonly y: number }) {
  return (
    // A label begins at its right end where lines run from the right; its place is that of its left end.
    <text x={mark.labelAt} y={y} direction={direction} textAnchor={mirrored ? "end" : "start"}>
      {mark.label}
    </text>
  );
}
