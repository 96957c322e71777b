import type { Json } from "../../../base/json.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import type { Derivations } from "../../../derive/derive.ts";
import { asMap, readSettingsOf } from "../../../derive/prepare/settings.ts";
import { derivationOf } from "../../../link/inputs.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import type { ParameterDeclaration, Plugin, Setting } from "../../../plugin.ts";
import { whyWords } from "../../numbers/why.ts";
import { siUnitFor, siWords, sizeWords } from "../../artefacts/si-words.ts";
import { say } from "../../../base/text/said/said.ts";

/** How a setting is understood, or what is wrong with it; both null where none is given and none is needed. */
export interface Understood {
  readonly as: Text | null;
  readonly problem: Text | null;
}

/** A setting of the plug-in as a field to fill in. */
export interface SettingField {
  readonly name: string;
  readonly kind: ParameterDeclaration["kind"];
  readonly doc: Text;
  readonly choices: readonly string[];
  readonly byDefault: string | null;
  /** As it stands in the draft: a text, or another derivation's number. */
  readonly written: string;
  readonly number: string | null;
  readonly understood: Understood;
}

/** The settings of a plug-in as they stand in a draft, each read by itself as the derivation reads it. */
export function settingFields(
  graph: Graph,
  derivations: Derivations,
  plugin: Plugin,
  parameters: Json | undefined,
): readonly SettingField[] {
  const given = asMap(parameters);
  return plugin.parameters.map((parameter) => {
    const value = given[parameter.name];
    const reference = asMap(value)["number"];
    return {
      name: parameter.name,
      kind: parameter.kind,
      doc: parameter.doc,
      choices: parameter.choices ?? [],
      byDefault: parameter.default ?? null,
      written: typeof value === "string" ? value : "",
      number: typeof reference === "string" ? reference : null,
      understood:
        typeof reference === "string"
          ? numberUnderstood(graph, derivations, reference)
          : understood(graph, plugin, parameter, value),
    };
  });
}

/** A text as one setting would be read from it. */
export function understood(
  graph: Graph,
  plugin: Plugin,
  parameter: ParameterDeclaration,
  value: Json | undefined,
): Understood {
  if (value === undefined || value === "") return { as: null, problem: null };
  const only = { ...plugin, parameters: [parameter] };
  const read = readSettingsOf(only, { [parameter.name]: value }, graph.settings, () => "pending");
  if (read === "pending") return { as: null, problem: null };
  if ("why" in read) return { as: null, problem: read.why };
  const setting = read.settings[parameter.name];
  return { as: setting === undefined ? null : settingWords(setting), problem: null };
}

function settingWords(setting: Setting): string {
  switch (setting.kind) {
    case "number":
      return formatNumber(setting.value, 12);
    case "quantity":
      return siWords(setting.value, siUnitFor(setting.value.kind, [setting.value.value]));
    case "unit":
      return `${setting.value.name}, ${sizeWords(setting.value.size, setting.value.u, setting.value.kind)}`;
    case "text":
      return setting.value;
  }
}

/** Another derivation's number, by its name and value, or why there is none. */
export function numberUnderstood(graph: Graph, { byId }: Derivations, reference: string): Understood {
  const id = derivationOf(reference);
  const derived = byId.get(id);
  const name = reference.slice(id.length + 1);
  if (derived === undefined || !graph.records.has(id))
    return { as: null, problem: say`Unknown number \`${reference}\`` };
  const number = Object.hasOwn(derived.numbers, name) ? derived.numbers[name] : undefined;
  if (number === undefined) return { as: null, problem: whyWords(graph, derived) };
  return { as: say`${labelText(graph, id)}: ${name} ${formatNumber(number.value)}`, problem: null };
}
