import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { serve } from "../../src/server/serve.ts";
import type { Served } from "../../src/server/serve.ts";

/** What stands in all that is not to be given. */
export const secret = "of no page and of no corpus";
/** What lies in the folder of a corpus beside what is read of it. */
export const beside = [
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
/** Where the corpus is served. */
export let served: Served;
/** What its address lets in by. */
export let token = "";

/** Serves a small corpus while the tests of a file run. */
export function serveStrangers(): void {
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
}

interface Answer {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
}

type Headers = Readonly<Record<string, string>>;

/** Asks for a path, which is sent as it is written; of an answer without an end the beginning is enough. */
export function ask(path: string, headers: Headers = {}, method = "GET", sent?: string): Promise<Answer> {
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
export function said(text: string): Promise<string> {
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

/** The token, as a page of ours sends it. */
export const held = (): Headers => ({ "x-variorum-token": token });
