import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { paragraph } from "../../../../base/text/said/paragraph.ts";
import { count, row, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Figure, Plugin } from "../../../../plugin.ts";
import { figureOf } from "../../../numbers/figure.ts";
import { cautionsOf } from "../../../numbers/number.ts";
import { titleOf } from "../../../numbers/value.ts";
import { shownUnder, withheldIn } from "../../../withhold.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Captioned, FigureDesk } from "../desk.ts";
import { abbreviationsIn } from "./abbreviations.ts";
import { beatenSaid } from "./beaten.ts";
import { credit, dataFrom, inRow, joined } from "./credits.ts";

/** How much of the key of a computation stands in a caption; the whole stands where computations are declared. */
const shownOfKey = 12;

/** The figure of a computed number with a caption that stands by itself; null where there is none that may be shown. */
export function computedFigure({ model, plugins }: FigureDesk, id: Id): Captioned | null {
  const { graph, derivations } = model;
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  if (record?.list !== "derivations" || !derived || !shownUnder(model)(id)) return null;
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const drawn = figureOf(graph, derived, plugin);
  if (drawn === null || drawn.figure.panels.length === 0 || derived.run === null) return null;
  const { figure, leftOut } = drawn;
  const run = derived.run.key;
  const { met, general } = cautionsOf(derived, plugin);
  const beaten = beatenSaid(model, derived);
  const several = figure.panels.length > 1;
  const panels = figure.panels.map(({ caption }, place): Inlines =>
    several ? [{ is: "strong", of: [String.fromCharCode(97 + place)] }, " ", caption] : [caption],
  );
  const method = plugin === undefined ? record.values.plugin : `${plugin.id} ${plugin.version}`;
  const title = titleOf(graph, record);
  return {
    title,
    picture: { is: "computed", derivation: id, figure },
    alt: paragraph(figure.panels.map((one) => one.caption)),
    caption: joined([
      [{ is: "strong", of: [title, "."] }],
      ...panels,
      rowsOf(figure),
      counted(graph, derived, plugin),
      states(graph, derived.used),
      abbreviationsIn(figure),
      leftOut ? [say`Panels that would show something withheld are left out.`] : [],
      dataFrom(graph, derived.used),
      [say`Computed with ${method}, run `, { is: "printed", text: run.slice(0, shownOfKey), run }, "."],
      credit(graph),
    ]),
    cautions: [...(beaten === null ? [] : [beaten]), ...met, ...general],
    computation: { run, derivation: id, title, method },
  };
}

/** Names of rows longer than this may be cut in a narrow figure. */
const longName = 20;

/** What stands in the rows of a panel, where its names may be too long for the figure. */
function rowsOf({ panels }: Figure): Inlines {
  const lists = panels
    .map(({ y }) => y.names ?? [])
    .filter((names) => names.some((one) => inEnglish(one).length > longName));
  const told = new Map(lists.map((names) => [names.map(inEnglish).join("\n"), names]));
  return joined([...told.values()].map((names) => [say`Rows from the top: ${inRow(names)}.`]));
}

/**
 * How many it was computed on: the n of the method itself, which takes pairs for one or merges readings, beside a second row
 * that of this; and the readings that these are from where they are more; of a method that has no n the readings alone.
 */
function counted(graph: Graph, { used, numbers, run }: Derived, plugin: Plugin | undefined): Inlines {
  const of = (list: string): number => used.filter((id) => graph.records.get(id)?.list === list).length;
  const [measured, seen] = [of("measurements"), of("observations")];
  const readings = [
    ...(measured > 0 ? [measurements(measured)] : []),
    ...(seen > 0 ? [observations(seen)] : []),
  ];
  if (readings.length === 0) return [];
  const n = Object.hasOwn(numbers, "n") ? numbers["n"]?.value : undefined;
  if (n === undefined) return [say`Computed from ${row(readings)}.`];
  const paired = (plugin?.inputs ?? []).some((one) => one.pairedWith !== undefined);
  // What comes of another computation is a setting of this one and no reading.
  const read = (name: string): number =>
    (run?.inputs[name] ?? []).filter(({ id }) => graph.records.has(id)).length;
  const [, ...besides] = paired ? [] : (plugin?.inputs ?? []).map(({ name }) => read(name));
  const all = [n, ...besides.filter((one) => one > 0)];
  const sum = all.reduce((total, one) => total + one, 0);
  const told = row(all.map(String));
  if (sum === measured && seen === 0) return [say`n = ${told} (${say`measurements`}).`];
  if (sum === seen && measured === 0) return [say`n = ${told} (${say`observations`}).`];
  return [say`n = ${told} (${say`from ${row(readings)}`}).`];
}

const measurements = (n: number): Said => (n === 1 ? say`1 measurement` : say`${count(n)} measurements`);
const observations = (n: number): Said => (n === 1 ? say`1 observation` : say`${count(n)} observations`);

/** How much of what was measured was preserved or reconstructed only; of what is withheld nothing is told. */
function states(graph: Graph, used: readonly Id[]): Inlines {
  const withheld = withheldIn(graph);
  const all = used.flatMap((id) => {
    const record = graph.records.get(id);
    return record?.list === "measurements" && !withheld(id) ? [record.values] : [];
  });
  const preserved = all.filter(
    ({ state, value }) => state === "preserved" || value.form === "at-least",
  ).length;
  const reconstructed = all.filter(({ state }) => state === "reconstructed").length;
  return joined([
    preserved === 0 ? [] : [say`Preserved, not whole, and so lower bounds: ${String(preserved)}.`],
    reconstructed === 0 ? [] : [say`Reconstructed: ${String(reconstructed)}.`],
  ]);
}
