import { finding } from "../../base/finding.ts";
import type { Finding, Id } from "../../base/finding.ts";
import { nearestAmong } from "../../base/nearest.ts";
import { say } from "../../base/text/said/said.ts";
import { slipAmong } from "../../base/text/slip.ts";
import type { Source } from "../../read/bibliography/read.ts";
import { suchAs } from "../../read/decode/named.ts";
import { spanOf } from "../../read/record.ts";
import type { Settings } from "../../read/settings/settings.ts";
import { isEmpty, valueAt } from "../../read/yaml/tree.ts";
import type { Node, Step } from "../../read/yaml/tree.ts";
import type { AnyLinked } from "../graph.ts";

/** Ids in the settings that lead nowhere, with the nearest names; of what is lost with what it stood in something else was told. */
export function misplacedSettings(
  settings: Settings,
  records: ReadonlyMap<Id, AnyLinked>,
  sources: ReadonlyMap<Id, Source>,
  isLost: (id: Id) => boolean,
): readonly Finding[] {
  const place = { file: settings.file, node: settings.node };
  const names = [...records.keys(), ...sources.keys()];
  const [nearest, slip] = [nearestAmong(names), slipAmong(names)];
  const tell = (id: Id, path: readonly Step[]): readonly Finding[] => {
    if (records.has(id) || sources.has(id) || isLost(id)) return [];
    const near = nearest(id);
    const meant = slip(id);
    const at = spanOf(place, ...path);
    // What is written with a locator behind it, or in quotes, is not the id alone.
    const bare = at.end - at.start === id.length;
    const fix =
      meant !== null && bare ? { label: say`Write ${meant}`, edits: [{ ...at, text: meant }] } : null;
    const message = say`Unknown id \`${id}\`, expected ${suchAs(say`a record or a source`, near)}`;
    return [finding("unknown-reference", message, at, { fix })];
  };
  // What the companion corpora withhold stands behind; an entry that could not be read is none.
  const own = textPlaces(valueAt(settings.node, "withhold"));
  return [
    ...own.flatMap((at, n) => tell(settings.withhold[n] ?? "", ["withhold", at])),
    ...settings.accept.flatMap((one, at) =>
      one.about.flatMap((id, n) => tell(id, ["accept", at, "about", n])),
    ),
    ...settings.units.flatMap((unit) => [
      ...unit.foundIn.flatMap((id, at) => tell(id, ["units", unit.name, "found-in", at])),
      ...unit.from.flatMap((id, at) => tell(id, ["units", unit.name, "from", at])),
    ]),
  ];
}

/** The places of the texts in a list; a single one counts as a list of it, an empty value as none. */
function textPlaces(node: Node | null): readonly number[] {
  if (node === null || isEmpty(node)) return [];
  if (node.is !== "list") return node.is === "text" ? [0] : [];
  return node.items.flatMap((one, at) => (one.is === "text" ? [at] : []));
}
