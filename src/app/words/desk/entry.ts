import { arabicEntry } from "../arabic/desk/entry.ts";
import { told } from "../reader/told.ts";

/** Words of the form in which an entry of a bibliography is changed. */
export const entryWords = told(
  {
    change: "Change",
    thisSource: "This source",
    title: (label: string) => `Change: ${label}`,
    lead: (file: string, key: string) =>
      `The fields of ${key} in ${file}, as they are written. A field that is left empty is taken out.`,
    readOnly: (why: string) => `Nothing can be saved in this corpus: ${why}`,
    fields: "Fields",
    add: "Add a field",
    name: "Name of the field",
    value: (name: string) => (name === "" ? "Text of the new field" : `Text of ${name}`),
    asWritten: "as it stands in the file: a number, an abbreviation, a list",
    stale: "The entry was changed elsewhere since it was opened here. Nothing has been written.",
    again: "Open it as it is now",
    gone: "The entry is no longer there.",
    nothing: "Nothing was changed.",
    save: "Save",
    saving: "Saving …",
    step: (label: string) => `Change to the bibliography: ${label}`,
  },
  arabicEntry,
);
