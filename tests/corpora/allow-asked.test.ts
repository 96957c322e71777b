import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Text } from "../../src/base/text/said/said.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { allow, permissionsIn } from "../../src/host/permissions.ts";
import { pluginFilesIn } from "../../src/read/source-file.ts";
import { serve } from "../../src/server/serve.ts";
import type { Served } from "../../src/server/serve.ts";
import { filesWith, guestOf, guestText } from "../laws/numbers/guest-corpus.ts";

const before = process.env["XDG_CONFIG_HOME"];
let place = "";
let folder = "";
let served: Served;
let token = "";

beforeAll(async () => {
  place = mkdtempSync(join(tmpdir(), "variorum-asked-"));
  process.env["XDG_CONFIG_HOME"] = join(place, "home");
  folder = join(place, "corpus");
  mkdirSync(join(folder, "plugins"), { recursive: true });
  served = await serve(folder, { app: new URL("../../dist/app/", import.meta.url) });
  token = new URL(served.url).hash.replace("#token=", "");
});
beforeEach(() => {
  rmSync(join(folder, ".variorum"), { recursive: true, force: true });
  for (const file of filesWith(guestText())) writeFileSync(join(folder, file.path), file.text);
});
afterAll(async () => {
  await served.close();
  if (before === undefined) delete process.env["XDG_CONFIG_HOME"];
  else process.env["XDG_CONFIG_HOME"] = before;
  rmSync(place, { recursive: true, force: true });
});

interface Asking {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

const good = (): string => JSON.stringify({ name: "widest", hash: guestOf(guestText()).hash });

/** Asks the server, with the token unless the test has headers of its own. */
function ask({ method = "POST", path = "/corpus/allow", headers, body = good() }: Asking) {
  const { hostname, port } = new URL(served.url);
  const sent = { "x-variorum-token": token, ...headers };
  return new Promise<{ readonly status: number; readonly text: string; readonly headers: object }>(
    (resolve, reject) => {
      const asked = request({ hostname, port, path, method, headers: sent }, (answer) => {
        let text = "";
        answer.setEncoding("utf8").on("data", (part: string) => (text += part));
        answer.on("end", () => resolve({ status: answer.statusCode ?? 0, text, headers: answer.headers }));
      });
      asked.on("error", reject);
      asked.end(["GET", "HEAD", "OPTIONS"].includes(method) ? undefined : body);
    },
  );
}

const isAllowed = (): boolean => {
  const [file] = pluginFilesIn(readCorpusFolder(folder));
  return file !== undefined && permissionsIn(folder)(file);
};

describe("a plug-in is allowed from the page alone", () => {
  test("which has the token and looked at the file as it is", async () => {
    expect(isAllowed()).toBe(false);
    expect((await ask({})).status).toBe(204);
    expect(isAllowed()).toBe(true);
  });

  test.each<readonly [string, Asking]>([
    ["no token", { headers: { "x-variorum-token": "" } }],
    ["another token", { headers: { "x-variorum-token": "0".repeat(32) } }],
    ["another page", { headers: { origin: "http://example.org" } }],
    ["a page without an origin of its own", { headers: { origin: "null" } }],
    ["the same machine by another name", { headers: { origin: "http://localhost" } }],
    ["an address that leads here by another name", { headers: { host: "example.org" } }],
    ["a host with the right beginning", { headers: { host: "127.0.0.1.example.org:1" } }],
  ])("not from %s", async (_, asking) => {
    const path = `/corpus/allow${asking.headers?.["x-variorum-token"] === undefined ? `?token=${token}` : ""}`;
    expect((await ask({ ...asking, path })).status).toBe(403);
    expect(existsSync(join(folder, ".variorum"))).toBe(false);
  });

  test.each<readonly [string, Asking]>([
    ["GET", { method: "GET" }],
    ["HEAD", { method: "HEAD" }],
    ["PUT", { method: "PUT" }],
    ["a longer path", { path: "/corpus/allow/" }],
    ["a doubled slash", { path: "//corpus/allow" }],
    ["other letters", { path: "/CORPUS/allow" }],
  ])("nor by %s", async (_, asking) => {
    expect((await ask(asking)).status).not.toBe(204);
    expect(existsSync(join(folder, ".variorum"))).toBe(false);
  });

  test.each(["/%63orpus/allow", "/corpus/%61llow", "/x/../corpus/allow", "/./corpus/allow", "/corpus/x/../allow"])(
    "and with the path written %s not without the token either",
    async (path) => {
      expect((await ask({ path, headers: { "x-variorum-token": "" } })).status).toBeGreaterThanOrEqual(403);
      expect(existsSync(join(folder, ".variorum"))).toBe(false);
    },
  );

  test.each([
    ["", "Expected the name"],
    ["null", "Expected the name"],
    ["[]", "Expected the name"],
    ['{"name":["widest"],"hash":1}', "Expected the name"],
    ['{"name":"__proto__","hash":""}', "no such plug-in"],
    ['{"name":"unit-fit","hash":""}', "no such plug-in"],
    ['{"name":"../plugins/widest","hash":""}', "no such plug-in"],
    [`{"name":"widest","hash":"${"0".repeat(64)}"}`, "changed meanwhile"],
  ])("nor for what is asked as %s", async (body, why) => {
    const { status, text } = await ask({ body });
    expect(status).toBe(409);
    expect(inEnglish((JSON.parse(text) as { readonly message: Text }).message)).toContain(why);
    expect(existsSync(join(folder, ".variorum"))).toBe(false);
  });

  test("nor once the file is another", async () => {
    writeFileSync(join(folder, "plugins", "widest.js"), `${guestText()} `);
    expect((await ask({})).status).toBe(409);
    rmSync(join(folder, "plugins", "widest.js"));
    writeFileSync(join(place, "elsewhere.js"), guestText());
    symlinkSync(join(place, "elsewhere.js"), join(folder, "plugins", "widest.js"));
    expect((await ask({})).status).toBe(409);
    expect(existsSync(join(folder, ".variorum"))).toBe(false);
    rmSync(join(folder, "plugins", "widest.js"));
  });

  test("and no other page is told that it might", async () => {
    const { status, headers } = await ask({ method: "OPTIONS", headers: { origin: "http://example.org" } });
    expect(status).toBe(403);
    expect(Object.keys(headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  test("where nothing can be kept that is said", async () => {
    symlinkSync(place, join(folder, ".variorum"));
    const { status, text } = await ask({});
    expect(status).toBe(409);
    expect(inEnglish((JSON.parse(text) as { readonly message: Text }).message)).toContain(
      "`.variorum`, expected a folder",
    );
    expect(isAllowed()).toBe(false);
  });
});

test("an address that is written wrongly is not found, and harms nothing", async () => {
  for (const path of ["/%zz", "/%c0%ae%c0%ae/package.json", "/%"])
    expect((await ask({ method: "GET", path })).status, path).toBe(404);
  expect((await ask({ method: "GET", path: "/" })).status).toBe(200);
});

test("the user's key lies outside the corpus, whatever the place of settings is called", () => {
  const [file] = pluginFilesIn(readCorpusFolder(folder));
  if (!file) throw new Error("the corpus has no plug-in");
  const home = process.env["XDG_CONFIG_HOME"];
  const from = process.cwd();
  const stood = mkdtempSync(join(place, "stood-"));
  mkdirSync(join(stood, "variorum"));
  writeFileSync(join(stood, "variorum", "key"), "0".repeat(64));
  allow(folder, file, join(stood, "variorum"));
  try {
    process.chdir(stood);
    process.env["XDG_CONFIG_HOME"] = ".";
    expect(permissionsIn(folder)(file)).toBe(false);
  } finally {
    process.chdir(from);
    if (home !== undefined) process.env["XDG_CONFIG_HOME"] = home;
  }
});

test("permissions of others, however many and long, do not crowd out the user's own", () => {
  const [file] = pluginFilesIn(readCorpusFolder(folder));
  if (!file) throw new Error("the corpus has no plug-in");
  const kept = join(folder, ".variorum", "permissions.json");
  const digits = (n: number): string => n.toString(16).padStart(64, "0");
  const others = Array.from({ length: 4000 }, (_, n) => ({ name: "n", sha256: digits(n), seal: digits(n) }));
  const long = { name: "n".repeat(300_000), sha256: digits(1), seal: digits(1) };
  allow(folder, { name: "earlier", hash: digits(7) });
  const { plugins } = JSON.parse(readFileSync(kept, "utf8")) as { readonly plugins: readonly object[] };
  writeFileSync(kept, JSON.stringify({ plugins: [...plugins, ...others, long] }));
  allow(folder, file);
  expect(permissionsIn(folder)(file)).toBe(true);
  expect(permissionsIn(folder)({ name: "earlier", hash: digits(7) })).toBe(true);
  expect(readFileSync(kept, "utf8").length).toBeLessThan(200_000);
});
