import {
  formatNumber,
  type Computation,
  type Figure,
  type Mark,
  type Naming,
  type Pair,
  type Panel,
  type Settings,
} from "../../src/plugin.ts";
import { countedWords, tellingOf, tellsEach, type Telling, type Told } from "./read.ts";

/** The two rates or shares with their exact intervals, and where it has both ends their ratio. */
export function countsFigure(computation: Computation, _settings: Settings, name: Naming): Figure {
  const telling = tellingOf(computation, name);
  const title = telling.of === "shares" ? "Two shares" : "Two rates";
  return { title, panels: [sides(telling), ...ratio(computation, telling)] };
}

function sides(telling: Telling): Panel {
  const { of, per, unit, first, second } = telling;
  const both = [first, second];
  const counted = both.map((side) => `${side.name}: ${countedWords(side, telling, shown)}`).join("; ");
  const bars = of === "shares" ? "Clopper and Pearson" : "Garwood";
  const none = both.flatMap(({ atMost, name }) =>
    atMost === null
      ? []
      : ` None found on ${name}: at most ${shown(100 * atMost)} % have it, at 95 % (1 − 0.05 to the power of 1/n).`,
  );
  const scores = both.flatMap(({ wilson }, row): readonly Pair[] =>
    wilson === null ? [] : wilson.map((end): Pair => [end, row]),
  );
  const strokes: readonly Mark[] =
    scores.length === 0
      ? []
      : [{ mark: "strokes", points: scores, label: "ends of the interval by Wilson’s score" }];
  const over = per === "thing" ? "thing" : unit === "1" ? per : `${unit} of ${per}`;
  return {
    title: of === "shares" ? "The share on each side" : `The rate on each side, per ${over}`,
    caption: `${capital(counted)}. Bars are exact 95 % intervals (${bars}).${none.join("")}`,
    shows: tellsEach(telling) ? "each" : "together",
    x: { label: of === "shares" ? "share that has it" : `count per ${over}`, unit: "1", from: 0 },
    y: { label: "", unit: "1", names: both.map((side) => side.name) },
    marks: [
      ...strokes,
      {
        mark: "dots",
        label: of === "shares" ? "shares" : "rates",
        dots: both.map(({ rate, low, high, name }: Told, row) => ({
          at: [rate, row],
          xEnds: [low, high],
          label: name,
        })),
      },
    ],
  };
}

function ratio({ numbers }: Computation, { of }: Telling): readonly Panel[] {
  const found = numbers["ratio"];
  if (found === undefined || found.low === null || found.high === null || found.low <= 0) return [];
  const { value, low, high } = found;
  const kind = of === "shares" ? "odds ratio" : "ratio of the rates";
  return [
    {
      title: `The ${kind}, first to second`,
      caption: `The bar is the exact 95 % interval, ${shown(low)} to ${shown(high)}; the upright at 1 is where the two sides are alike.`,
      shows: "together",
      x: {
        label: kind,
        unit: "1",
        scale: "log",
        from: Math.min(0.5, 0.8 * low),
        to: Math.max(2, 1.25 * high),
      },
      y: { label: "", unit: "1", names: ["first to second"] },
      marks: [
        { mark: "rule", axis: "x", at: 1, role: "null", label: "alike" },
        {
          mark: "dots",
          label: kind,
          dots: [{ at: [value, 0], xEnds: [low, high], label: "first to second" }],
        },
      ],
    },
  ];
}

function shown(value: number): string {
  return formatNumber(value, 3);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
