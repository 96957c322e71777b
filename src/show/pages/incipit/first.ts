import type { SourceFile } from "../../../read/source-file.ts";
import { filesApart } from "../../../read/settings/companions/files.ts";

/** The files from which the questions and their answers can be told, and those that are left. */
export interface Parted {
  readonly first: readonly SourceFile[];
  readonly rest: readonly SourceFile[];
}

const records = /\.ya?ml$/;
/** A list of questions or of claims begins. */
const asks = /^questions[ \t]*:/m;
const claims = /^claims[ \t]*:/m;

/**
 * Parts the files of a corpus so that the settings, the questions and the claims that answer them come first. It goes by
 * how files look and reads nothing: what it takes for no answer comes with the rest.
 */
export function firstOf(files: readonly SourceFile[]): Parted {
  const first = new Set<SourceFile>();
  const wanted = new Set<string>();
  // No question of a companion corpus is one of this.
  const { own } = filesApart(files);
  for (const file of own) {
    if (file.path === "corpus.yaml") first.add(file);
    else if (records.test(file.path) && asks.test(file.text)) {
      first.add(file);
      for (const id of answersIn(file.text)) wanted.add(id);
    }
  }
  for (const file of first) for (const id of idsIn(file.text)) wanted.delete(id);
  for (const file of own) {
    if (wanted.size === 0) break;
    if (first.has(file) || !records.test(file.path) || !claims.test(file.text)) continue;
    for (const id of idsIn(file.text)) if (wanted.delete(id)) first.add(file);
  }
  return { first: files.filter((file) => first.has(file)), rest: files.filter((file) => !first.has(file)) };
}

/** What looks like the ids of answers: in a row after the word, or one to a line below it. */
function answersIn(text: string): readonly string[] {
  const rows = text.matchAll(
    /\banswers[ \t]*:((?:[ \t]*\[[^\]]*\]?)|(?:(?:\s*\n\s*-[ \t]+[^\s:]+(?=\s*(?:\n|$)))+)|.*)/g,
  );
  return [...rows].flatMap(([, list = ""]) => list.match(/[a-z0-9][a-z0-9/-]*/g) ?? []);
}

function idsIn(text: string): readonly string[] {
  return [...text.matchAll(/\bid[ \t]*:[ \t]*["']?([a-z0-9][a-z0-9/-]*)/g)].flatMap(([, id]) => id ?? []);
}

/** A part of a file that holds its lists of questions and claims alone: less to read, while the rest is still to come. */
export function listsFirst(file: SourceFile): SourceFile {
  if (file.path === "corpus.yaml" || !records.test(file.path)) return file;
  const lists = file.text.split(/\r?\n(?=[^\s#-])/);
  return { ...file, text: lists.filter((list) => asks.test(list) || claims.test(list)).join("\n") };
}
