import { finding } from "../../base/finding.ts";
import type { Finding, Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { SettingsValues } from "../grammar/settings.ts";
import { nodeAt } from "../yaml/tree.ts";
import type { MapNode, Step } from "../yaml/tree.ts";

/** Another corpus whose artefacts and bibliographies are used in this one: the name they go by here, and its folder. */
export interface Use {
  /** One part of an id: the record `ring-a` there is `AS/ring-a` here. */
  readonly as: string;
  /** Its path from the corpus's folder, parted by `/`: one below it, or `../NAME` directly beside it. */
  readonly folder: string;
}

/** Whether a path names a folder that may be used: inside the corpus or directly beside it, by plain names. */
export function isFolderToUse(folder: string): boolean {
  const parts = folder.split("/");
  const named = parts[0] === ".." ? parts.slice(1) : parts;
  return (
    named.length > 0 &&
    (parts[0] !== ".." || named.length === 1) &&
    folder.length <= 1024 &&
    named.every((part) => plainName.test(part) && part !== "node_modules")
  );
}

/** No name of a hidden folder, a drive or a device, and none that climbs. */
const plainName = /^[^.\\/:\u0000-\u001f\u007f][^\\/:\u0000-\u001f\u007f]{0,254}$/u;
const part = /^[a-z0-9][a-z0-9-]*$/u;

/** The companion corpora of the settings, those that are named as they should be; each name and folder once. */
export function usesIn(
  given: NonNullable<SettingsValues["use"]>,
  file: string,
  root: MapNode,
): { readonly use: readonly Use[]; readonly findings: readonly Finding[] } {
  const use: Use[] = [];
  const findings: Finding[] = [];
  const places = placesOf(root);
  given.forEach(({ as, folder }, place) => {
    const tell = (field: keyof Use, message: Said): void => {
      const { start, end } = nodeAt(root, ["use", places[place] ?? place, field]);
      findings.push(finding("bad-value", message, { file, start, end }));
    };
    if (!part.test(as))
      return tell("as", say`Unexpected name \`${as}\`, expected ${"a-z"}, ${"0-9"} and - without /`);
    if (use.some((one) => one.as === as))
      return tell("as", say`Duplicate name \`${as}\`, expected another for each corpus that is used`);
    if (!isFolderToUse(folder))
      return tell(
        "folder",
        say`Unexpected folder \`${folder}\`, expected one inside this corpus, or directly beside it such as \`${"../NAME"}\``,
      );
    if (use.some((one) => one.folder === folder))
      return tell("folder", say`Duplicate folder \`${folder}\`, expected it once`);
    use.push({ as, folder });
  });
  return { use, findings };
}

/** The places of the entries that could be read, since one that could not is not among the values. */
function placesOf(root: MapNode): readonly number[] {
  const steps: readonly Step[] = ["use"];
  const list = nodeAt(root, steps);
  const items = list.is === "list" ? list.items : [list];
  return items.flatMap((one, place) => {
    const has = (name: string): boolean =>
      one.is === "map" &&
      one.entries.some(({ key, value }) => key === name && value.is === "text" && value.text !== "");
    return has("as") && has("folder") ? [place] : [];
  });
}

/** Whether an id is, or begins with, a name by which a companion corpus goes. */
export function isOfUse(use: readonly Use[], id: Id): boolean {
  return use.some(({ as }) => id === as || id.startsWith(`${as}/`));
}
