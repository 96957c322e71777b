import { expect, test } from "vitest";
import { ask, beside, held, secret, serveStrangers, token } from "./strangers.ts";

serveStrangers();

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
