import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { Stop } from "./fault.ts";

/** Starts a corpus in a new or empty folder: three small files with comments, valid as they are. */
export function startCorpus(folder: string): readonly string[] {
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    throw new Stop(`Unexpected files in \`${folder}\`, expected a new or an empty folder`);
  }
  mkdirSync(folder, { recursive: true });
  const title = basename(resolve(folder)).replace(/[-_]+/g, " ");
  const files = startingFiles(title);
  for (const [name, text] of files) writeFileSync(join(folder, name), text, { flag: "wx" });
  return files.map(([name]) => name);
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
  ];
}
