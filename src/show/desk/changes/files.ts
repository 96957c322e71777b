import { byText } from "../../../base/order.ts";
import { markedIn } from "../../../base/text/conflict-marks.ts";
import { prosePath } from "../../../read/source-file.ts";
import { readYaml } from "../../../read/yaml/text.ts";

/** A file that differs though none of its records does: only in comments and layout, or as a whole. */
export interface FileChanged {
  readonly file: string;
  /** `words`: the scholar's own prose differs; `unread`: nothing of it can be read as it now stands; `unmerged`: since two versions of it were not merged. */
  readonly how: "new" | "gone" | "layout" | "words" | "unread" | "unmerged";
}

/** Files that differ beside those in which something that is recorded does; line ends and byte-order marks alone do not count. */
export function filesChanged(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
  recorded: readonly string[],
): readonly FileChanged[] {
  const known = new Set(recorded);
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((file) => !known.has(file))
    .toSorted(byText)
    .flatMap((file): readonly FileChanged[] => {
      const [was, is] = [before.get(file), after.get(file)];
      if (was === undefined) return [{ file, how: "new" }];
      if (is === undefined) return [{ file, how: "gone" }];
      if (plain(was) === plain(is)) return [];
      return [{ file, how: prosePath.test(file) ? "words" : "layout" }];
    });
}

/** Of some files those of which nothing can be read. */
export function unreadFiles(
  texts: ReadonlyMap<string, string>,
  files: ReadonlySet<string>,
): readonly FileChanged[] {
  return [...files].toSorted(byText).flatMap((file): readonly FileChanged[] => {
    const text = texts.get(file);
    if (text === undefined) return [];
    if (markedIn(text)) return [{ file, how: "unmerged" }];
    const broken = /\.ya?ml$/u.test(file) && readYaml(file, text).root === null;
    return broken ? [{ file, how: "unread" }] : [];
  });
}

function plain(text: string): string {
  return text.replace(/^\ufeff/u, "").replaceAll("\r\n", "\n");
}
