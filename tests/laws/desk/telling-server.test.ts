import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { Hono } from "hono";
import { afterAll, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { tellingRoutes } from "../../../src/server/telling.ts";

const written: Readonly<Record<string, string>> = {
  "corpus.yaml": "title: Two rings\nbibliography: [sources.bib]\nwithhold: [umbra]\n",
  "sources.bib": "@book{hale-1896, author = {Hale, Josiah}, title = {Rings}, year = 1896}\n",
  "records.yaml": `scholars:
  - { id: hale, name: Josiah Hale }
artefacts:
  - { id: ring, name: the ring }
questions:
  - { id: what, text: What was it?, answers: [roofed, umbra] }
claims:
  - { id: roofed, text: The ring carried a roof. }
  - { id: umbra, text: The ring hid a hoard. }
observations:
  - { id: daub, of: ring, text: Burnt daub lay in the ring., from: hale-1896 }
arguments:
  - { id: walls, because: daub, therefore: roofed, from: hale-1896 }
`,
  "review/introduction.md":
    "# Before all else\r\n\r\nIt is said that {{claim:roofed stands}} [@hale-1896, p. 3].\r\n",
};

const folder = mkdtempSync(join(tmpdir(), "variorum-told-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
for (const [path, text] of Object.entries(written)) {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

const hono = new Hono();
tellingRoutes(hono, folder, { plugins, script: new URL("file:///none.js"), store: null });

const order = { kind: "review", format: "md", options: {}, asOf: null, suppose: null };
const post = async (body: unknown): Promise<Response> =>
  hono.request("/corpus/told", { method: "POST", body: JSON.stringify(body) });

const withoutAnchors = (text: string): string => text.replace(/<span id="[^"]*"><\/span>/gu, "");

test("what can be written is told with its formats, and nothing else", async () => {
  const answer = (await (await hono.request("/corpus/told")).json()) as {
    readonly tellable: readonly { readonly name: string; readonly formats: readonly string[] }[];
  };
  const review = answer.tellable.find(({ name }) => name === "review");
  expect(review?.formats).toEqual(["docx", "md", "html"]);
  for (const { formats } of answer.tellable) expect(formats.length).toBeGreaterThan(0);
});

test("a review is made with the scholar's words in it and nothing withheld, and the corpus stays as it is", async () => {
  const answer = await post(order);
  expect(answer.status).toBe(200);
  expect(answer.headers.get("content-disposition")).toBe('attachment; filename="review.md"');
  const text = withoutAnchors(await answer.text());
  expect(text).toMatch(/# Before all else\s+It is said that the ring carried a roof \(Hale 1896, 3\)\./u);
  expect(text).not.toMatch(/umbra|hoard/);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  expect(files.map((one) => one.name).toSorted()).toEqual(
    Object.keys(written)
      .map((path) => path.split("/").at(-1))
      .toSorted(),
  );
  for (const [path, before] of Object.entries(written))
    expect(readFileSync(join(folder, path), "utf8")).toBe(before);
});

test("only the sections asked for are written, in their order", async () => {
  const answer = await post({ ...order, options: { sections: ["references", "introduction"] } });
  const text = withoutAnchors(await answer.text());
  const headings = [...text.matchAll(/^#+ (.+)$/gmu)].map(([, words]) => words);
  expect(headings.slice(-2)).toEqual(["Before all else", "References"]);
  expect(headings).not.toContain("The question");
});

test("what cannot be made as it was asked is refused in words, without a path of the machine", async () => {
  const refused = [
    [{}, 400],
    [{ ...order, kind: "constructor" }, 422],
    [{ ...order, format: "exe" }, 422],
    [{ ...order, options: { over: true } }, 422],
    [{ ...order, options: { sections: ["refrences"] } }, 422],
    [{ ...order, options: { style: "/etc/passwd" } }, 422],
    [{ ...order, suppose: { examination: "x", outcome: "y" } }, 422],
  ] as const;
  for (const [body, status] of refused) {
    const answer = await post(body);
    expect(answer.status, JSON.stringify(body)).toBe(status);
    expect(await answer.text()).not.toContain(folder);
  }
});

test("files are made one after the other", async () => {
  const [first, second] = await Promise.all([post(order), post(order)]);
  expect([first.status, second.status]).toEqual([200, 409]);
  expect((await post(order)).status).toBe(200);
});
