import {
  fieldsOf,
  first,
  formatNumber,
  logFactorial,
  numberOf,
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
import { presentAfter } from "./detection.ts";
import { scale, silentOnes } from "./sentence.ts";

const POINTS = 100;

/** What the silence is worth on the scale of likelihood ratios, and how well its source's habit is known. */
export function silenceFigure(computation: Computation, _settings: Settings, name: Naming): Figure {
  return {
    title: say`A silence and what it is worth`,
    panels: [worth(computation), habit(computation, name)],
  };
}

function worth({ numbers, data }: Computation): Panel {
  const ratio = numbers["likelihood-ratio"];
  const value = ratio?.value ?? 1;
  const [low, high] = [ratio?.low ?? value, ratio?.high ?? value];
  const [left, least, most] = [value, high, low].map((one) => percent(presentAfter(one, 0.5)));
  const band =
    numberOf(fieldsOf(data)["known"]) === 0
      ? say`Nothing is known of the reporting rate: the point is what all rates alike give, and shaded is only what single rates from 0.025 to 0.975 would give, ${shown(low)} to ${shown(high)}.`
      : say`Shaded, the band that the 95 % interval of the reporting rate gives: ${shown(low)} to ${shown(high)}.`;
  return {
    title: say`How much more likely the silence is where there was nothing`,
    caption: paragraph([
      band,
      say`The uprights are the scale of Kass & Raftery 1995 (from memory): from 3 on positive, from 20 on strong, from 150 on very strong.`,
      say`Who thought presence and absence equally likely before is left with ${`${left ?? ""} %`} for presence (${least ?? ""} to ${`${most ?? ""} %`}).`,
    ]),
    shows: "together",
    x: {
      label: say`likelihood ratio, absent to present`,
      unit: "1",
      scale: "log",
      from: Math.min(0.8, 0.8 * low),
      to: Math.max(1000, 1.3 * high),
    },
    y: { label: "", unit: "1", names: [say`this silence`] },
    marks: [
      { mark: "reach", axis: "x", from: low, to: high, label: say`for the rates within their 95 % interval` },
      ...scale.map(({ from, says }): Mark => ({
        mark: "rule",
        axis: "x",
        at: from,
        role: "zero",
        label: says,
      })),
      { mark: "dots", label: say`likelihood ratio`, dots: [{ at: [value, 0], label: say`this silence` }] },
    ],
  };
}

function habit(computation: Computation, name: Naming): Panel {
  const data = fieldsOf(computation.data);
  const [known, reported] = [numberOf(data["known"]), numberOf(data["reported"])];
  const rate = computation.numbers["reporting-rate"];
  const ends: Pair = [rate?.low ?? 0, rate?.high ?? 1];
  const places = Array.from({ length: POINTS + 1 }, (_, i) => i / POINTS);
  return {
    title: say`The rate at which such traces are reported`,
    caption: habitWords(computation, name, ends),
    shows: "together",
    x: { label: say`share of such traces reported`, unit: "1", from: 0, to: 1 },
    y: { label: say`density`, unit: "1", from: 0 },
    marks: [
      { mark: "reach", axis: "x", from: ends[0], to: ends[1], label: say`95 % interval` },
      {
        mark: "line",
        points: places.map((x): Pair => [x, density(x, reported, known)]),
        role: "main",
        label: say`after counting`,
      },
      {
        mark: "line",
        points: [
          [0, 1],
          [1, 1],
        ],
        role: "null",
        label: say`before`,
      },
      {
        mark: "rule",
        axis: "x",
        at: rate?.value ?? 0.5,
        role: "main",
        label: say`mean ${shown(rate?.value ?? 0.5)}`,
      },
    ],
  };
}

/** How many of the known traces the silent source reports, and what the curve of its rate shows. */
function habitWords(computation: Computation, name: Naming, [low, high]: Pair): Text {
  const data = fieldsOf(computation.data);
  const known = numberOf(data["known"]);
  const { words: who, several } = silentOnes(computation, name);
  if (known === 0)
    return say`No such trace is known by which ${who} could be judged: any rate is as likely as any other.`;
  const reported = String(numberOf(data["reported"]));
  return paragraph([
    first(
      several
        ? say`${who} report ${reported} of ${String(known)} such traces known.`
        : say`${who} reports ${reported} of ${String(known)} such traces known.`,
    ),
    say`The curve says how likely each rate is after that; shaded, its middle 95 % (${shown(low)} to ${shown(high)}).`,
    say`Dotted, before anything was counted.`,
  ]);
}

/** Density of Beta(1 + k, 1 + m − k) at a share. */
function density(x: number, reported: number, known: number): number {
  const missed = known - reported;
  const norm = logFactorial(known + 1) - logFactorial(reported) - logFactorial(missed);
  if (x === 0) return reported === 0 ? Math.exp(norm) : 0;
  if (x === 1) return missed === 0 ? Math.exp(norm) : 0;
  return Math.exp(norm + reported * Math.log(x) + missed * Math.log1p(-x));
}

function shown(value: number): string {
  return formatNumber(value, 2);
}

function percent(share: number): string {
  return formatNumber(100 * share, 2);
}
