import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import * as z from "zod";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { ruleDocs } from "../../src/judge/rules/index.ts";
import { reportSchema } from "../../src/show/report/schema.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const demo = join(root, "demo-corpus");
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-"));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

function run(...words: readonly string[]): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "dist", "cli.js"), ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

function corpus(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(place, "corpus-"));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}

describe("check", () => {
  test("prints one JSON document by the shipped schema, the same bytes with and without the memo", () => {
    const cold = run("check", demo, "--json");
    expect(cold.err).toBe("");
    expect(cold.code).toBe(0);
    const report = reportSchema.parse(JSON.parse(cold.out));
    expect(report.questions["what-was-it"]?.answers).toEqual({
      "ring-a-open": "open",
      "ring-a-roofed": "open",
      "ring-a-windbreak": "falls",
      "roof-later": "unsupported",
    });
    expect(run("check", demo, "--json").out).toBe(cold.out);
    expect(run("check", demo, "--json", "--no-memo").out).toBe(cold.out);
  });

  test("the shipped schema is the program's own", () => {
    const shipped: unknown = JSON.parse(
      readFileSync(new URL("../../src/show/report/report.schema.json", import.meta.url), "utf8"),
    );
    expect(shipped).toEqual(z.toJSONSchema(reportSchema));
  });

  test("tells the same in text, with the sentence of each answer", () => {
    const { out, code } = run("check", demo);
    expect(code).toBe(0);
    expect(out).toContain("Was the inner ring a roofed house or an open ring?");
    expect(out).toMatch(/open {2}a roof\n.*neither beats the other\./);
    expect(out).toMatch(/0 errors, \d+ warnings, \d+ notes/);
    expect(out).not.toContain("\u001b[");
  });

  test("looks back in time", () => {
    const then = JSON.parse(run("check", demo, "--as-of", "1940", "--json").out) as {
      readonly asOf: number;
      readonly questions: Readonly<Record<string, { readonly answers: Readonly<Record<string, string>> }>>;
    };
    expect(then.asOf).toBe(1940);
    expect(Object.keys(then.questions["what-was-it"]?.answers ?? {})).not.toContain("ring-a-windbreak");
    expect(run("check", demo, "--as-of", "the war").code).toBe(2);
  });

  test("tells the coherent standpoints of the demo in text, and to a script", () => {
    const { out, code } = run("check", demo, "--standpoints");
    expect(code).toBe(0);
    expect(out.split("\n")[0]).toBe("4 coherent standpoints: 2 × 2.");
    expect(out).toMatch(/stands {2}a roof\n +fits .*Oyelaran.* wholly/);
    const { standpoints } = reportSchema.parse(JSON.parse(run("check", demo, "--standpoints", "--json").out));
    expect(standpoints?.count).toBe("4");
    // As what-next.md says beside the demo: both live answers hang from whose are the marks, the antler's or the iron's.
    const [chain] = standpoints?.components ?? [];
    expect(chain?.about).toEqual([{ kind: "evidence", between: ["antler-marks", "iron-marks"] }]);
    expect(chain?.alternatives.map((one) => Object.keys(one.toldBy)).sort()).toEqual([
      ["ring-a-open"],
      ["ring-a-roofed"],
    ]);
    expect(reportSchema.parse(JSON.parse(run("check", demo, "--json").out)).standpoints).toBe(null);
  });

  test("explains one standing down to the things, and knows near names", () => {
    const { out } = run("check", demo, "--explain", "ring-a-roofed");
    expect(out.split("\n")[0]).toBe("a roof");
    expect(out).toMatch(/against it: /);
    const slip = run("check", demo, "--explain", "ring-a-rooffed");
    expect(slip).toMatchObject({ code: 2, out: "", err: "Unknown id `ring-a-rooffed`, expected `ring-a-roofed`\n" });
  });

  test("fails on warnings when asked to, and prints SARIF", () => {
    expect(run("check", demo, "--fail-on", "warning").code).toBe(1);
    const log = JSON.parse(run("check", demo, "--format", "sarif").out) as {
      readonly version: string;
      readonly runs: readonly { readonly results: readonly { readonly ruleId: string }[] }[];
    };
    expect(log.version).toBe("2.1.0");
    expect(log.runs[0]?.results.map((one) => one.ruleId)).toContain("verdict-depends-on-disputed-measurement");
  });
});

test("a reader that stops reading gets no complaint", async () => {
  const child = spawn(process.execPath, [join(root, "dist", "cli.js"), "check", demo, "--json"], {
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
  });
  let complaint = "";
  child.stderr.on("data", (part: Buffer) => (complaint += part.toString()));
  child.stdout.once("data", () => child.stdout.destroy());
  await new Promise((resolve) => child.on("close", resolve));
  expect(complaint).toBe("");
});

describe("the other commands", () => {
  test("compute prints the numbers", () => {
    expect(run("compute", demo).out).toMatch(/supports the claim: laid out in paces/);
  });

  test.each(ruleDocs.map((rule) => rule.id))("explain %s", (id) => {
    const rule = ruleDocs.find((one) => one.id === id);
    expect(inEnglish(rule?.title ?? "")).toMatch(/^[A-Z].*\.$/);
    expect(inEnglish(rule?.doc ?? "").length).toBeGreaterThan(60);
  });

  test("explain prints a page, and knows near names", () => {
    expect(run("explain", "contradiction").out).toContain("That is what a dispute is");
    expect(run("explain", "contradicton")).toMatchObject({ code: 2, out: "" });
  });

  test("new starts a corpus that checks clean, and refuses a folder with files in it", () => {
    const folder = join(place, "a-new-question");
    expect(run("new", folder).code).toBe(0);
    const { out, code } = run("check", folder, "--json");
    expect(code).toBe(0);
    const started = reportSchema.parse(JSON.parse(out));
    // Both notes are true of a corpus with one thing and one source.
    expect(started.findings.map((one) => one.rule)).toEqual(["single-artefact", "single-source"]);
    expect(started.standings["this"]).toMatchObject({ standing: "stands", footing: "observed" });
    expect(run("new", folder)).toMatchObject({ code: 2, out: "" });
  });

  test("help tells the commands and the exit codes", () => {
    const { out, code } = run("--help");
    expect(code).toBe(0);
    for (const word of ["open", "check", "compute", "explain", "new", "Exit codes"]) expect(out).toContain(word);
  });

  test.each([
    [["chek", "x"], "Unknown command `chek`, expected check"],
    [["check", "--asof", "3"], "unknown option '--asof'"],
    [["check", "/no/such/folder"], "Unknown folder `/no/such/folder`, expected the folder of a corpus"],
    [["open", "/no/such/folder"], "Unknown folder `/no/such/folder`, expected the folder of a corpus"],
    [["explain"], "missing required argument 'rule'"],
  ])("%j is one line on standard error and 2", (words, message) => {
    const { code, out, err } = run(...words);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(message);
    expect(err.trim().split("\n")).toHaveLength(1);
  });
});

describe("hostile folders get one clear message", () => {
  const main = "title: A corpus\n";
  const checks: readonly (readonly [string, Readonly<Record<string, string | Uint8Array>>, number, RegExp])[] = [
    ["an empty folder", {}, 2, /Missing `corpus.yaml`/],
    ["random bytes", { "corpus.yaml": Uint8Array.from({ length: 4096 }, (_, i) => (i * 7919 + 13) % 256) }, 1, /no UTF-8|control character/],
    ["20,000 brackets", { "corpus.yaml": main, "a.yaml": "[".repeat(20_000) }, 1, /nesting of more than 64/],
    ["20,000 lines going in", { "corpus.yaml": main, "a.yaml": `${"- ".repeat(20_000)}x` }, 1, /nesting of more than 64/],
    ["a 20 MB YAML file", { "corpus.yaml": main, "a.yaml": "a: b\n".repeat(4_000_000) }, 1, /more than 8 MiB/],
    ["UTF-16", { "corpus.yaml": Buffer.from("\ufefftitle: A corpus\n", "utf16le") }, 1, /Unexpected UTF-16/],
    [
      "an alias bomb",
      {
        "corpus.yaml": main,
        "a.yaml": `claims:\n  - &a0 { id: x, text: lol }\n${Array.from({ length: 30 }, (_, n) => `  - &a${n + 1} [${`*a${n}, `.repeat(9)}*a${n}]\n`).join("")}`,
      },
      1,
      /at most 100 aliases/,
    ],
  ];
  test.each(checks)("%s", (_, files, code, message) => {
    const got = run("check", corpus(files));
    expect(got.code).toBe(code);
    expect(`${got.out}${got.err}`).toMatch(message);
    expect(`${got.out}${got.err}`).not.toMatch(/\bat .*\.js:\d+/);
  });

  test("__proto__ as an id is an id like any other that is misspelt, and nothing else", () => {
    const folder = corpus({ "corpus.yaml": main, "a.yaml": "claims:\n  - id: __proto__\n    text: A claim.\n" });
    const { code, out } = run("check", folder, "--json");
    expect(code).toBe(1);
    const report = reportSchema.parse(JSON.parse(out));
    expect(report.findings.map((one) => one.rule)).toEqual(["bad-value"]);
    expect(report.findings[0]?.message).toContain("Unexpected id `__proto__`");
    const source = corpus({
      "corpus.yaml": `${main}bibliography: [b.bib]\n`,
      "b.bib": "@book{__proto__, author = {Vane, Isolde}, title = {Rings}, year = 1968}\n",
      "a.yaml": "claims:\n  - { id: c, text: A claim., from: __proto__ p. 3 }\n",
    });
    const second = reportSchema.parse(JSON.parse(run("check", source, "--json").out));
    expect(second.counts["sources"]).toBe(1);
    expect(second.findings.filter((one) => one.level === "error")).toEqual([]);
  });

  test("a nested corpus is another corpus, and dot folders are passed over", () => {
    const folder = corpus({ "corpus.yaml": main, "a.yaml": "claims: [{ id: c, text: A claim. }]\n" });
    mkdirSync(join(folder, "inner"));
    mkdirSync(join(folder, ".variorum"));
    writeFileSync(join(folder, "inner", "corpus.yaml"), main);
    writeFileSync(join(folder, "inner", "b.yaml"), "claims: [{ id: d, text: Another. }]\n");
    writeFileSync(join(folder, ".variorum", "c.yaml"), "claims: [{ id: e, text: A third. }]\n");
    const report = reportSchema.parse(JSON.parse(run("check", folder, "--json").out));
    expect(report.counts["claims"]).toBe(1);
  });
});
