import { isList } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import type { Graph } from "../../link/graph.ts";
import type { InputDeclaration, Plugin, Setting, Settings } from "../../plugin.ts";
import { texts } from "../prepare/select.ts";
import { asMap } from "../prepare/settings.ts";

/** A selection that names its dimension, with the one besides that a parameter names where the input takes it along. */
export function takingAlong(
  { takesAlong }: InputDeclaration,
  input: Json,
  parameters: Json | undefined,
): Json {
  const more = takesAlong === undefined ? [] : texts(asMap(parameters)[takesAlong]);
  const selection = asMap(input);
  if (more.length === 0 || isList(input) || selection["dimension"] === undefined) return input;
  return { ...selection, dimension: [...texts(selection["dimension"]), ...more] };
}

/** Settings in which a parameter that names a dimension has the one name for all its spellings. */
export function dimensionsNamed(plugin: Plugin, settings: Settings, graph: Graph): Settings {
  const names = plugin.inputs.flatMap(({ takesAlong }) => takesAlong ?? []);
  return Object.fromEntries(
    Object.entries(settings).map(([name, setting]): readonly [string, Setting] => [
      name,
      setting.kind === "text" && names.includes(name)
        ? { kind: "text", value: graph.dimensionName(setting.value) }
        : setting,
    ]),
  );
}
