import { count, first as lineFirst, paragraph, say } from "../../src/plugin.ts";
import type { Computation, Figure, Naming, Panel, Settings, Stretch, Text } from "../../src/plugin.ts";
import { clashIn, eventsIn, inWords, spanWords, type Told } from "./read.ts";

/** More rows than this would not be read. */
const MOST = 24;

/**
 * The years in which each event may be, as spans on one axis: what is asked first, then what is said to tie to it. Where
 * not all can be true, the years that the clashing dates give by themselves.
 */
export function chronologyFigure(computation: Computation, _settings: Settings, name: Naming): Figure {
  const title = say`When it may have been`;
  if (computation.numbers["consistent"]?.value === 0) {
    const { names, dated } = clashIn(computation, name);
    const caption = say`Of these at least one is wrong: ${inWords(names, 8)}.`;
    return { title, panels: panelOf(say`What the dates that clash say by themselves`, [caption], dated) };
  }
  const events = eventsIn(computation, name);
  const bound = events.filter(isBound);
  const asked = bound.filter((one) => one.asked);
  const unbound = events.filter((one) => !isBound(one)).map((one) => one.name);
  const caption = [
    ...asked.map((one) => lineFirst(say`${one.name}: ${spanWords(one.first, one.last)}.`)),
    ...(unbound.length > 0 ? [say`Without any bound: ${inWords(unbound)}.`] : []),
  ];
  return { title, panels: panelOf(say`The years that all statements together allow`, caption, bound) };
}

function panelOf(title: Text, caption: readonly Text[], all: readonly Told[]): readonly Panel[] {
  if (all.length === 0) return [];
  const rows = all.slice(0, MOST);
  const years = rows.flatMap(({ first, last }) => [first, last]).filter((year) => year !== null);
  const [low, high] = [Math.min(...years), Math.max(...years)];
  const room = Math.max(5, 0.15 * (high - low));
  const open = rows.some(({ first, last }) => first === null || last === null);
  const legend = [
    ...caption,
    say`Uprights are the first and the last year; the figures are the years between them.`,
    open ? say`Dashed, with no upright at one end: open, so far as is said.` : null,
    all.length > MOST ? say`${count(all.length - MOST)} more are not drawn.` : null,
  ];
  return [
    {
      title,
      caption: paragraph(legend),
      shows: "each",
      x: {
        label: say`astronomical year: 1 BC is 0, 2 BC is −1`,
        unit: "1",
        from: low - room,
        to: high + room,
      },
      y: { label: "", unit: "1", names: rows.map((one) => one.name) },
      marks: [
        {
          mark: "edge",
          label: say`years`,
          stretches: rows.map(({ first, last }, row): Stretch => {
            const end = first === null ? "start" : last === null ? "end" : null;
            const ends = { from: first ?? low - room, to: last ?? high + room };
            return { row, ...ends, open: end, ...(end === null ? {} : { endless: true as const }) };
          }),
        },
      ],
    },
  ];
}

function isBound({ first, last }: Told): boolean {
  return first !== null || last !== null;
}
