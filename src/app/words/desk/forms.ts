import { arabicForms } from "../arabic/desk/forms.ts";
import { told } from "../reader/told.ts";

/** Words of the forms in which records are made and changed. */
export const formWords = told(
  {
    /** The title of a form for a new record of a kind. */
    new: (singular: string) => `New ${singular}`,
    change: "Change",
    changeOf: (singular: string) => `Change of ${/^[aeiou]/u.test(singular) ? "an" : "a"} ${singular}`,
    changing: (title: string) => `Change: ${title}`,
    records: "New records",
    answerTo: "It becomes an answer to:",
    asAnswer: "New answer",
    newOne: (singular: string) => `New ${singular}`,
    thisRecord: "This record",
    newOf: "New:",
    unread: "If it stands in the files and could not be read, it can be mended:",
    mend: "Open its form",
    required: "required",
    more: "More fields",
    yes: "yes",
    no: "no",
    present: {
      true: "seen",
      false: "looked for and not there",
      unclear: "looked for, cannot be told",
      "not-reported": "passed over in silence",
    } as Readonly<Record<string, string>>,
    idLeftEmpty: (id: string) => `Left empty, it is called ${id}.`,
    idOptional: "Left empty, it is called after what it is about.",
    idStays: "Its name in the files:",
    head: (source: string) => `Left empty, it is from ${source}, as the head of its file says.`,
    kept: (names: string) =>
      `Recorded and kept out of every output, this page among them: ${names}. What stands in the file stays, unless something is typed here.`,
    own: (names: string) => `Fields of your own stay as they are: ${names}.`,
    inFile: "As a file would have it: one value, a list [a, b] or a map { name: value }.",
    understood: "Understood as",
    write: (text: string) => `Write ${text}`,
    alike: "Nearly the same is recorded already:",

    search: (label: string) => `Search for ${label}`,
    add: (label: string) => `Add to ${label}`,
    typeToSearch: "type to search",
    choose: "What fits; arrow keys and Enter choose",
    fitting: (n: number, more: number) =>
      n === 0
        ? "Nothing fits these words."
        : more > 0
          ? `${n} fit best, ${more} more fit; one more word narrows them.`
          : n === 1
            ? "One fits."
            : `${n} fit.`,
    record: (singular: string, name: string) =>
      `Record ${/^[aeiou]/u.test(singular) ? "an" : "a"} ${singular}: ${name}`,
    recordKeys: "Arrow down and Enter record it.",
    unknown: "not in the corpus",
    takeAway: "Take away",
    takeAwayOne: (label: string) => `Take away ${label}`,
    up: "Up",
    upOne: (label: string) => `Move up ${label}`,
    place: "Place",
    placeIn: (label: string) => `Place in ${label}`,
    addOne: "Add one",
    addTo: (label: string) => `Add one: ${label}`,
    nth: (label: string, n: number) => `${label}, ${n}`,
    name: "Name",
    value: "Value",
    byAnswer: "One for each answer",
    one: "One for all",

    save: "Save",
    saving: "Saving …",
    readOnly: (why: string) => `Nothing can be saved in this corpus: ${why}`,
    unsaved: "What you typed is kept as a draft until it is saved.",
    drop: "Throw it away",
    restored: "This is your draft from before.",
    troubles: (n: number) =>
      n === 1
        ? "One field is not right yet; nothing was saved."
        : `${n} fields are not right yet; nothing was saved.`,
    nothingNew: "Nothing was changed.",
    help: "Save the form",
    move: "Move an entry of a list up or down",

    clash: "Somebody else changed it meanwhile",
    clashWhy:
      "These fields say something else in the files than when you opened the form. Choose for each, then save again.",
    was: "It said",
    theirs: "The files now say",
    mine: "You wrote",
    nothing: "nothing",
    hidden: "something that is kept out of every output",
    keepTheirs: "Keep theirs",
    writeMine: "Write mine",
    keepTheirsIn: (label: string) => `Keep theirs: ${label}`,
    writeMineIn: (label: string) => `Write mine: ${label}`,
    chosenTheirs: "Theirs is kept.",
    chosenMine: "Yours will be written.",
    goneTitle: "The record is gone",
    gone: "Somebody took it out of the files meanwhile. Saving again writes it anew.",

    whole: "The record as a whole",
    takeOut: "Take out",
    takeOutThis: (singular: string) => `Take this ${singular} out of the corpus?`,
    takeItOut: "Take it out",
    keepIt: "Keep it",
    undoable: "It can be undone.",
    refer: (n: number) =>
      n === 0 ? "Nothing refers to it." : n === 1 ? "One record refers to it:" : `${n} records refer to it:`,
    dangling: "They will then name something that is not there, and findings will say so.",
    settings: "The settings of the corpus name it, too.",
    rename: "Rename",
    leaveIt: "Leave it as it is",
    newName: "New name in the files",
    follows: (places: number) =>
      places === 0
        ? "Nothing else names it."
        : places === 1
          ? "The one place that names it follows."
          : `The ${places} places that name it follow.`,
    unnamed: "It has no name of its own in the files; give it one in the field id.",
    toWorkbench: "Change its settings at the workbench",

    drafts: "Drafts",
    draftsWhy: "Forms that were begun and not saved.",
    throwAway: (title: string) => `Throw away: ${title}`,
  },
  arabicForms,
);
