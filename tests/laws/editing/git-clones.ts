import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import { attributesFile, attributesText } from "../../../src/cli/merge/attributes.ts";
import { driverLine } from "../../../src/cli/merge/set-up.ts";
import { build } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { mergePage } from "../../../src/show/desk/changes/merging/page.ts";
import type { MergePage } from "../../../src/show/desk/changes/merging/told.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { serve } from "../../../src/server/serve.ts";
import { changed } from "../desk/desk-cases.ts";

/** The built command line. */
export const program: string = fileURLToPath(new URL("../../../dist/cli.js", import.meta.url));

/** Whether there is a git to try with. */
export const hasGit: boolean = spawnSync("git", ["--version"]).status === 0;

/** Nothing of this machine's own settings, and a person who commits. */
const environment: NodeJS.ProcessEnv = {
  PATH: process.env["PATH"],
  HOME: tmpdir(),
  LC_ALL: "C",
  GIT_CONFIG_GLOBAL: "/dev/null",
  GIT_CONFIG_SYSTEM: "/dev/null",
  GIT_AUTHOR_NAME: "Ada Vane",
  GIT_AUTHOR_EMAIL: "ada@example.org",
  GIT_COMMITTER_NAME: "Ada Vane",
  GIT_COMMITTER_EMAIL: "ada@example.org",
  GIT_EDITOR: "true",
};

export interface Tried {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Texts by the path of their file. */
export type Files = Readonly<Record<string, string>>;

/** Two clones of one repository with a corpus, `theirs` cloned from `mine`; git merges by the program's command unless told not to. */
export interface Clones {
  readonly place: string;
  readonly mine: string;
  readonly theirs: string;
  readonly git: (folder: string, ...args: readonly string[]) => Tried;
  readonly variorum: (folder: string, ...args: readonly string[]) => Tried;
}

/** Makes two clones with some files in them. */
export function clonesWith(
  files: Files,
  driver: string | null = driverLine(process.execPath, program),
): Clones {
  const place = mkdtempSync(join(tmpdir(), "variorum-clones-"));
  const [mine, theirs] = [join(place, "mine"), join(place, "their clone")];
  const tried = (command: string, folder: string, args: readonly string[]): Tried => {
    const env = { ...environment, XDG_CACHE_HOME: join(place, "cache") };
    const { status, stdout, stderr } = spawnSync(command, args, { cwd: folder, encoding: "utf8", env });
    return { code: status, out: stdout, err: stderr };
  };
  const git = (folder: string, ...args: readonly string[]): Tried => tried("git", folder, args);
  const done = (folder: string, ...args: readonly string[]): void =>
    void execFileSync("git", ["-C", folder, ...args], { env: environment, stdio: "pipe" });
  for (const [path, text] of Object.entries({ [attributesFile]: attributesText(), ...files })) {
    mkdirSync(dirname(join(mine, path)), { recursive: true });
    writeFileSync(join(mine, path), text);
  }
  done(mine, "init", "-q", "-b", "main");
  done(mine, "add", "-A");
  done(mine, "commit", "-q", "-m", "Begin");
  done(place, "clone", "-q", mine, theirs);
  if (driver !== null) for (const one of [mine, theirs]) done(one, "config", "merge.variorum.driver", driver);
  return {
    place,
    mine,
    theirs,
    git,
    variorum: (folder, ...args) => tried(process.execPath, folder, [program, ...args]),
  };
}

/** Takes the clones away. */
export function cleared({ place }: Clones): void {
  rmSync(place, { recursive: true, force: true });
}

/** What a file of a clone says. */
export function textIn(folder: string, path: string): string {
  return readFileSync(join(folder, path), "utf8");
}

/** Makes changes at the desk of a clone, by the addresses that the app uses, and commits them. */
export async function edited(
  { git }: Clones,
  folder: string,
  change: (files: Files) => Files,
): Promise<void> {
  await atDesk(folder, (files) => {
    const after = change(files);
    return Object.entries(after).map(([path, text]) => changed(path, files[path] ?? null, text));
  });
  expect(git(folder, "add", "-A").code).toBe(0);
  expect(git(folder, "commit", "-q", "-m", "Edit").code).toBe(0);
}

/** Has the app's server write changes of a corpus's files, as one step. */
export async function atDesk(folder: string, of: (files: Files) => readonly object[]): Promise<void> {
  const served = await serve(folder);
  try {
    const { origin, hash } = new URL(served.url);
    const headers = { "x-variorum-token": hash.replace("#token=", "") };
    const told = (await (await fetch(`${origin}/corpus/files`, { headers })).json()) as {
      readonly files: readonly { readonly path: string; readonly text: string }[];
    };
    const files = Object.fromEntries(told.files.map(({ path, text }) => [path, text]));
    const body = JSON.stringify({ step: "Edit", changes: of(files) });
    const answer = await fetch(`${origin}/corpus/edit`, { method: "POST", headers, body });
    expect(answer.status).toBe(200);
  } finally {
    await served.close();
  }
}

/** The page on which the app shows two versions of a file, with some answers. */
export function pageOf(folder: string, file: string, answers = ""): MergePage["marked"] {
  const files = readCorpusFolder(folder);
  const { model } = build(files, [], { read: new Map(), compute: new Map() });
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  return mergePage(texts, model?.graph ?? null, { file, answers, byLines: false })?.marked ?? null;
}

/** What a corpus comes to: its whole report but for places and the order of what a finding is about, which lines decide. */
export function reportIn(folder: string): unknown {
  const files = readCorpusFolder(folder);
  const { model, findings } = build(files, [], { read: new Map(), compute: new Map() });
  const report = reportOf(model, findings, new Map(files.map(({ path, text }) => [path, text])));
  return {
    ...report,
    findings: report.findings.map(({ rule, about, message }) => ({ rule, about: about.toSorted(), message })),
  };
}

/** The rules of the findings of a corpus, with their places. */
export function findingsIn(folder: string): readonly string[] {
  const files = readCorpusFolder(folder);
  const { model, findings } = build(files, [], { read: new Map(), compute: new Map() });
  const report = reportOf(model, findings, new Map(files.map(({ path, text }) => [path, text])));
  return report.findings
    .filter(({ level }) => level === "error")
    .map(({ rule, at, message }) => `${rule} ${at?.file ?? ""}:${at?.line ?? ""} ${message}`);
}
