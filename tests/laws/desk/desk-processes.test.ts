import { spawn, spawnSync } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { openDesk } from "../../../src/host/desk/desk.ts";
import type { Step } from "../../../src/host/desk/state.ts";
import { changed } from "./desk-cases.ts";

const program = fileURLToPath(new URL("../../../dist/cli.js", import.meta.url));
let place = "";
const running = new Set<ChildProcess>();
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-processes-"));
  chmodSync(place, 0o755);
});
afterAll(() => {
  for (const child of running) child.kill("SIGKILL");
  rmSync(place, { recursive: true, force: true });
});

function corpus(name: string): string {
  const folder = join(place, name);
  mkdirSync(folder);
  writeFileSync(join(folder, "corpus.yaml"), "format: 1\ntitle: Rings\n");
  writeFileSync(join(folder, "a.yaml"), "claims: []\n");
  return folder;
}

/** The program itself, serving a corpus. */
interface Serving {
  readonly child: ChildProcess;
  /** Adds a line to a file as one step; whether that was acknowledged. */
  readonly add: (file: string, line: string) => Promise<boolean>;
}

async function serving(folder: string): Promise<Serving> {
  const child = spawn(process.execPath, [program, "open", folder, "--no-browser"], {
    stdio: ["ignore", "pipe", "ignore"],
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
  });
  running.add(child);
  const [line] = (
    await createInterface({ input: child.stdout ?? process.stdin })
      [Symbol.asyncIterator]()
      .next()
  ).value
    ?.toString()
    .split("\n") ?? [""];
  const { origin, hash } = new URL(line ?? "");
  const headers = { "x-variorum-token": hash.replace("#token=", "") };
  const add = async (file: string, line: string): Promise<boolean> => {
    const was = readFileSync(join(folder, file), "utf8");
    const body = JSON.stringify({ step: line, changes: [changed(file, was, `${was}# ${line}\n`)] });
    const answer = await fetch(`${origin}/corpus/edit`, { method: "POST", headers, body });
    return answer.status === 200;
  };
  return { child, add };
}

const linesIn = (folder: string, file = "a.yaml"): readonly string[] =>
  readFileSync(join(folder, file), "utf8")
    .split("\n")
    .flatMap((line) => (line.startsWith("# ") ? [line.slice(2)] : []));

const visible = (folder: string): readonly string[] =>
  readdirSync(folder).filter((name) => !name.startsWith("."));

test("two processes change one file at once: what either was told is saved is there", async () => {
  const folder = corpus("two");
  const both = await Promise.all([serving(folder), serving(folder)]);
  const acknowledged: string[] = [];
  await Promise.all(
    both.map(async ({ add }, who) => {
      for (let n = 0; n < 15;) {
        if (!(await add("a.yaml", `${who}-${n}`))) continue;
        acknowledged.push(`${who}-${n}`);
        n += 1;
      }
    }),
  );
  expect(linesIn(folder).toSorted()).toEqual(acknowledged.toSorted());
  const desk = openDesk(folder);
  expect(desk.steps().map(({ kind }) => kind)).toEqual(acknowledged.map((): Step["kind"] => "edit"));
  for (let n = 0; n < 3; n++) desk.undo();
  expect(linesIn(folder)).toHaveLength(27);
  expect(readdirSync(join(folder, ".variorum")).toSorted()).toEqual([".gitignore", "history"]);
  for (const { child } of both) child.kill("SIGTERM");
});

test("a process that is killed in the middle of many edits has lost none that it acknowledged", async () => {
  const folder = corpus("killed");
  writeFileSync(join(folder, "b.yaml"), "claims: []\n");
  const acknowledged: string[] = [];
  for (const round of [3, 7, 12]) {
    const { child, add } = await serving(folder);
    const ended = new Promise((resolve) => child.once("exit", resolve));
    let count = 0;
    // Two windows, so that one edit is always under way when the other is told.
    await Promise.all(
      ["a.yaml", "b.yaml"].map(async (file) => {
        try {
          for (let n = 0; ; n++) {
            const line = `${round}-${n}`;
            if (!(await add(file, line))) continue;
            acknowledged.push(`${file} ${line}`);
            if ((count += 1) === round) child.kill("SIGKILL");
          }
        } catch {
          // The program is gone.
        }
      }),
    );
    await ended;
    expect(readCorpusFolder(folder).every(({ problem }) => problem === undefined)).toBe(true);
    const desk = openDesk(folder);
    const found = ["a.yaml", "b.yaml"].flatMap((file) =>
      linesIn(folder, file).map((line) => `${file} ${line}`),
    );
    expect(found).toEqual(expect.arrayContaining(acknowledged));
    // At most what was under way at each of the two windows came in without being told.
    expect(found.length - acknowledged.length).toBeLessThanOrEqual(2);
    acknowledged.splice(0, Infinity, ...found);
    const last = desk.steps().at(-1)?.files.at(-1);
    expect(last?.is).toBe(hashOf(readFileSync(join(folder, last?.file ?? ""), "utf8")));
    expect(visible(folder)).toEqual(["a.yaml", "b.yaml", "corpus.yaml"]);
  }
});

test("a disk that is really full: what does not fit is refused in a line, and what was there stays", (context) => {
  const folder = join(place, "full");
  mkdirSync(folder);
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=160k", "tmpfs", folder]);
  if (mounted.status !== 0) context.skip("no small disk can be mounted here");
  try {
    const large = `claims: [] # ${"x".repeat(30_000)}\n`;
    writeFileSync(join(folder, "corpus.yaml"), "format: 1\n");
    writeFileSync(join(folder, "a.yaml"), "claims: []\n");
    const desk = openDesk(folder);
    desk.edit("one", [changed("a.yaml", "claims: []\n", "claims: [] # one\n")]);
    let was = "claims: [] # one\n";
    let refused = "";
    for (let n = 0; refused === "" && n < 40; n++) {
      const is = `${large}# ${Array.from({ length: 3000 }, (_, at) => hashOf(`${n}-${at}`).slice(0, 3)).join("")}\n`;
      try {
        desk.edit(`${n}`, [changed("a.yaml", was, is)]);
        was = is;
      } catch (error) {
        refused = (error as Error).message;
      }
    }
    expect(refused).toMatch(/no room left.*nothing was written$/);
    expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe(was);
    const again = openDesk(folder);
    expect(again.state()).toMatchObject({ readOnly: null, undo: desk.state().undo });
    expect(visible(folder)).toEqual(["a.yaml", "corpus.yaml"]);
  } finally {
    spawnSync("umount", [folder]);
  }
});

test("in a folder without permission nothing is written, and one line says so", () => {
  const folder = corpus("closed");
  writeFileSync(join(place, "new.bib"), "@book{vane-1968, title = {Rings}, year = {1968}}\n");
  const isRoot = process.getuid?.() === 0;
  if (!isRoot) for (const path of ["a.yaml", "corpus.yaml", ""]) chmodSync(join(folder, path), 0o555);
  const run = (...words: readonly string[]): { readonly status: number | null; readonly stderr: string } =>
    spawnSync(process.execPath, [program, ...words], {
      encoding: "utf8",
      cwd: folder,
      env: {
        PATH: process.env["PATH"],
        XDG_CACHE_HOME: join(place, "nowhere"),
        XDG_CONFIG_HOME: join(place, "nowhere"),
      },
      // Who may do everything is not refused: the program runs as nobody.
      ...(isRoot ? { uid: 65534, gid: 65534 } : {}),
    });
  for (const words of [
    ["import", join(place, "new.bib"), "--into", folder],
    ["write", "tables", folder, "--to", join(folder, "out")],
    ["new", join(folder, "inner")],
    ["new", folder, "--plugin", "mean"],
  ]) {
    const { status, stderr } = run(...words);
    expect([words[0], status, stderr.trimEnd().split("\n").length]).toEqual([words[0], 2, 1]);
    expect(stderr).toMatch(/may only be read|may not be written|Unwritable|Unexpected/);
  }
  expect(readdirSync(folder)).toEqual(["a.yaml", "corpus.yaml"]);
  if (!isRoot) chmodSync(folder, 0o755);
});
