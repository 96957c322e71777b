import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { committedFiles } from "../../../src/host/desk/git.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { serve } from "../../../src/server/serve.ts";
import { both, built, dispute, errorsOf, modelOf, register, written } from "./use-cases.ts";

let place = "";
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-use-"));
});
afterEach(() => rmSync(place, { recursive: true, force: true }));

const using = (folder: string): string =>
  (dispute["corpus.yaml"] ?? "").replace("../merrow-register", JSON.stringify(folder));
const rings = (): string => join(place, "post-rings");
const beside = (): void => {
  written(rings(), dispute);
  written(join(place, "merrow-register"), register);
};
const pathsOf = (files: readonly SourceFile[]): readonly string[] => files.map(({ path }) => path);
const jsonOf = (files: readonly SourceFile[]): string => {
  const { model, findings } = built(files);
  return JSON.stringify(reportOf(model, findings, new Map()));
};

describe("the files of a corpus that is used", () => {
  test("are those from which something is taken, beside the corpus or in it", () => {
    beside();
    const there = ["corpus.yaml", "posts.csv", "register.bib", "things.yaml"].map(
      (one) => `../merrow-register/${one}`,
    );
    expect(pathsOf(readCorpusFolder(rings()))).toEqual([...there, ...Object.keys(dispute).toSorted()]);
    expect(jsonOf(readCorpusFolder(rings()))).toBe(jsonOf(both()));
  });

  test("are found the same way wherever the folder lies, and by a link to it", () => {
    beside();
    const first = jsonOf(readCorpusFolder(rings()));
    const elsewhere = join(place, "ø other", "deep");
    written(join(elsewhere, "post-rings"), dispute);
    written(join(elsewhere, "merrow-register"), register);
    expect(jsonOf(readCorpusFolder(join(elsewhere, "post-rings")))).toBe(first);
    symlinkSync(rings(), join(elsewhere, "linked"));
    expect(jsonOf(readCorpusFolder(join(elsewhere, "linked")))).toBe(first);
  });

  test("of two that use each other are read once, and neither follows the other's use", () => {
    beside();
    const back = `${register["corpus.yaml"]}use: [{ as: up, folder: ../post-rings }]\n`;
    writeFileSync(join(place, "merrow-register", "corpus.yaml"), back);
    const there = readCorpusFolder(join(place, "merrow-register"));
    expect(modelOf(there).graph.records.get("up/ring-a")?.values).toMatchObject({
      name: "A ring of our own",
    });
    expect([...modelOf(there).graph.records.keys()].filter((id) => id.includes("up/down"))).toEqual([]);
    expect(modelOf(readCorpusFolder(rings())).graph.records.has("down/ring-a")).toBe(true);
    expect(errorsOf(there)).toEqual([]);
  });

  test("a corpus that is missing, a file, a link or the corpus itself is told, and the rest is read", () => {
    written(rings(), dispute);
    const told = (folder: string): readonly string[] => {
      writeFileSync(join(rings(), "corpus.yaml"), using(folder));
      const errors = errorsOf(readCorpusFolder(rings()));
      expect(modelOf(readCorpusFolder(rings())).graph.records.has("ring-a")).toBe(true);
      return errors.map((one) => one.replace(/^error unreadable-file /, ""));
    };
    expect(told("../merrow-register")).toEqual([
      expect.stringMatching(/^corpus\.yaml: Missing corpus in `\.\.\/merrow-register`/),
    ]);
    writeFileSync(join(place, "a-file"), "title: T\n");
    expect(told("../a-file")).toEqual([
      expect.stringContaining("Unexpected file at `../a-file`, expected a folder"),
    ]);
    expect(told("../post-rings")).toEqual([expect.stringContaining("of this corpus itself")]);
    written(join(place, "far", "merrow-register"), register);
    symlinkSync(join(place, "far", "merrow-register"), join(place, "linked"));
    expect(told("../linked")).toEqual([
      expect.stringContaining("Unexpected link at `../linked`, expected a folder"),
    ]);
    symlinkSync(join(place, "far"), join(rings(), "shared"));
    expect(told("shared/merrow-register")).toEqual([
      expect.stringContaining("Unexpected link at `shared`, expected a folder"),
    ]);
    mkdirSync(join(place, "plain"));
    expect(told("../plain")).toEqual([expect.stringContaining("Missing corpus in `../plain`")]);
  });

  test("no link in it is followed, and nothing of a corpus inside it is taken", () => {
    beside();
    written(join(place, "secret"), { "more.yaml": "artefacts:\n  - { id: hidden-thing, name: Hidden }\n" });
    const theirs = join(place, "merrow-register");
    symlinkSync(join(place, "secret", "more.yaml"), join(theirs, "link.yaml"));
    symlinkSync(join(place, "secret"), join(theirs, "linked"));
    written(join(theirs, "inner"), {
      "corpus.yaml": "title: Inner\n",
      "x.yaml": "artefacts:\n  - { id: x, name: X }\n",
    });
    written(theirs, {
      "plugins/own.js": "never",
      "styles/own.csl": "<style/>",
      "other.bib": "@book{not-named, title={T}}",
    });
    const paths = pathsOf(readCorpusFolder(rings()));
    expect(paths.filter((path) => /link|inner|plugins|styles|review|other/.test(path))).toEqual([]);
    expect(errorsOf(readCorpusFolder(rings()))).toEqual([]);
  });

  test("a table or a bibliography that is named out of its folder is missing", () => {
    beside();
    written(place, { "out.bib": "@book{out, title={Out}}", "out.csv": "id,name\nout,Out\n" });
    const settings = "title: R\nbibliography: [../out.bib]\nartefact-tables: [../out.csv]\n";
    writeFileSync(join(place, "merrow-register", "corpus.yaml"), settings);
    const files = readCorpusFolder(rings());
    expect(files.some(({ text }) => text.includes("Out"))).toBe(false);
    expect(errorsOf(files).filter((one) => one.includes("Missing file"))).toEqual([
      expect.stringContaining("`../out.bib`"),
      expect.stringContaining("`../out.csv`"),
    ]);
  });

  test("a folder that may not be read is told", (context) => {
    if (process.getuid?.() === 0) context.skip("Who runs the tests may read every folder.");
    beside();
    chmodSync(join(place, "merrow-register"), 0o000);
    try {
      expect(errorsOf(readCorpusFolder(rings())).length).toBeGreaterThan(0);
    } finally {
      chmodSync(join(place, "merrow-register"), 0o755);
    }
  });
});

test("the program serves what is taken, sees it change, and writes nothing there", async () => {
  beside();
  written(join(place, "merrow-register"), { "images/ring.png": "x" });
  const served = await serve(rings());
  const { origin, hash } = new URL(served.url);
  const ask = (path: string, body?: unknown): Promise<Response> =>
    fetch(`${origin}${path}`, {
      headers: { "x-variorum-token": hash.replace("#token=", "") },
      ...(body === undefined ? {} : { method: "POST", body: JSON.stringify(body) }),
    });
  type Told = {
    readonly version: string;
    readonly files: readonly SourceFile[];
    readonly gone: readonly string[];
  };
  const told = async (have = ""): Promise<Told> =>
    (await (await ask(`/corpus/files${have === "" ? "" : `?have=${have}`}`)).json()) as Told;
  try {
    const first = await told();
    expect(pathsOf(first.files)).toContain("../merrow-register/things.yaml");

    const changes = new AbortController();
    const stream = await fetch(`${origin}/corpus/changes`, {
      headers: { "x-variorum-token": hash.replace("#token=", "") },
      signal: changes.signal,
    });
    const reader = stream.body?.pipeThrough(new TextDecoderStream()).getReader();
    await reader?.read();
    const things = join(place, "merrow-register", "things.yaml");
    const was = readFileSync(things, "utf8");
    const write = (): void => writeFileSync(things, was.replace("name: Ring A", "name: Ring Alpha"));
    write();
    // Again and again, since nothing tells when the folder beside is watched.
    const writing = setInterval(write, 500);
    const seen = await reader?.read();
    clearInterval(writing);
    expect(seen?.value).toContain("event: change");
    changes.abort();
    const second = await told(first.version);
    expect(second.files.map(({ path, text }) => [path, text.includes("Ring Alpha")])).toEqual([
      ["../merrow-register/things.yaml", true],
    ]);

    const now = readFileSync(things, "utf8");
    for (const file of ["../merrow-register/things.yaml", "../merrow-register/new.yaml"]) {
      const madeFor = file.endsWith("new.yaml") ? null : hashOf(now);
      const edits = [{ file, start: 0, end: 0, text: "# changed\n" }];
      const answer = await ask("/corpus/edit", { step: "Out", changes: [{ file, madeFor, edits }] });
      expect(answer.status).toBe(409);
    }
    expect(readFileSync(things, "utf8")).toBe(now);
    for (const path of ["../merrow-register/images/ring.png", "..%2Fmerrow-register%2Fimages%2Fring.png"])
      expect((await ask(`/corpus/enclosed/${path}`)).status).not.toBe(200);

    // Without the setting nothing of it is told any more.
    const edits = [
      { file: "corpus.yaml", start: 0, end: (dispute["corpus.yaml"] ?? "").length, text: "title: Alone\n" },
    ];
    const change = { file: "corpus.yaml", madeFor: hashOf(dispute["corpus.yaml"] ?? ""), edits };
    expect((await ask("/corpus/edit", { step: "Alone", changes: [change] })).status).toBe(200);
    const third = await told(second.version);
    expect(third.gone.filter((path) => path.startsWith("../")).length).toBe(4);
  } finally {
    await served.close();
  }
});

const hasGit = ((): boolean => {
  try {
    execFileSync("git", ["--version"]);
    return true;
  } catch {
    return false;
  }
})();

test.runIf(hasGit)(
  "under git a clone of both says the same, and the last commit is read with what is used",
  async () => {
    const git = (at: string, ...args: readonly string[]): void => {
      const who = [
        "-c",
        "user.name=Ada Vane",
        "-c",
        "user.email=ada@example.org",
        "-c",
        "commit.gpgsign=false",
      ];
      execFileSync("git", ["-C", at, ...who, ...args], { stdio: "pipe" });
    };
    const commit = (at: string): void => {
      git(at, "init", "-q");
      git(at, "add", "-A");
      git(at, "commit", "-q", "-m", "First");
    };
    beside();
    written(join(rings(), "shared", "register"), register);
    const two = "use: [{ as: down, folder: ../merrow-register }, { as: in, folder: shared/register }]";
    writeFileSync(join(rings(), "corpus.yaml"), (dispute["corpus.yaml"] ?? "").replace(/^use:.*$/m, two));
    commit(rings());
    commit(join(place, "merrow-register"));
    const clones = join(place, "clones");
    for (const name of ["post-rings", "merrow-register"]) {
      mkdirSync(clones, { recursive: true });
      git(place, "clone", "-q", join(place, name), join(clones, name));
    }
    const here = readCorpusFolder(rings());
    expect(jsonOf(readCorpusFolder(join(clones, "post-rings")))).toBe(jsonOf(here));
    expect(modelOf(here).graph.records.get("in/ring-a")?.values).toMatchObject({ name: "Ring A" });

    writeFileSync(join(rings(), "dispute.yaml"), "claims: []\n");
    const { files } = await committedFiles(rings());
    expect(jsonOf(files)).toBe(jsonOf(here));
  },
);
