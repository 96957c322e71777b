import { say } from "../../base/text/said/said.ts";
import type { Rule } from "./rule.ts";

/** What `explain` prints of the errors that are told while reading and linking. */
export const errors: readonly Pick<Rule, "id" | "level" | "title" | "doc">[] = [
  {
    id: "unknown-reference",
    level: "error",
    title: say`A record refers to an id that does not exist, or that is of another kind.`,
    doc: say`Check the spelling: the nearest names are given, and where only one of them can be meant the change is offered. A record that cannot do without the reference is not loaded; what refers to it is not reported again. An id that several records get wrong is told once, with all of them.`,
  },
  {
    id: "duplicate-id",
    level: "error",
    title: say`Two records, or a record and a bibliography entry, have one name.`,
    doc: say`Records and bibliography keys share one space of names. The first is kept; give the other a name of its own.`,
  },
  {
    id: "duplicate-key",
    level: "error",
    title: say`A field stands twice in one record.`,
    doc: say`The first is kept. Put several values into one list, or take one of them out.`,
  },
  {
    id: "unreadable-file",
    level: "error",
    title: say`A file, or what the settings name as one, cannot be read.`,
    doc: say`The message says where reading stopped: mend the text there, or take the name of a file that is not there out of the settings. Nothing of the file is loaded; everything else is evaluated.`,
  },
  {
    id: "conflict-marks",
    level: "error",
    title: say`A file holds the marks of two versions that were not merged.`,
    doc: say`Version control writes both sides between lines of <, = and > where it cannot tell which one is meant. Open the file's merge view in the app: what only one side changed is put together by itself, the rest is asked for, record by record and field by field. Or choose in an editor, and take the marks out. Until then nothing of the file is loaded; everything else is evaluated.`,
  },
  {
    id: "unknown-field",
    level: "error",
    title: say`A record has a field, or a file a list or column, that the format does not know.`,
    doc: say`Check the spelling: the nearest names are given, and where only one of them can be meant the change is offered. Fields of your own begin with x-.`,
  },
  {
    id: "bad-value",
    level: "error",
    title: say`A value is not what its field takes.`,
    doc: say`The message says what is there and what was expected: another type, a quantity that cannot be read, an unknown unit, an argument without premises, a circle of parts. A decimal comma is mended where it can be read in one way only; where it may also part thousands, write the number out. A bad optional field costs that field, a bad required one the record.`,
  },
  {
    id: "split-value",
    level: "error",
    title: say`YAML took a value apart.`,
    doc: say`A comma inside braces or brackets ends a value, and so does a # after a space; a colon with a space behind it, a > or a - at the beginning, and a closing quote with text behind it have meanings of their own. Put the whole text in quotes: the change is offered. Until then the record is left out, so that nothing is read by half; the rest of the file is read.`,
  },
];
