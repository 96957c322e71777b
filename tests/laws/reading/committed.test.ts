import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { committedFiles } from "../../../src/host/desk/git.ts";

let place = "";
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-committed-"));
});
afterEach(() => rmSync(place, { recursive: true, force: true }));

const hasGit = ((): boolean => {
  try {
    execFileSync("git", ["--version"]);
    return true;
  } catch {
    return false;
  }
})();

function git(...args: readonly string[]): string {
  const who = ["-c", "user.name=Ada Vane", "-c", "user.email=ada@example.org", "-c", "commit.gpgsign=false"];
  return execFileSync("git", ["-C", place, ...who, ...args], { encoding: "utf8", stdio: "pipe" });
}

function put(path: string, text: string): void {
  mkdirSync(dirname(join(place, path)), { recursive: true });
  writeFileSync(join(place, path), text);
}

function commit(subject: string): void {
  git("add", "-A");
  git("commit", "-q", "-m", subject);
}

describe("without git, a repository or a commit there is nothing to compare with, and why is told", () => {
  test("no program", async () => {
    expect(await committedFiles(place, join(place, "no-such-program"))).toEqual({
      commit: null,
      files: [],
      why: "no-program",
    });
  });

  test.runIf(hasGit)("no repository, then no commit", async () => {
    expect(await committedFiles(place)).toMatchObject({ commit: null, why: "no-repository" });
    git("init", "-q");
    expect(await committedFiles(place)).toMatchObject({ commit: null, why: "no-commit" });
  });
});

describe.runIf(hasGit)("a corpus is read as it was last committed", () => {
  test("from a repository in a folder above it, whatever the files say now", async () => {
    git("init", "-q");
    put("dig/corpus.yaml", "title: Ring\n");
    put("dig/readings/Österby.yaml", "\ufeffclaims:\r\n  - { id: a, text: A. }\r\n");
    put("dig/.hidden.yaml", "x: y\n");
    put("dig/papers/notes.txt", "not read\n");
    put("dig/other/corpus.yaml", "title: Another\n");
    put("dig/other/records.yaml", "claims: []\n");
    put("elsewhere.yaml", "x: y\n");
    symlinkSync("readings/Österby.yaml", join(place, "dig", "link.yaml"));
    commit("First reading\n\nWith more below.");
    put("dig/corpus.yaml", "title: Changed\n");
    const told = await committedFiles(join(place, "dig"));
    expect(told.files).toEqual([
      { path: "corpus.yaml", text: "title: Ring\n" },
      { path: "readings/Österby.yaml", text: "\ufeffclaims:\r\n  - { id: a, text: A. }\r\n" },
    ]);
    expect(told.commit).toEqual({
      hash: git("rev-parse", "HEAD").trim(),
      when: new Date(Number(git("log", "-1", "--format=%ct").trim()) * 1000).toISOString(),
      subject: "First reading",
    });
  });

  test("which has no file of a corpus that was never committed", async () => {
    git("init", "-q");
    put("elsewhere.yaml", "x: y\n");
    commit("Something else");
    put("dig/corpus.yaml", "title: Ring\n");
    const told = await committedFiles(join(place, "dig"));
    expect(told.commit?.subject).toBe("Something else");
    expect(told.files).toEqual([]);
  });

  test("and nothing is written or run for it, whatever the repository's settings name", async () => {
    git("init", "-q");
    put("corpus.yaml", "title: Ring\n");
    put("records.yaml", "claims: []\n");
    commit("First");
    const ran = join(place, "ran");
    const script = join(place, ".git", "evil");
    writeFileSync(script, `#!/bin/sh\ntouch ${ran}\ncat\n`);
    chmodSync(script, 0o755);
    for (const name of ["post-index-change", "reference-transaction"]) {
      writeFileSync(join(place, ".git", "hooks", name), `#!/bin/sh\ntouch ${ran}\n`);
      chmodSync(join(place, ".git", "hooks", name), 0o755);
    }
    for (const name of ["core.fsmonitor", "core.pager", "core.sshCommand", "gpg.program", "filter.x.smudge"])
      git("config", name, script);
    put(".gitattributes", "*.yaml filter=x diff=x\n");
    // A file that is not there would be fetched from whom the settings name.
    git("config", "extensions.partialClone", "far");
    git("config", "core.repositoryFormatVersion", "1");
    git("config", "remote.far.url", `ext::${script}`);
    git("config", "remote.far.promisor", "true");
    git("config", "protocol.ext.allow", "always");
    const object = git("rev-parse", "HEAD:records.yaml").trim();
    rmSync(join(place, ".git", "objects", object.slice(0, 2)), { recursive: true, force: true });
    // A program of its name in the corpus is not git.
    writeFileSync(join(place, "git"), `#!/bin/sh\ntouch ${ran}\n`);
    chmodSync(join(place, "git"), 0o755);
    rmSync(ran, { force: true });
    const before = readdirSync(join(place, ".git")).toSorted();
    const told = await committedFiles(place);
    expect(told.files.map((one) => one.path)).not.toContain("records.yaml");
    expect(existsSync(ran)).toBe(false);
    expect(readdirSync(join(place, ".git")).toSorted()).toEqual(before);
  });
});
