import type { SourceFile } from "../../source-file.ts";
import type { Use } from "../use.ts";

/** The files of a corpus apart from those of the companion corpora. */
export interface FilesApart {
  readonly own: readonly SourceFile[];
  /** By the folder of the corpus. */
  readonly others: ReadonlyMap<string, readonly SourceFile[]>;
}

/** Parts the files of a corpus from those of other corpora, which lie below a `corpus.yaml` of their own or outside its folder. */
export function filesApart(files: readonly SourceFile[]): FilesApart {
  const folders = files.flatMap(({ path }) => (path.endsWith(main) ? [path.slice(0, -main.length)] : []));
  if (folders.length === 0 && !files.some(({ path }) => path.startsWith("../")))
    return { own: files, others: none };
  // A corpus inside another is nearer to its files than that one.
  const nearest = folders.toSorted((a, b) => b.length - a.length);
  const own: SourceFile[] = [];
  const others = new Map<string, SourceFile[]>(folders.map((folder) => [folder, []]));
  for (const file of files) {
    const folder = nearest.find((one) => file.path.startsWith(`${one}/`));
    if (folder !== undefined) others.get(folder)?.push(file);
    else if (!file.path.startsWith("../")) own.push(file);
  }
  return { own, others };
}

const main = "/corpus.yaml";
const none: FilesApart["others"] = new Map();

/** The corpus that a file belongs to among the companions; null for a file of this corpus. */
export function ownerOfFile<U extends Use>(use: readonly U[], file: string): U | null {
  if (use.length === 0) return null;
  const those = use.filter(({ folder }) => file.startsWith(`${folder}/`));
  return those.toSorted((a, b) => b.folder.length - a.folder.length)[0] ?? null;
}
