import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { hashOf } from "../../src/base/text/hash.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { declaredBy } from "../../src/host/guest/guest.ts";
import { allow, allowedGuests, permissionsIn } from "../../src/host/permissions.ts";
import { pluginFilesIn } from "../../src/read/source-file.ts";
import { reportSchema } from "../../src/show/report/schema.ts";
import type { Report } from "../../src/show/report/schema.ts";
import { computingInThreads } from "../../src/host/threads/node-computing.ts";
import { engine, evaluatedWith, filesWith, guestOf, guestText } from "../laws/numbers/guest-corpus.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-allow-"));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

interface Said {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The built command line, as a user with a home of their own. */
function run(home: string, ...words: readonly string[]): Said {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "dist", "cli.js"), ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, home, "cache"), XDG_CONFIG_HOME: join(place, home) },
  });
  return { code: status, out: stdout, err: stderr };
}

function corpus(text = guestText()): string {
  const folder = mkdtempSync(join(place, "corpus-"));
  mkdirSync(join(folder, "plugins"));
  for (const file of filesWith(text)) writeFileSync(join(folder, file.path), file.text);
  return folder;
}

const numberIn = ({ out }: Said): Report["numbers"][string] | undefined =>
  reportSchema.parse(JSON.parse(out)).numbers["how-wide"];

const script = (folder: string): string => join(folder, "plugins", "widest.js");

test("a plug-in runs once it is allowed, as long as its file stays the same to the byte", () => {
  const folder = corpus();
  const before = run("mine", "compute", folder, "--json");
  expect(before.code).toBe(0);
  expect(numberIn(before)).toMatchObject({ status: "withheld", numbers: {} });
  expect(existsSync(join(folder, ".variorum"))).toBe(false);

  const allowed = run("mine", "compute", folder, "--json", "--allow-plugin", "widest");
  expect(numberIn(allowed)).toMatchObject({ status: "computed", bearsOn: { wide: "supports" } });
  expect(numberIn(allowed)?.numbers["widest"]?.value).toBe(7.5);
  const { hash, text } = guestOf(guestText());
  expect(allowed.err).toContain(hash);
  expect(allowed.err).toContain(`plugins/widest.js, ${Buffer.byteLength(text)} bytes`);
  expect(allowed.err).toContain('| import { mean, median, refuse');

  expect(run("mine", "compute", folder, "--json").out).toBe(allowed.out);
  expect(run("mine", "check", folder, "--json", "--no-memo").out).toBe(allowed.out);
  writeFileSync(script(folder), `${text} `);
  expect(numberIn(run("mine", "compute", folder, "--json"))?.status).toBe("withheld");
  writeFileSync(script(folder), text);
  expect(numberIn(run("mine", "compute", folder, "--json"))?.status).toBe("computed");
});

test("what somebody else allowed is not allowed here, though it came with the corpus", () => {
  const folder = corpus();
  run("theirs", "check", folder, "--allow-plugin", "widest");
  expect(numberIn(run("theirs", "compute", folder, "--json"))?.status).toBe("computed");
  expect(numberIn(run("mine", "compute", folder, "--json"))?.status).toBe("withheld");
  // And theirs is kept where mine is written.
  run("mine", "check", folder, "--allow-plugin", "widest");
  for (const home of ["mine", "theirs"])
    expect(numberIn(run(home, "compute", folder, "--json"))?.status).toBe("computed");
});

test("forged, spoilt and linked permissions allow nothing", () => {
  const folder = corpus();
  const home = join(place, "forged");
  const [file] = pluginFilesIn(readCorpusFolder(folder));
  if (!file) throw new Error("the corpus has no plug-in");
  allow(folder, file, home);
  const kept = join(folder, ".variorum", "permissions.json");
  const text = readFileSync(kept, "utf8");
  expect(permissionsIn(folder, home)(file)).toBe(true);
  for (const bad of [
    "",
    "null",
    '{"plugins":[null,1,{"name":"widest"}]}',
    `{"plugins":[{"name":"widest","sha256":"${file.hash}","seal":"${file.hash}"}]}`,
    `{"plugins":[{"name":"widest","sha256":"${file.hash}","seal":"${hashOf(`widest\n${file.hash}`)}"}]}`,
  ]) {
    writeFileSync(kept, bad);
    expect(permissionsIn(folder, home)(file), bad).toBe(false);
  }
  const outside = mkdtempSync(join(place, "outside-"));
  writeFileSync(join(outside, "permissions.json"), text);
  rmSync(join(folder, ".variorum"), { recursive: true });
  symlinkSync(outside, join(folder, ".variorum"));
  expect(permissionsIn(folder, home)(file)).toBe(false);
  expect(() => allow(folder, file, home)).toThrow(/link/);
  expect(readFileSync(join(outside, "permissions.json"), "utf8")).toBe(text);
});

test("where nothing can be kept nothing can be allowed, and it is said in one line", () => {
  const folder = corpus();
  symlinkSync(mkdtempSync(join(place, "outside-")), join(folder, ".variorum"));
  const { code, out, err } = run("mine", "compute", folder, "--allow-plugin", "widest");
  expect(code).toBe(2);
  expect(out).toBe("");
  expect(err).toBe("Unexpected link at `.variorum`, expected a folder: nothing was written\n");
  rmSync(join(folder, ".variorum"));
  mkdirSync(join(folder, ".variorum", "permissions.json"), { recursive: true });
  const other = run("mine", "compute", folder, "--allow-plugin", "widest");
  expect(other.err).toMatch(/^Unexpected content of `\.variorum\/permissions\.json`.*set aside.*\nAllowed from now on/);
  expect(numberIn(run("mine", "compute", folder, "--json"))?.status).toBe("computed");
});

test("names that are not there, and those of the program's own, are refused", () => {
  const folder = corpus();
  cpSync(script(folder), join(folder, "plugins", "unit-fit.js"));
  cpSync(script(folder), join(folder, "plugins", "Not A Name.js"));
  expect(run("mine", "check", folder, "--allow-plugin", "widst").err).toBe(
    "Unknown plug-in `widst`, expected `widest`\n",
  );
  expect(run("mine", "check", folder, "--allow-plugin", "unit-fit").err).toContain("of the program's own");
  const files = readCorpusFolder(folder);
  expect(pluginFilesIn(files).map((one) => one.name)).toEqual(["unit-fit", "widest"]);
  for (const file of pluginFilesIn(files)) allow(folder, file, join(place, "all"));
  process.env["XDG_CONFIG_HOME"] = place;
  expect(allowedGuests(folder, files, plugins).map((one) => one.name)).toEqual([]);
});

test("one thread does run after run, and another takes the place of one that a guest brought down", async () => {
  const text = guestText();
  const { model } = await evaluatedWith(filesWith(text), [guestOf(text)]);
  const run = model?.derivations.byId.get("how-wide")?.run;
  if (!run) throw new Error("there is no run");
  const runs = [..."abcdefgh"].map((sign) => ({ ...run, key: sign.repeat(64) }));
  const script = new URL("../../dist/compute-worker.js", import.meta.url);
  const guests = [await declaredBy(engine, guestOf(text))];
  const outcomes = await computingInThreads(script, guests)(runs, () => undefined);
  expect([...outcomes.values()].map((one) => one.status)).toEqual(runs.map(() => "computed"));

  const killing = new URL(`data:text/javascript,${encodeURIComponent(killer)}`);
  const others = await computingInThreads(killing, guests)(runs, () => undefined);
  expect([...others.values()].map((one) => one.status)).toEqual(runs.map(() => "failed"));
});

/** A thread that ends with an error at its first message. */
const killer = `import { parentPort } from "node:worker_threads"; parentPort.on("message", () => { throw new Error("down"); });`;

test("a plug-in that never ends is told of, and the rest is computed", () => {
  const folder = corpus(guestText({ compute: "for (;;);" }));
  const said = run("mine", "compute", folder, "--json", "--allow-plugin", "widest");
  expect(said.code).toBe(1);
  expect(numberIn(said)?.status).toBe("failed");
  expect(numberIn(said)?.why).toContain("it was stopped after 10 s");
});

test("a plug-in's words do not steer the terminal", () => {
  const folder = corpus(`// \u001b[2J\u202e\r\n// a\rb\n${guestText()}`);
  const { err } = run("mine", "check", folder, "--allow-plugin", "widest");
  expect(err).toContain("| // \\u001b[2J\\u202e");
  expect(err).toContain("| // a\\u000db");
  expect(/[\u001b\u202e\r]/.test(err)).toBe(false);
});

test("`new --plugin` writes one that works as it is", () => {
  const folder = corpus();
  expect(run("mine", "new", folder, "--plugin", "average").code).toBe(0);
  const more = {
    artefacts: [1, 2, 3, 4, 5].map((n) => ({ id: `post-${n}`, name: `Post ${n}` })),
    measurements: [1, 2, 3, 4, 5].map((n) => ({ of: `post-${n}`, dimension: "height", value: `${n}.000 m` })),
    derivations: [
      {
        id: "average-height",
        plugin: "average",
        inputs: { values: { of: [1, 2, 3, 4, 5].map((n) => `post-${n}`), dimension: "height" } },
      },
    ],
  };
  writeFileSync(join(folder, "more.yaml"), JSON.stringify(more));
  const said = run("mine", "compute", folder, "--json", "--allow-plugin", "average");
  const { numbers } = reportSchema.parse(JSON.parse(said.out));
  const mean = numbers["average-height"]?.numbers["mean"];
  expect(mean?.value).toBeCloseTo(3, 12);
  // By hand: 3 ± 2.776 √2.5 / √5 with the 2.776 of printed tables for 4 degrees of freedom.
  expect(mean?.high).toBeCloseTo(3 + (2.776 * Math.sqrt(2.5)) / Math.sqrt(5), 3);
  expect(readFileSync(join(folder, "plugins", "average.js"), "utf8").split("\n").length).toBeLessThan(40);
  expect(run("mine", "new", folder, "--plugin", "average").err).toContain("not taken");
  expect(run("mine", "new", folder, "--plugin", "unit-fit").code).toBe(2);
  expect(run("mine", "new", place, "--plugin", "average").err).toContain("corpus.yaml");
});
