import {
  first as lineFirst,
  paragraph,
  say,
  type Computation,
  type Figure,
  type Mark,
  type Naming,
  type Pair,
  type Panel,
  type Settings,
  type Text,
} from "../../src/plugin.ts";
import { rateWords, shown, tellingOf, tellsEach, type Telling, type Told } from "./read.ts";

/** The two rates or shares with their exact intervals, and where it has both ends their ratio. */
export function countsFigure(computation: Computation, _settings: Settings, name: Naming): Figure {
  const telling = tellingOf(computation, name);
  const title = telling.of === "shares" ? say`Two shares` : say`Two rates`;
  return { title, panels: [sides(telling), ...ratio(computation, telling)] };
}

function sides(telling: Telling): Panel {
  const { of, first, second } = telling;
  const both = [first, second];
  const none = both.map(({ atMost, name }) =>
    atMost === null
      ? null
      : say`None found on ${name}: at most ${`${shown(100 * atMost)} %`} have it, at 95 % (1 − 0.05 to the power of 1/n).`,
  );
  const scores = both.flatMap(({ wilson }, row): readonly Pair[] =>
    wilson === null ? [] : wilson.map((end): Pair => [end, row]),
  );
  const strokes: readonly Mark[] =
    scores.length === 0
      ? []
      : [{ mark: "strokes", points: scores, label: say`ends of the interval by Wilson’s score` }];
  return {
    title: of === "shares" ? say`The share on each side` : rateTitle(telling),
    caption: paragraph([
      lineFirst(say`${sideWords(first, telling)}; ${sideWords(second, telling)}.`),
      of === "shares"
        ? say`Bars are exact 95 % intervals (Clopper and Pearson).`
        : say`Bars are exact 95 % intervals (Garwood).`,
      ...none,
    ]),
    shows: tellsEach(telling) ? "each" : "together",
    x: { label: of === "shares" ? say`share that has it` : rateLabel(telling), unit: "1", from: 0 },
    y: { label: "", unit: "1", names: both.map((side) => side.name) },
    marks: [
      ...strokes,
      {
        mark: "dots",
        label: of === "shares" ? say`shares` : say`rates`,
        dots: both.map(({ rate, low, high, name }: Told, row) => ({
          at: [rate, row],
          xEnds: [low, high],
          label: name,
        })),
      },
    ],
  };
}

function sideWords(side: Told, telling: Telling): Text {
  return telling.of === "shares"
    ? say`${side.name}: ${shown(side.count)} of ${shown(side.exposure)}`
    : say`${side.name}: ${rateWords(side, telling)}`;
}

function rateTitle({ per, unit }: Telling): Text {
  if (per === "thing") return say`The rate on each side, per thing`;
  return unit === "1"
    ? say`The rate on each side, per ${per}`
    : say`The rate on each side, per ${unit} of ${per}`;
}

function rateLabel({ per, unit }: Telling): Text {
  if (per === "thing") return say`count per thing`;
  return unit === "1" ? say`count per ${per}` : say`count per ${unit} of ${per}`;
}

function ratio({ numbers }: Computation, { of }: Telling): readonly Panel[] {
  const found = numbers["ratio"];
  if (found === undefined || found.low === null || found.high === null || found.low <= 0) return [];
  const { value, low, high } = found;
  const kind = of === "shares" ? say`odds ratio` : say`ratio of the rates`;
  return [
    {
      title:
        of === "shares" ? say`The odds ratio, first to second` : say`The ratio of the rates, first to second`,
      caption: say`The bar is the exact 95 % interval, ${shown(low)} to ${shown(high)}; the upright at 1 is where the two sides are alike.`,
      shows: "together",
      x: {
        label: kind,
        unit: "1",
        scale: "log",
        from: Math.min(0.5, 0.8 * low),
        to: Math.max(2, 1.25 * high),
      },
      y: { label: "", unit: "1", names: [say`first to second`] },
      marks: [
        { mark: "rule", axis: "x", at: 1, role: "null", label: say`alike` },
        {
          mark: "dots",
          label: kind,
          dots: [{ at: [value, 0], xEnds: [low, high], label: say`first to second` }],
        },
      ],
    },
  ];
}
