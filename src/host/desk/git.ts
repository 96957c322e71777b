import { spawn } from "node:child_process";
import { homedir } from "node:os";
import { resolve } from "node:path";
import { byText } from "../../base/order.ts";
import type { Commit, Committed, NoCommit } from "./commit.ts";
import { filesTaken, mostBytesOf, textOf } from "../corpus-folder.ts";

/**
 * Reads the files of a corpus as they were last committed, with the user's `git`. It only reads: nothing is locked,
 * fetched or refreshed, and nothing that a repository's settings name is run.
 */
export async function committedFiles(folder: string, program = "git"): Promise<Committed> {
  const none = (why: NoCommit): Committed => ({ commit: null, files: [], why });
  const git = (args: readonly string[], input = ""): Promise<Answer> => asked(program, folder, args, input);
  const prefix = await git(["rev-parse", "--show-prefix"]);
  if (prefix.code === null) return none(prefix.missing ? "no-program" : "unreadable");
  if (prefix.code !== 0)
    return none(/not a git repository/u.test(prefix.errors) ? "no-repository" : "unreadable");
  const head = await git(["rev-parse", "--verify", "--quiet", "HEAD^{commit}"]);
  if (head.code !== 0) return none(head.code === null ? "unreadable" : "no-commit");
  const hash = head.out.toString("utf8").trim();
  const said = await git(["cat-file", "commit", hash]);
  if (said.code !== 0) return none("unreadable");
  const below = prefix.out.toString("utf8").replace(/\r?\n$/u, "");
  const listed = await git(["ls-tree", "-r", "-z", "-l", "--full-tree", `${hash}:${below}`]);
  const blobs = listed.code === 0 ? blobsIn(listed.out.toString("utf8")) : [];
  const texts = await git(["cat-file", "--batch"], blobs.map(({ object }) => `${object}\n`).join(""));
  if (texts.code !== 0) return none("unreadable");
  const parts = batchParts(texts.out);
  const files = blobs.flatMap(({ path }, place) => {
    const bytes = parts[place];
    return bytes ? [textOf(path, bytes)] : [];
  });
  // What is used of other corpora is compared as it now is: what changed there is told when that one is opened.
  const main = files.find(({ path }) => path === "corpus.yaml");
  const all = [...files, ...filesTaken(folder, main)].toSorted((a, b) => byText(a.path, b.path));
  return { commit: commitOf(hash, said.out.toString("utf8")), files: all };
}

/** Sets something in the settings of the clone that a folder lies in; why that cannot be done, else null. */
export async function setLocally(
  folder: string,
  settings: readonly (readonly [string, string])[],
  program = "git",
): Promise<string | null> {
  const inside = await asked(program, folder, ["rev-parse", "--git-dir"], "");
  if (inside.missing) return "Missing `git`, expected it on this machine";
  if (inside.code !== 0) return `\`${folder}\` is in no git repository, expected one: git init starts it`;
  for (const [name, value] of settings) {
    const { code, errors } = await asked(
      program,
      folder,
      ["config", "--local", "--replace-all", name, value],
      "",
    );
    if (code !== 0) return `The settings of the repository cannot be written: ${errors.split("\n")[0] ?? ""}`;
  }
  return null;
}

interface Answer {
  /** Null where the program did not start, or not come to its end in time. */
  readonly code: number | null;
  readonly missing: boolean;
  readonly out: Buffer;
  readonly errors: string;
}

/** How long one question may take, in milliseconds, and how much may be answered, in bytes. */
const patience = 15_000;
const most = 512 * 1024 * 1024;

/** Settings by which git would run a program. */
const quiet = ["core.fsmonitor=false", "core.hooksPath=/dev/null", "core.pager=cat"];

function asked(program: string, folder: string, args: readonly string[], input: string): Promise<Answer> {
  const set = quiet.flatMap((one) => ["-c", one]);
  return new Promise((done) => {
    // Not started in the corpus: a program of the same name that lies there is not run.
    const child = spawn(
      program,
      ["-C", resolve(folder), "--no-optional-locks", "--no-pager", ...set, ...args],
      {
        cwd: homedir(),
        env: environment(),
        stdio: ["pipe", "pipe", "pipe"],
        timeout: patience,
        killSignal: "SIGKILL",
        windowsHide: true,
      },
    );
    const out: Buffer[] = [];
    let size = 0;
    let errors = "";
    child.stdout.on("data", (bytes: Buffer) => {
      size += bytes.length;
      if (size > most) child.kill("SIGKILL");
      else out.push(bytes);
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => (errors = (errors + text).slice(0, 4000)));
    // A program that ends before it has read all it is asked is told by its code.
    child.stdin.on("error", () => undefined);
    child.on("error", () => done({ code: null, missing: true, out: Buffer.alloc(0), errors: "" }));
    child.on("close", (code) => done({ code, missing: false, out: Buffer.concat(out), errors }));
    child.stdin.end(input);
  });
}

/** What git may know of the user's environment: where programs and the user's own settings are, and nothing of git's own. */
function environment(): NodeJS.ProcessEnv {
  const kept = ["PATH", "HOME", "XDG_CONFIG_HOME", "USERPROFILE", "SystemRoot", "TEMP", "TMPDIR"];
  const known = Object.entries(process.env).filter(([name]) =>
    kept.some((one) => one.toLowerCase() === name.toLowerCase()),
  );
  return {
    ...Object.fromEntries(known),
    LC_ALL: "C",
    GIT_OPTIONAL_LOCKS: "0",
    GIT_TERMINAL_PROMPT: "0",
    // Objects that are not there are not asked for, by no way that a repository could name.
    GIT_NO_LAZY_FETCH: "1",
    GIT_ALLOW_PROTOCOL: "none",
    GIT_NO_REPLACE_OBJECTS: "1",
  };
}

interface Blob {
  readonly object: string;
  readonly path: string;
}

/** The files of a tree that a corpus would read, ordered by path; links are passed over, and corpora inside this one. */
function blobsIn(listing: string): readonly Blob[] {
  const all = listing.split("\0").flatMap((line) => {
    const found = /^(100644|100755) blob ([0-9a-f]+) +(\d+)\t([^]+)$/u.exec(line);
    const [, , object = "", size = "", path = ""] = found ?? [];
    const limit = mostBytesOf(path);
    const hidden = path.split("/").some((part) => part.startsWith(".") || part === "node_modules");
    return found && !hidden && limit !== null && Number(size) <= limit ? [{ object, path }] : [];
  });
  const inner = all.flatMap(({ path }) => (path.endsWith("/corpus.yaml") ? [path.slice(0, -11)] : []));
  return all
    .filter(({ path }) => !inner.some((folder) => path.startsWith(folder)))
    .toSorted((a, b) => byText(a.path, b.path));
}

/** The contents that `cat-file --batch` printed, in their order; null for what it does not have. */
function batchParts(out: Buffer): readonly (Buffer | null)[] {
  const parts: (Buffer | null)[] = [];
  for (let at = 0; at < out.length;) {
    const end = out.indexOf(10, at);
    if (end < 0) break;
    const size = /^[0-9a-f]+ blob (\d+)$/u.exec(out.subarray(at, end).toString("latin1"))?.[1];
    at = end + 1;
    if (size === undefined) parts.push(null);
    else {
      parts.push(out.subarray(at, at + Number(size)));
      at += Number(size) + 1;
    }
  }
  return parts;
}

function commitOf(hash: string, text: string): Commit {
  const seconds = /^committer .*> (\d+) [+-]\d{4}$/mu.exec(text)?.[1] ?? "0";
  const message = text.slice(text.indexOf("\n\n") + 2);
  return {
    hash,
    when: new Date(Number(seconds) * 1000).toISOString(),
    subject: message.split("\n")[0] ?? "",
  };
}
