import { request } from "node:http";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serve } from "../../src/server/serve.ts";
import type { Served } from "../../src/server/serve.ts";

const folder = fileURLToPath(new URL("../corpora/walk", import.meta.url));
let served: Served;
let token = "";

beforeAll(async () => {
  served = await serve(folder, { app: new URL("../../dist/app/", import.meta.url) });
  token = new URL(served.url).hash.replace("#token=", "");
});
afterAll(() => served.close());

interface Answer {
  readonly status: number;
  readonly body: string;
  readonly policy: string;
}

function ask(path: string, headers: Readonly<Record<string, string>> = {}): Promise<Answer> {
  const { hostname, port } = new URL(served.url);
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, headers }, (answer) => {
      let body = "";
      answer.setEncoding("utf8");
      answer.on("data", (part: string) => (body += part));
      answer.on("end", () =>
        resolve({
          status: answer.statusCode ?? 0,
          body,
          policy: String(answer.headers["content-security-policy"] ?? ""),
        }),
      );
    });
    asked.on("error", reject);
    asked.end();
  });
}

test("serves this machine alone, with a token in the address", async () => {
  expect(new URL(served.url).hostname).toBe("127.0.0.1");
  expect(token).toMatch(/^[0-9a-f]{32}$/);
  expect((await ask("/corpus/files", { "x-variorum-token": token })).status).toBe(200);
  expect((await ask("/corpus/files")).status).toBe(403);
  expect((await ask("/corpus/files", { "x-variorum-token": "0".repeat(32) })).status).toBe(403);
  expect((await ask("/corpus/changes")).status).toBe(403);
});

test("refuses foreign hosts and origins", async () => {
  const good = { "x-variorum-token": token };
  expect((await ask("/", { host: "example.org" })).status).toBe(403);
  expect((await ask("/corpus/files", { ...good, host: "localhost:1" })).status).toBe(403);
  expect((await ask("/corpus/files", { ...good, origin: "http://example.org" })).status).toBe(403);
});

test.each([
  "/../package.json",
  "/..%2f..%2fpackage.json",
  "/assets/../../../package.json",
  "/%2e%2e/%2e%2e/package.json",
  "/nothing.js",
])("nothing but the app's own files: %s", async (path) => {
  const { status, body } = await ask(path);
  expect(body).not.toContain('"dependencies"');
  expect([404, 200]).toContain(status);
  if (status === 200) expect(body).toContain('<div id="app">');
});

test("only the corpus's own files are told, and every page has the policy", async () => {
  const { body } = await ask("/corpus/files", { "x-variorum-token": token });
  const { files } = JSON.parse(body) as { readonly files: readonly { readonly path: string }[] };
  expect(files.map((file) => file.path)).toEqual(["corpus.yaml", "ditch.yaml", "sources.bib"]);
  expect((await ask("/")).policy).toMatch(/^default-src 'none'; script-src 'self'/);
});
