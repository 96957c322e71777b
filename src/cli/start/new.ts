import { existsSync, readdirSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { plugins } from "../../../plugins/index.ts";
import { cleared, emptied, makeFolders, nodeDisk } from "../../host/desk/disk.ts";
import type { Disk } from "../../host/desk/disk.ts";
import { putNew } from "../../host/desk/files/beside.ts";
import { pluginPath } from "../../read/source-file.ts";
import { Stop } from "../fault.ts";
import { attributesFile, attributesText } from "../merge/attributes.ts";

/** The folder to start a corpus in, which must be named. */
export function newFolder(given: string | undefined): string {
  if (given !== undefined) return given;
  throw new Stop("Missing folder, expected where the corpus is to be: variorum new FOLDER");
}

/** Writes a plug-in that works as it is into a corpus, and says what to do next. */
export function startPlugin(corpus: string, name: string): readonly string[] {
  const path = `plugins/${name}.js`;
  if (!pluginPath.test(path))
    throw new Stop(`Unexpected name \`${name}\`, expected small letters, digits and hyphens`);
  if (plugins.some((one) => one.id === name))
    throw new Stop(`Unexpected name \`${name}\`, which is a plug-in of the program's own, expected another`);
  if (!existsSync(join(corpus, "corpus.yaml")))
    throw new Stop(`Missing \`corpus.yaml\` in \`${corpus}\`, expected the folder of a corpus`);
  if (existsSync(join(corpus, path)))
    throw new Stop(`Unexpected file \`${path}\`, expected a name that is not taken`);
  written(join(corpus, path), nodeDisk, [[join(corpus, path), startingPlugin(name)]]);
  return [
    join(corpus, path),
    `Next: a derivation with \`plugin: ${name}\`, then variorum compute ${corpus} --allow-plugin ${name}`,
  ];
}

function startingPlugin(name: string): string {
  return `// A plug-in of this corpus. It sees what a derivation hands it, in SI, and nothing else.
import { formatNumber, mean, refuse, standardDeviation, studentQuantile } from "variorum";

export default {
  id: "${name}",
  version: "1",
  title: "Mean",
  doc: "The mean of some measurements, with its 95 % interval.",
  sources: ["Student 1908, The probable error of a mean (from memory)"],
  inputs: [{ name: "values", kind: "measurements", doc: "what is averaged" }],
  numbers: [{ name: "mean", kind: "input", doc: "the mean, with its 95 % interval" }],
  cautions: [{ id: "one-kind", text: "A mean says little of things that were made to several sizes." }],
  compute({ values }) {
    const sizes = values.map((one) => one.quantity.value);
    if (sizes.length < 3) return refuse("too-few", \`Unexpected \${sizes.length} values, expected at least 3.\`);
    const value = mean(sizes);
    const half = (studentQuantile(0.95, sizes.length - 1) * standardDeviation(sizes)) / Math.sqrt(sizes.length);
    return { numbers: { mean: { value, low: value - half, high: value + half } }, data: sizes };
  },
  sentence: ({ numbers, data }) => \`The mean of \${data.length} values is \${formatNumber(numbers.mean.value)} in SI.\`,
  figure: ({ numbers, data }) => ({
    title: "Values and their mean",
    panels: [{
      title: "Values", caption: "Each value is a dot, their mean the line across.", shows: "each",
      x: { label: "place in the record", unit: "1" }, y: { label: "value in SI", unit: "1" },
      marks: [
        { mark: "dots", label: "values", dots: data.map((size, place) => ({ at: [place + 1, size], label: "" })) },
        { mark: "rule", axis: "y", at: numbers.mean.value, role: "main", label: "mean" },
      ],
    }],
  }),
};
`;
}

/** Starts a corpus in a new or empty folder: three small files with comments, valid as they are, and how git merges them. */
export function startCorpus(folder: string, disk: Disk = nodeDisk): readonly string[] {
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    throw new Stop(`Unexpected files in \`${folder}\`, expected a new or an empty folder`);
  }
  const title = basename(resolve(folder)).replace(/[-_]+/g, " ");
  const files = startingFiles(title);
  // By its `corpus.yaml` the folder becomes a corpus: that comes last, so that half of one is none.
  written(
    folder,
    disk,
    files.toReversed().map(([name, text]) => [join(folder, name), text]),
  );
  return files.map(([name]) => name);
}

/** Writes new files, each whole and none over another; what the disk refuses is said in a line, and no file is left of it. */
function written(place: string, disk: Disk, files: readonly (readonly [string, string])[]): void {
  const made: string[] = [];
  const folders: string[] = [];
  try {
    for (const [path, text] of files) {
      makeFolders(disk, dirname(path), folders);
      if (!putNew(disk, path, Buffer.from(text, "utf8")))
        throw Object.assign(new Error("taken"), { code: "EEXIST" });
      made.push(path);
    }
  } catch (error) {
    for (const path of made) cleared(disk, path);
    for (const path of folders.toReversed()) emptied(disk, path);
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    if (code === "") throw error;
    throw new Stop(`Unwritable \`${place}\` (${code}), expected a place where files can be made`);
  }
}

function startingFiles(title: string): readonly (readonly [string, string])[] {
  return [
    [
      "corpus.yaml",
      `# What the corpus is. Everything else is in the other files, divided as you like.
format: 1
title: ${JSON.stringify(title)}
language: en
bibliography: [bibliography.bib]
`,
    ],
    [
      "bibliography.bib",
      `% Your literature. BibTeX, RIS and CSL-JSON files can be named in corpus.yaml.
@book{nobody-1900,
  author = {Nobody, Nemo},
  title = {An Example to Replace},
  year = {1900},
}
`,
    ],
    [
      "question.yaml",
      `# One question with two answers that cannot both be right, and what speaks for the first.
scholars:
  - id: nobody
    name: Nemo Nobody

questions:
  - id: what-was-it
    text: What was it for?
    answers: [this, that]

claims:
  - id: this
    text: It was for this.
  - id: that
    text: It was for that.

artefacts:
  - id: thing
    name: The thing

observations:
  - id: worn-edge
    of: thing
    text: One edge is worn.
    feature: wear
    from: nobody-1900 p. 1

arguments:
  - id: worn-so-used
    because: worn-edge
    therefore: this
    scheme: trace
    text: An edge that is worn was used.
    from: nobody-1900 p. 2

positions:
  - who: nobody
    claim: this
    stance: holds
    from: nobody-1900 p. 2
`,
    ],
    [attributesFile, attributesText()],
  ];
}
