import type { Id } from "../../../base/finding.ts";
import { decoderFor } from "../../../read/decode/decode.ts";
import { shippedNamed } from "../../../read/bibliography/style/shipped.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import { settingsFields } from "../../../read/grammar/settings.ts";
import type { SettingsValues } from "../../../read/grammar/settings.ts";
import { sectionNames } from "../../../read/prose/sections.ts";
import type { Settings } from "../../../read/settings/settings.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { fileWith } from "./files.ts";
import { writtenValues } from "./written.ts";

/**
 * `corpus.yaml` of the corpus that is given: its bibliographies are those given, no tables and styles of its own go with it, and
 * what is withheld is not named. What is used from other corpora stands in the corpus itself, under the names that it has
 * here. `named` tells what is there.
 */
export function settingsGiven(
  settings: Settings,
  named: (id: Id) => boolean,
  bibliography: readonly string[],
): SourceFile {
  const decoder = decoderFor(settings.file, settings.quantities);
  const read = decoder.map(settings.node, settingsFields) as SettingsValues | null;
  const {
    withhold: _withheld,
    use: _use,
    decimal: _decimal,
    "measurement-tables": _measurements,
    "artefact-tables": _artefacts,
    "citation-style": style,
    bibliography: _bibliography,
    review,
    units,
    rules,
    accept,
    ...rest
  } = read ?? { title: settings.title };
  const sections = review?.filter((one) => (sectionNames as readonly string[]).includes(one)) ?? [];
  const accepted = accept?.filter(({ about = [] }) => about.every(named)) ?? [];
  const levels = new Map([...(rules ?? [])].filter(([rule]) => settings.rules.has(rule)));
  const given: SettingsValues = {
    ...rest,
    format: 1,
    ...(bibliography.length > 0 ? { bibliography } : {}),
    ...(style !== undefined && shippedNamed(style) !== null ? { "citation-style": style } : {}),
    ...(sections.length > 0 ? { review: sections } : {}),
    ...(units === undefined ? {} : { units: unitsGiven(units, settings, named) }),
    ...(levels.size > 0 ? { rules: levels } : {}),
    ...(accepted.length > 0 ? { accept: accepted } : {}),
  };
  const value = writtenValues(given, settingsFields, ({ text }) => text);
  return fileWith("corpus.yaml", { is: "setting", path: [], value });
}

type Units = NonNullable<SettingsValues["units"]>;

/** Units that could be read, by whom they are and where they were found as far as that is given. */
function unitsGiven(units: Units, settings: Settings, named: (id: Id) => boolean): Units {
  const known = new Set(settings.units.map(({ name }) => name));
  return new Map(
    [...units].flatMap(([name, { from = [], "found-in": foundIn = [], ...unit }]) => {
      if (!known.has(name)) return [];
      const [cited, things] = [from.filter(({ key }: Citation) => named(key)), foundIn.filter(named)];
      return [
        [
          name,
          {
            ...unit,
            ...(cited.length > 0 ? { from: cited } : {}),
            ...(things.length > 0 ? { "found-in": things } : {}),
          },
        ] as const,
      ];
    }),
  );
}
