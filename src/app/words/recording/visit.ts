import { counted } from "../../../base/text/counted.ts";
import { arabicVisit } from "../arabic/recording/visit.ts";
import { told } from "../reader/told.ts";

const many = (n: number, one: string, more: string): string => `${counted(n)} ${n === 1 ? one : more}`;
const row = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1) ?? ""}`;

interface Counts {
  readonly measurements: number;
  readonly observations: number;
  readonly images: number;
  readonly arguments: number;
}

const countsIn = ({ measurements, observations, images, arguments: steps }: Counts): string =>
  row([
    ...(measurements > 0 ? [many(measurements, "measurement", "measurements")] : []),
    ...(observations > 0 ? [many(observations, "observation", "observations")] : []),
    ...(images > 0 ? [many(images, "image", "images")] : []),
    ...(steps > 0 ? [many(steps, "argument", "arguments")] : []),
  ]);

/** Words of the sheet of a visit. */
export const visitWords = told(
  {
    title: "Visit sheet",
    lead: "What to measure and what to look for. Earlier values stay hidden until the new ones are in; what is typed is kept until it is saved.",
    choose: "For which examination, or to whom?",
    examinations: "Examinations",
    keepers: "Keepers",
    things: (n: number) => many(n, "thing", "things"),
    none: "No examination is recorded, and no thing has a keeper or a place where it is held.",
    notThere: "There is no such examination or keeper.",
    before: "Before the visit",
    planning: "What each outcome decides is being worked out.",
    day: "On the day",
    by: "Who looks and measures",
    byHelp: "a scholar of the corpus, by id or name",
    newScholar: "Somebody who is not in the corpus yet",
    on: "Day",
    onHelp: "as in 2026-05-04",
    basis: "What is looked at",
    bases: {
      autopsy: "the thing itself",
      cast: "a cast",
      replica: "a replica",
      scan: "a scan",
      photograph: "a photograph",
      drawing: "a drawing",
    },
    instrument: "Instrument",
    nearest: "Read to the nearest",
    nearestHelp: "0.1 mm; left out, the last digit tells it",
    from: "Source",
    fromHelp: "a key of the bibliography, where the visit has an entry; left out, it is your own",
    conditions: "The things, and their condition",
    condition: "Condition",
    others: "Also kept there",
    add: (name: string) => `Put on the sheet: ${name}`,
    measure: "To measure",
    besides: "Recorded before, and worth doing again while the thing lies there",
    reading: (n: number) => `Reading ${n}`,
    unit: "Unit",
    more: "Points, instrument, state, note",
    between: "Between",
    state: "State",
    states: {
      "": "complete",
      preserved: "preserved: broken there, so at least this",
      reconstructed: "reconstructed",
    },
    note: "Note",
    written: "Written down as",
    sums: ({
      n,
      mean,
      spread,
      ofMean,
    }: Readonly<Record<"mean" | "spread" | "ofMean", string>> & { readonly n: number }) =>
      `${n} readings: mean ${mean}, standard deviation ${spread}, of the mean ${ofMean}`,
    combined: (u: string, half: string, t: string) =>
      `with the instrument’s step ${u}; 95 %: ± ${half} (t\u00a0=\u00a0${t})`,
    how: "How readings are summed up",
    formulas: {
      mean: "x̄ = Σx ∕ n;  s² = Σ(x − x̄)² ∕ (n − 1);  u(x̄) = s ∕ √n  (GUM, JCGM 100:2008, 4.2)",
      combined:
        "u = √(s² ∕ n + a² ∕ 12), with a the step that the instrument was read to, else that of the last digit  (GUM F.2.2.1)",
      wide: "95 %: ± t u, with Student’s t for the effective degrees of freedom  (GUM G.4.1)",
      stated:
        "Written after ±: half of that, and never less than u, since twice what stands there is taken for 95 % (common practice; GUM G.6.4)",
      shared:
        "What is wrong with every reading alike, such as a zero that is off, their scatter does not show: hold the instrument against a known length (common practice)",
    },
    put: (text: string) => `Put ${text}`,
    old: "Earlier values",
    oldSight: "What others saw",
    showOld: "Show earlier values now (this is noted)",
    showSight: "Show what others saw now (this is noted)",
    noOld: "Never recorded before.",
    already: "The corpus has this already; it is not entered twice.",
    look: "To look for",
    onThings: (things: string) => `on ${things}`,
    seen: { "": "not looked for", true: "seen", false: "looked for, not there", unclear: "cannot be told" },
    sentence: "In a sentence: where, how much, in which light",
    pictures: "Pictures to take",
    pictureHelp: "Put the file into images/ below the corpus; here goes its name.",
    file: "File",
    scale: "Scale in it",
    after: "After the visit: what it decides",
    afterHelp: "Open this when all is measured and looked for, so that nothing leads the eye.",
    found: "What was found",
    foundHelp:
      "An outcome that is chosen is written down as an observation, with the arguments that the examination names.",
    noneYet: "none of them yet",
    along: "Take it along",
    page: "As a page, for paper or a laptop (.html)",
    text: "As text (.md)",
    back: "Bring a filled sheet back",
    drop: "Drop the saved file of a filled sheet here, or",
    chooseFile: "choose it",
    replace: "Something else is written on this sheet already.",
    doReplace: "Put the file in its place",
    leave: "Leave the sheet as it is",
    keepFile: "Save what is written as a file",
    kept: "Kept at the desk.",
    here: "Kept in this browser.",
    alone:
      "The program does not answer. What is written is kept in this browser and waits; saved as a file it can be brought back under any address.",
    nowhere: "This browser keeps nothing: save what is written as a file.",
    readOnly: (why: string) => `Nothing can be saved in this corpus: ${why}`,
    nothing: "Nothing is written yet.",
    bad: (n: number) =>
      n === 1 ? "One row cannot come in as it is." : `${counted(n)} rows cannot come in as they are.`,
    saveKey: "Save what is good",
    save: (counts: Counts) => `Save ${countsIn(counts)}`,
    saving: "Saving …",
    done: (counts: Counts) => `Saved: ${countsIn(counts)}.`,
    decided: "What it decided",
    undecided: "No claim stands differently.",
    pending: "Numbers are still being computed; more may change.",
    again: "A new sheet",
    clear: "Throw away what is written",
    sheetOf: (name: string) => `Visit sheet: ${name}`,
  },
  arabicVisit,
);
