import { inEnglish } from "../../../base/text/said/english.ts";
import type { Model } from "../../../build.ts";
import { withholdingSaid } from "../../../show/telling/withholding.ts";
import type { Companion } from "../../../read/settings/companions/corpus.ts";
import { escaped } from "../../telling/markdown/escape.ts";
import { descriptionOf } from "./media.ts";
import type { Differences } from "./differences.ts";

/** What a folder of data says of itself. */
export interface Readme {
  readonly model: Model;
  readonly differences: Differences;
  /** The paths of the files beside it. */
  readonly paths: readonly string[];
  readonly withNotes: boolean;
}

/** What the folder is and what is not in it, in sentences. */
export function aboutCrate({ model, differences, withNotes }: Omit<Readme, "paths">): readonly string[] {
  const { lens } = model;
  const left = Object.entries(differences.leftOut);
  const other = Object.keys(differences.standings).length + Object.keys(differences.numbers).length;
  return [
    "The record of a scholarly dispute: who holds what on which observations and measurements, what was computed, and what follows.",
    ...(lens.asOf === undefined
      ? []
      : [`Only what was in print by the end of ${yearOf(lens.asOf)} is in it.`]),
    "Claims stand here as propositions that scholars hold or reject, never as facts. Standings are what a program works out from what was recorded, and nobody's opinion.",
    ...withholdingSaid(model.graph).map(inEnglish),
    ...model.graph.companions.flatMap(takenFrom),
    `Not in the corpus given here are ${withNotes ? "" : "notes, "}comments, who typed what, fields of the compilers' own (x-), prose, drafts and citation styles.`,
    ...(left.length === 0
      ? []
      : [
          `Records left out, since they ${lens.asOf === undefined ? "" : "were not yet in print, "}may not be given or would say another thing without what they name: ${left.map(([list, n]) => `${list} ${n}`).join(", ")}.`,
        ]),
    other === 0
      ? "Read by itself, the corpus given here gives the same standings and numbers as the whole record."
      : `Read by itself, the corpus given here gives other standings or numbers in ${other} ${other === 1 ? "place" : "places"}: differences.json lists them. standings.json has those of the whole record.`,
  ];
}

/** What is given of another corpus is for its authors to allow. */
function takenFrom({ as, title, licence }: Companion): readonly string[] {
  if (title === null) return [];
  const allowed =
    licence === null
      ? "No licence is recorded there: ask its authors before you hand it on."
      : `What may be done with it is said there: ${escaped(licence)}.`;
  return [
    `Artefacts and works whose names begin with \`${as}/\` were taken from another corpus, “${escaped(title)}”. ${allowed}`,
  ];
}

/** `README.md` of the folder. */
export function readmeOf(of: Readme): string {
  const { model, paths } = of;
  const { settings } = model.graph;
  const licence = settings.licence ?? "no licence is recorded: all rights reserved; ask the authors";
  const lines = [
    `# ${escaped(settings.title)}`,
    "",
    ...aboutCrate(of).flatMap((sentence) => [sentence, ""]),
    ...(settings.authors.length > 0
      ? [`Made by ${settings.authors.map(({ name }) => escaped(name)).join(", ")}.`, ""]
      : []),
    `What may be done with it: ${escaped(licence)}.`,
    "",
    ...(settings.citeAs === null ? [] : [`To be cited as: ${escaped(settings.citeAs)}`, ""]),
    "## Files",
    "",
    ...paths.map((path) => {
      const about = descriptionOf(path);
      return `- \`${path}\`${about === undefined ? "" : `: ${about}`}`;
    }),
    "- `ro-crate-metadata.json`: A description of this folder for programs (RO-Crate 1.2).",
    "",
    "`variorum check corpus` reads the corpus and says what follows from it; `variorum open corpus` shows it.",
    "",
  ];
  return lines.join("\n");
}

const yearOf = (astronomical: number): string =>
  astronomical <= 0 ? `${1 - astronomical} BC` : String(astronomical);
