import type { Id } from "../../base/finding.ts";
import type { Plugin, Settings } from "../../plugin.ts";
import type { Choice } from "../lens.ts";
import { runOf } from "../run.ts";
import type { Run } from "../run.ts";

/** How many sets are drawn where a number is only looked at again without something. */
export const fewDraws = 1000;

/** The sets that a run draws; null where nothing is drawn. */
export function drawsIn(run: Run): number | null {
  const draws = run.settings["draws"];
  return draws?.kind === "number" ? draws.value : null;
}

/**
 * A run with the unit that another choice for it takes, and with no more draws than it wants; itself where that is no
 * other, or nothing is drawn.
 */
export function asChosen(run: Run, id: Id, plugins: readonly Plugin[], choices: readonly Choice[]): Run {
  const own = choices.filter((one) => one.derivation === id);
  const plugin = plugins.find((one) => one.id === run.plugin);
  const settings = { ...run.settings, ...unitIn(run, own), ...drawsFor(run, own, plugin) };
  const same = Object.entries(settings).every(([name, setting]) => run.settings[name] === setting);
  if (same || plugin === undefined) return run;
  const { inputs, looks, recorded } = run;
  return runOf(plugin, { inputs, settings, looks, ...(recorded === undefined ? {} : { recorded }) });
}

function drawsFor(run: Run, own: readonly Choice[], plugin: Plugin | undefined): Settings {
  const most = Math.min(...own.flatMap((one) => one.draws ?? []));
  const draws = drawsIn(run);
  // What a stranger's plug-in means by a setting of that name nobody knows.
  if (plugin?.guest || draws === null || draws <= most) return {};
  return { draws: { kind: "number", value: most } };
}

function unitIn(run: Run, own: readonly Choice[]): Settings {
  const unit = own.find((one) => one.unit !== undefined)?.unit;
  const place = Object.entries(run.settings).find(([, setting]) => setting.kind === "unit")?.[0];
  if (unit === undefined || place === undefined) return {};
  const { name, kind, size, u } = unit;
  return { [place]: { kind: "unit", value: { name, kind, size, u } } };
}
