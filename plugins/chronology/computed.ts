import {
  boundsOf,
  refuseFewer,
  say,
  smallestImpossible,
  type Bounds,
  type Chronicle,
  type Computation,
  type ComputedNumber,
  type DatedEvent,
  type Inputs,
  type Json,
  type Recorded,
  type Refusal,
  type Settings,
  type Tools,
} from "../../src/plugin.ts";

/** The first and the last year in which an event may be; null where an end is open. */
interface Span {
  readonly first: number | null;
  readonly last: number | null;
}

const bare = (value: number): ComputedNumber => ({ value, low: null, high: null });

/** Whether all that is said of some dates can be true, and if so the first and the last year of what is asked. */
export function computed(
  _inputs: Inputs,
  _settings: Settings,
  _tools: Tools,
  recorded?: Recorded,
): Computation | Refusal {
  const chronicle = recorded?.dates["of"] ?? { events: [], statements: [] };
  const { events, statements } = chronicle;
  const few = refuseFewer(statements.length, 1, say`dates or relations`);
  if (few !== null) return few;
  const bounds = boundsOf(statements);
  const spans = events.map(({ event }) => spanOf(bounds?.get(event)));
  const asked = spans.filter((_, at) => events[at]?.asked);
  const [earliest, latest] = [outermost(asked, "first"), outermost(asked, "last")];
  return {
    numbers: {
      consistent: bare(bounds === null ? 0 : 1),
      ...(bounds === null || earliest === null ? {} : { earliest: bare(earliest) }),
      ...(bounds === null || latest === null ? {} : { latest: bare(latest) }),
    },
    leftOut: [],
    warnings: [
      ...(statements.some((one) => one.loose) ? ["loose-dates"] : []),
      ...(bounds !== null && (earliest === null || latest === null) ? ["open-end"] : []),
    ],
    data: {
      statements: statements.length,
      events: events.map((event, at) => shown(event, spans[at])),
      clash: bounds === null ? clashIn(chronicle) : [],
    },
  };
}

/** A year is a stretch: what is before the beginning of a year was in the year before at the latest. */
function spanOf(bounds: Bounds | undefined): Span {
  if (bounds === undefined) return { first: null, last: null };
  const { low, high, highStrict } = bounds;
  return {
    first: low === null ? null : Math.floor(low),
    last: high === null ? null : highStrict ? Math.ceil(high) - 1 : Math.floor(high),
  };
}

/** Over all that is asked the first first year, or the last last one; null where one of them is open. */
function outermost(spans: readonly Span[], end: "first" | "last"): number | null {
  const years = spans.map((span) => span[end]).filter((year) => year !== null);
  if (years.length === 0 || years.length < spans.length) return null;
  return end === "first" ? Math.min(...years) : Math.max(...years);
}

/** Statements that cannot all be true, though any fewer of them can, with the years that each gives by itself. */
function clashIn({ events, statements }: Chronicle): Json {
  return (smallestImpossible(statements) ?? []).map(({ id, record, kind, says }): Json => {
    const alone = boundsOf([{ id, says }]);
    // A history dates its own entry; that the thing was made by then is no date of the thing.
    const dated = events.filter(({ text }) => (kind === "history") === (text !== ""));
    return {
      record,
      kind,
      events:
        kind === "relation"
          ? []
          : dated.flatMap((event) =>
              alone?.has(event.event) ? [shown(event, spanOf(alone.get(event.event)))] : [],
            ),
    };
  });
}

function shown({ record, text, asked }: DatedEvent, span: Span | undefined): Json {
  return { record, text, asked, first: span?.first ?? null, last: span?.last ?? null };
}
