import { arabicImport } from "../arabic/desk/import.ts";
import { told } from "../reader/told.ts";
import { counted } from "../../../base/text/counted.ts";
import type { Likeness } from "../../../read/bibliography/incoming/alike/alike.ts";

const many = (n: number, one: string, more: string): string =>
  n === 1 ? `one ${one}` : `${counted(n)} ${more}`;
const upper = (text: string): string => text.replace(/^\p{L}/u, (letter) => letter.toUpperCase());

/** Words of the page on which bibliographies come in. */
export const importWords = told(
  {
    title: "Bring in a bibliography or a table",
    action: "Bring in a bibliography or a table",
    lead: "Files of BibTeX or biblatex, RIS, or CSL-JSON, each entry kept as it is written; or tables of measurements or artefacts, with commas, semicolons or tabs. Nothing is changed in the corpus before you say so.",
    readOnly: (why: string) => `Nothing can be brought into this corpus: ${why}`,
    drop: "Drop files here, or",
    choose: "choose files",
    files: "Files to bring in",
    paste: "Or paste entries or a table as text",
    pasteLabel: "Entries or a table as text",
    pasted: (n: number) => (n === 1 ? "pasted text" : `pasted text ${n}`),
    readPasted: "Read the text",
    tooLarge: "It is larger than 64 MiB; divide it among several files.",
    noText: "It is no UTF-8 text; save it as UTF-8 and choose it again.",
    noBibliography: "It is neither BibTeX, RIS, CSL-JSON nor a table.",
    entriesIn: (n: number) => (n === 0 ? "no entry that can be read" : many(n, "entry", "entries")),
    rowsIn: (n: number) => (n === 0 ? "no row that can be read" : many(n, "row", "rows")),
    takeAway: "take away",
    takeAwayOne: (name: string) => `Take away ${name}`,
    reading: "Reading …",
    unreadable: "The corpus itself cannot be read; see its findings first.",
    counts: (added: number, merged: number, left: number, failed: number) =>
      [
        ...(added > 0 || merged + left + failed === 0 ? [`${added} to be added`] : []),
        ...(merged > 0 ? [`${merged} to be merged`] : []),
        ...(left > 0 ? [`${left} left alone`] : []),
        ...(failed > 0 ? [`${failed} not read`] : []),
      ].join(", "),
    alike: "There already, or like another",
    alikeWhy: "They are left alone unless you choose otherwise.",
    fresh: "New",
    failed: "Not read",
    failedWhy: "Mend them in their file and choose it again; the others can come in without them.",
    besides: (n: number) => `Outside of the entries, and left behind (${n})`,
    more: (n: number) => `Show more (${n} not shown)`,
    line: (file: string, line: number) => `${file}, line ${line}`,
    hidden: "It is like something that the corpus withholds, and is left alone.",
    unshown: "It names something that the corpus withholds; its text is not shown.",
    like: { corpus: "like", file: "like, of what comes in," } as const,
    why: {
      same: "the same in every field",
      doi: "the same DOI",
      isbn: "the same ISBN",
      title: "the same title and year",
      key: "the same key",
    } as Readonly<Record<Likeness, string>>,
    ways: "What becomes of it",
    waysOf: (name: string) => `What becomes of ${name}`,
    leave: "Leave what is there",
    leaveFile: "Leave it out",
    merge: (missing: readonly string[]) =>
      missing.length === 0 ? "Merge, field by field" : `Merge: add ${missing.join(", ")}`,
    nothingToMerge: "It says nothing that is not there.",
    add: (key: string | null) => (key === null ? "Add as another source" : `Add as another source, ${key}`),
    addIt: (name: string) => `Add ${name}`,
    allMerge: "Add what is missing to all of them",
    allLeave: "Leave them all",
    missing: "added",
    here: "there",
    theirs: "what comes in",
    keep: (field: string) => `${field}: keep what is there`,
    take: (field: string) => `${field}: take what comes in`,
    keyMade: "key made for it",
    keyFreed: (own: string) => `${own} is taken`,
    comesAlong: (key: string) => `comes along: ${key} has fields from it`,
    asWritten: "As it is written",
    goals: (file: string, isNew: boolean, n: number) =>
      `${upper(many(n, "source goes", "sources go"))} into ${file}${isNew ? ", a new file that corpus.yaml will name" : ""}.`,
    abbreviations: (names: readonly string[]) => `Abbreviations come along: ${names.join(", ")}.`,
    lenders: (keys: readonly string[]) => `Entries that only lend fields come along: ${keys.join(", ")}.`,
    nothing: "There is nothing to add or merge.",
    save: (added: number, merged: number) =>
      [
        ...(added > 0 ? [`Add ${many(added, "source", "sources")}`] : []),
        ...(merged > 0 ? [`${added > 0 ? "merge" : "Merge"} ${many(merged, "entry", "entries")}`] : []),
      ].join(", "),
    saving: "Saving …",
    step: (files: readonly string[], added: number, merged: number) =>
      `Bibliography brought in from ${files.join(", ")}: ${[
        ...(added > 0 ? [`${added} added`] : []),
        ...(merged > 0 ? [`${merged} merged`] : []),
      ].join(", ")}`,
    done: (added: number, merged: number) =>
      `${upper(many(added, "source was added", "sources were added"))}${merged > 0 ? ` and ${many(merged, "entry was merged", "entries were merged")}` : ""}. It is one step, and can be undone.`,
    came: "Among them:",
    toRecords: "To the records",
  },
  arabicImport,
);
