import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serve } from "../../src/server/serve.ts";
import type { Served } from "../../src/server/serve.ts";

const secret = "of no page and of no corpus";
/** What lies in the folder of a corpus beside what is read of it. */
const beside = [
  ".variorum/x.yaml",
  ".variorum/x.js",
  ".git/config",
  ".git/x.pdf",
  ".env",
  ".x.yaml",
  "notes.txt",
  "node_modules/a/x.yaml",
  "other/corpus.yaml",
  "other/x.yaml",
];
let folder = "";
let served: Served;
let token = "";

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "variorum-strangers-"));
  const files = {
    "corpus.yaml": "title: The Sallow Row\nbibliography: [sources.bib]\n",
    "sources.bib": "@book{hale:1896.a, title = {The Row}, year = {1896}}\n",
    "things.yaml": "artefacts:\n  - { id: post, name: A post }\n",
    ...Object.fromEntries(beside.map((path) => [path, `# ${secret}\ntitle: x\n`])),
  };
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  served = await serve(folder, { app: new URL("../../dist/app/", import.meta.url) });
  token = new URL(served.url).hash.replace("#token=", "");
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
}

type Headers = Readonly<Record<string, string>>;

/** Asks for a path, which is sent as it is written; of an answer without an end the beginning is enough. */
function ask(path: string, headers: Headers = {}, method = "GET", sent?: string): Promise<Answer> {
  const { hostname, port } = new URL(served.url);
  return new Promise((resolve, reject) => {
    // Each on a line of its own: one on which less was sent than was promised is of no more use.
    const asked = request({ hostname, port, path, headers, method, agent: false }, (answer) => {
      let body = "";
      const told = (): void => resolve({ status: answer.statusCode ?? 0, body, headers: answer.headers });
      answer.setEncoding("utf8");
      answer.on("data", (part: string) => {
        body += part;
        if (body.includes("event: ready")) asked.destroy();
      });
      answer.on("end", told);
      answer.on("close", told);
    });
    asked.on("error", reject);
    asked.end(sent);
  });
}

/** What comes back on a line of one's own, whatever is said there. */
function said(text: string): Promise<string> {
  const { hostname, port } = new URL(served.url);
  return new Promise((resolve, reject) => {
    const line = connect(Number(port), hostname, () => line.write(text));
    let back = "";
    line.setEncoding("utf8").on("data", (part: string) => {
      back += part;
      if (back.includes("\r\n\r\n")) line.destroy();
    });
    line.on("close", () => resolve(back));
    line.on("error", reject);
    line.setTimeout(3000, () => line.destroy());
  });
}

const held = (): Headers => ({ "x-variorum-token": token });

test("serves this machine alone, with a token in the address", async () => {
  const { hostname, port, search, hash } = new URL(served.url);
  expect(hostname).toBe("127.0.0.1");
  // Behind the `#`, it is sent to nobody.
  expect([search, hash]).toEqual(["", `#token=${token}`]);
  expect(token).toMatch(/^[0-9a-f]{32}$/);
  const others = Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ address, family }) => family === "IPv4" && address !== "127.0.0.1")
    .map(({ address }) => address);
  // 127.0.0.2 is this machine too, wherever the whole of 127/8 is (RFC 1122, 3.2.1.3).
  for (const address of ["127.0.0.2", "::1", ...others])
    expect(await answers(address, Number(port)), address).toBe(false);
  expect(await answers("127.0.0.1", Number(port))).toBe(true);
});

function answers(address: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const line = connect({ host: address, port, timeout: 1000 }, () => resolve(true));
    line.on("error", () => resolve(false));
    line.on("timeout", () => resolve(false));
    line.on("close", () => line.destroy());
    line.on("connect", () => line.destroy());
  });
}

const behindToken = [
  ["GET", "/corpus"],
  ["GET", "/corpus/files"],
  ["HEAD", "/corpus/files"],
  ["GET", "/corpus/changes"],
  ["GET", "/corpus/committed"],
  ["GET", "/corpus/history"],
  ["GET", "/corpus/enclosed"],
  ["GET", "/corpus/memo"],
  ["GET", "/corpus/told"],
  ["GET", "/corpus/drafts"],
  ["GET", "/%63orpus/files"],
  ["GET", "/corpus/none"],
  ["POST", "/corpus/allow"],
  ["POST", "/corpus/edit"],
  ["POST", "/corpus/memo"],
  ["POST", "/corpus/told"],
] as const;

test.each(behindToken)("%s %s needs the token, and it whole", async (method, path) => {
  for (const given of [
    undefined,
    "",
    "0".repeat(32),
    token.slice(1),
    `${token}0`,
    token.toUpperCase() + " ",
  ]) {
    const { status, body } = await ask(
      path,
      given === undefined ? {} : { "x-variorum-token": given },
      method,
    );
    expect(status).toBe(403);
    expect(body).not.toContain("Sallow");
  }
});

test("the token stands in an address only where one listens for changes", async () => {
  expect((await ask(`/corpus/changes?token=${token}`)).status).toBe(200);
  expect((await ask(`/corpus/changes?token=${token.slice(1)}`)).status).toBe(403);
  for (const path of ["files", "enclosed", "history", "memo", "changes/", "files?x=/corpus/changes&"]) {
    const asked = `/corpus/${path}${path.includes("?") ? "" : "?"}token=${token}`;
    expect((await ask(asked)).status, path).toBe(403);
  }
});

test.each([
  ["host", "example.org"],
  ["host", "localhost"],
  ["host", "127.0.0.1"],
  ["host", "127.0.0.1:1"],
  ["host", "127.0.0.1.example.org"],
  ["host", "[::1]"],
  ["origin", "http://example.org"],
  ["origin", "http://127.0.0.1"],
  ["origin", "http://localhost:5173"],
  ["origin", "https://127.0.0.1"],
  ["origin", "file://"],
  ["origin", "null"],
  ["origin", ""],
  ["sec-fetch-site", "cross-site"],
  ["sec-fetch-site", "same-site"],
])("a request whose %s is %j is refused, with the token or without", async (name, value) => {
  const { host, port } = new URL(served.url);
  const also = /:\d+$/.test(value) || !/^http|^[\w.[\]:]+$/.test(value) ? [] : [`${value}:${port}`];
  for (const one of [value, ...also].filter((each) => each !== host && each !== `http://${host}`))
    for (const path of ["/", "/corpus/files", "/corpus/nothing", "/assets/none.js"])
      for (const method of ["GET", "POST", "OPTIONS", "PUT"]) {
        const { status, body, headers } = await ask(path, { ...held(), [name]: one }, method);
        expect(status, `${method} ${path} ${one}`).toBe(403);
        expect(body).not.toContain("Sallow");
        expect(Object.keys(headers).filter((head) => head.startsWith("access-control"))).toEqual([]);
      }
});

test("its own pages are answered", async () => {
  const { host, origin } = new URL(served.url);
  for (const site of ["same-origin", "none"])
    expect((await ask("/corpus/files", { ...held(), host, origin, "sec-fetch-site": site })).status).toBe(
      200,
    );
});

test("nobody is let in by what other ways of asking a server know", async () => {
  const { host } = new URL(served.url);
  const given = `x-variorum-token: ${token}\r\n`;
  const ends = "Connection: close\r\n\r\n";
  const asks: Readonly<Record<string, string>> = {
    "two hosts": `GET /corpus/files HTTP/1.1\r\nHost: ${host}\r\nHost: example.org\r\n${ends}`,
    "no host": `GET / HTTP/1.1\r\n${given}${ends}`,
    "no host, of old": `GET / HTTP/1.0\r\n${given}\r\n`,
    "a whole address": `GET http://example.org/corpus/files HTTP/1.1\r\nHost: example.org\r\n${given}${ends}`,
    "a broken host": `GET / HTTP/1.1\r\nHost: a b/c@${host}\r\n${given}${ends}`,
    "an upgrade": `GET /corpus/changes HTTP/1.1\r\nHost: ${host}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\nSec-WebSocket-Version: 13\r\nOrigin: http://example.org\r\n\r\n`,
    "a tunnel": `CONNECT example.org:80 HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    "no HTTP": "\u0016\u0003\u0001\u0000\r\n\r\n",
    "a line for ever": `GET /${"a".repeat(100_000)} HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    "two lengths": `POST /corpus/undo HTTP/1.1\r\nHost: ${host}\r\n${given}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
  };
  for (const [name, text] of Object.entries(asks)) {
    const back = await said(text);
    expect(back, name).toMatch(/^$|^HTTP\/1\.1 4/);
    expect(back, name).not.toContain("Sallow");
  }
});

test.each([
  "/../package.json",
  "/..%2f..%2fpackage.json",
  "/..%5c..%5cpackage.json",
  "/assets/../../../package.json",
  "/assets/..%2f..%2f..%2fpackage.json",
  "/%2e%2e/%2e%2e/package.json",
  "/%252e%252e/%252e%252e/package.json",
  "//etc/passwd",
  "/%2fetc%2fpasswd",
  "/C:/Windows/win.ini",
  "/C:%5cWindows%5cwin.ini",
  "/%5c%5cexample.org%5cshare%5cx.js",
  "/assets/%00.js",
  "/index.html%00.js",
  "/cli.js",
  "/../cli.js",
  "/assets/../../cli.js",
  "/.git/config",
  "/.env",
  "/corpus.yaml",
  "/things.yaml",
  "/con",
  "/nul.js",
  "/aux/x.js",
  "/%zz",
  "/%",
  "/nothing.js",
  "/assets/nothing.js",
  "/assets",
  `/${"a/".repeat(300)}x.js`,
])("nothing but the app's own files and pages: %s", async (path) => {
  for (const method of ["GET", "HEAD", "POST"]) {
    const { status, body, headers } = await ask(path, {}, method);
    expect([404, 200]).toContain(status);
    if (status === 200) expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    if (status === 200 && method === "GET") expect(body).toContain('<div id="app">');
    if (method === "POST") expect(status).toBe(404);
    expect(body).not.toMatch(/dependencies|#!|root:|Sallow|\[core\]/);
    expect(body).not.toContain(secret);
  }
});

test("a page is one whatever is in its address, also where an id has points in it", async () => {
  for (const path of ["/", "/record/hale%3A1896.a", "/paper/hale%3A1896.a", "/question/a/b"])
    expect((await ask(path)).body, path).toContain('<div id="app">');
  const script = /src="([^"]+\.js)"/.exec((await ask("/")).body)?.[1] ?? "";
  expect((await ask(script)).headers["content-type"]).toBe("text/javascript; charset=utf-8");
  expect(await ask(script, {}, "HEAD")).toMatchObject({ status: 200, body: "" });
});

test("only the corpus's own files are told", async () => {
  const { body } = await ask("/corpus/files", held());
  const { files } = JSON.parse(body) as { readonly files: readonly { readonly path: string }[] };
  expect(files.map((file) => file.path)).toEqual(["corpus.yaml", "sources.bib", "things.yaml"]);
  for (const path of beside) {
    const { status, body: text } = await ask(`/corpus/enclosed/${path}`, held());
    expect(status, path).toBe(404);
    expect(text).not.toContain(secret);
  }
});

test("every answer has the policy: pages, refusals, what is not there and what goes wrong", async () => {
  const wanted =
    /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; .*worker-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'$/;
  const large = JSON.stringify({ name: "x".repeat(100_000), hash: "x" });
  const all = [
    await ask("/"),
    await ask("/nothing.js"),
    await ask("/", { host: "example.org" }),
    await ask("/corpus/files"),
    await ask("/corpus/files", held()),
    await ask("/corpus/none", held()),
    await ask("/corpus/enclosed/none.pdf", held()),
    await ask(`/corpus/changes?token=${token}`),
    await ask("/corpus/edit", held(), "POST", "{"),
    await ask("/corpus/allow", held(), "POST", large),
    await ask("/corpus/files", held(), "DELETE"),
    await ask("/", {}, "PURGE"),
  ];
  expect(all.map(({ status }) => status)).toEqual([
    200, 404, 403, 403, 200, 404, 404, 200, 400, 413, 404, 404,
  ]);
  for (const { headers } of all) {
    expect(headers["content-security-policy"]).toMatch(wanted);
    expect(headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
      "cache-control": "no-store",
      "cross-origin-opener-policy": "same-origin",
      "cross-origin-resource-policy": "same-origin",
    });
  }
});

test("a stretch of a file is not cut out, and a body that is too long is not read", async () => {
  const whole = await ask("/");
  expect(await ask("/", { range: "bytes=0-1" })).toMatchObject({ status: 200, body: whole.body });
  const status = async (path: string, bytes: number): Promise<number> =>
    (await ask(path, { ...held(), "content-length": String(bytes), expect: "100-continue" }, "POST")).status;
  for (const path of ["edit", "undo", "redo", "back", "allow", "memo"])
    expect(await status(`/corpus/${path}`, 1024 ** 3), path).toBe(413);
  expect(await status("/corpus/told", 1024 ** 3)).toBe(400);
});
