import { formatNumber } from "../../base/quantity/quantity-print.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import { asMap } from "../../derive/prepare/settings.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import type { Plugin, Setting, UnitValue } from "../../plugin.ts";
import { linkTo } from "../pages/pieces.ts";
import type { Piece } from "../pages/pieces.ts";
import { withheldIn } from "../withhold.ts";
import { sizeWords } from "../artefacts/si-words.ts";

/** A setting as it was used. */
export interface SettingLine {
  readonly name: string;
  readonly value: string;
  readonly doc: Text;
  /** Nobody gave it: the plug-in's own. */
  readonly byDefault: boolean;
}

/** The unit that was tested: its size, who gave it, and the things it was found in. */
export interface UnitLine {
  readonly name: string;
  readonly size: string;
  readonly from: readonly Piece[];
  /** Where it comes from, in words, for a unit that is not the corpus's own. */
  readonly source: string | null;
  readonly foundIn: readonly Piece[];
}

/** The settings of a derivation's run, in the order in which its plug-in declares them. */
export function settingLines(
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): readonly SettingLine[] {
  const given = asMap(record.values.parameters);
  return (plugin?.parameters ?? []).flatMap(({ name, doc }) => {
    const setting = derived.run?.settings[name];
    return setting === undefined
      ? []
      : [{ name, value: settingWords(setting), doc, byDefault: given[name] === undefined }];
  });
}

function settingWords(setting: Setting): string {
  switch (setting.kind) {
    case "number":
      return formatNumber(setting.value);
    case "quantity":
      return setting.value.text;
    case "unit":
      return unitWords(setting.value);
    case "text":
      return setting.value;
  }
}

function unitWords({ name, size, u, kind }: UnitValue): string {
  return `${name}, ${sizeWords(size, u, kind)}`;
}

/** The unit of a derivation's run; null where none was given. */
export function unitOf(graph: Graph, derived: Derived): UnitLine | null {
  const setting = Object.values(derived.run?.settings ?? {}).find((one) => one.kind === "unit");
  if (setting?.kind !== "unit") return null;
  const withheld = withheldIn(graph);
  const { name, size, u, kind } = setting.value;
  const own = graph.settings.units.find((one) => one.name === name);
  const known = graph.settings.quantities.units.find(name);
  const links = (ids: readonly string[]): readonly Piece[] =>
    ids.filter((id) => !withheld(id)).map((id) => linkTo(graph, id));
  return {
    name,
    size: sizeWords(size, u, kind),
    from: links(own?.from ?? []),
    source: own === undefined ? (known?.source ?? null) : null,
    foundIn: links(own?.foundIn ?? []),
  };
}
