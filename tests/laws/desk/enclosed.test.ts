import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import {
  enclosedIn,
  encloseNew,
  largestEnclosed,
  openEnclosed,
  TooLarge,
} from "../../../src/host/enclosed.ts";
import { serve } from "../../../src/server/serve.ts";
import type { Served } from "../../../src/server/serve.ts";

const secret = "not of this corpus";
let around = "";
let place = "";
let served: Served;

function put(folder: string, file: string, text: string): void {
  const path = join(folder, file);
  mkdirSync(join(path, ".."), { recursive: true });
  writeFileSync(path, text);
}

beforeAll(async () => {
  around = mkdtempSync(join(tmpdir(), "variorum-enclosed-"));
  place = join(around, "corpus");
  put(place, "corpus.yaml", "format: 1\ntitle: Rings\n");
  put(place, "papers/vane-1968.pdf", "a paper");
  put(place, "papers/παλ-1/p 1.PNG", "a page");
  put(place, "plans/ring.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
  put(place, "papers/notes.txt", secret);
  put(place, ".variorum/kept.pdf", secret);
  put(place, "papers/.hidden.pdf", secret);
  put(place, "node_modules/x/doc.pdf", secret);
  put(place, "other/corpus.yaml", "format: 1\ntitle: Another\n");
  put(place, "other/papers/a.pdf", secret);
  put(around, "outside.pdf", secret);
  put(around, "far/b.pdf", secret);
  symlinkSync(join(around, "outside.pdf"), join(place, "papers/linked.pdf"));
  symlinkSync(join(around, "far"), join(place, "papers/far"));
  served = await serve(place);
});
afterAll(async () => {
  await served.close();
  rmSync(around, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
}

/** By hand, since `fetch` would tidy a path before it is sent. */
function ask(method: string, path: string, body?: string | Uint8Array, headers = {}): Promise<Answer> {
  const { hostname, port, hash } = new URL(served.url);
  const given = { "x-variorum-token": hash.replace("#token=", ""), ...headers };
  return new Promise((resolve, reject) => {
    const asked = request({ hostname, port, path, method, headers: given }, (answer) => {
      const parts: Buffer[] = [];
      answer.on("data", (part: Buffer) => parts.push(part));
      answer.on("end", () =>
        resolve({
          status: answer.statusCode ?? 0,
          body: Buffer.concat(parts).toString("utf8"),
          headers: answer.headers,
        }),
      );
    });
    asked.on("error", reject);
    asked.end(body);
  });
}

const at = (file: string): string => `/corpus/enclosed/${file.split("/").map(encodeURIComponent).join("/")}`;

test("what lies in the corpus is listed, and nothing hidden, linked or of another corpus", async () => {
  const { status, body } = await ask("GET", "/corpus/enclosed");
  expect(status).toBe(200);
  expect(JSON.parse(body)).toEqual({
    enclosed: [
      { file: "papers/vane-1968.pdf", bytes: 7 },
      { file: "papers/παλ-1/p 1.PNG", bytes: 6 },
      { file: "plans/ring.svg", bytes: 41 },
    ],
  });
});

test("a paper is given byte for byte with its exact type, and a picture opened by itself can run nothing", async () => {
  const paper = await ask("GET", at("papers/vane-1968.pdf"));
  expect(paper).toMatchObject({
    status: 200,
    body: "a paper",
    headers: {
      "content-type": "application/pdf",
      "content-length": "7",
      "x-content-type-options": "nosniff",
    },
  });
  const page = await ask("GET", at("papers/παλ-1/p 1.PNG"));
  expect(page).toMatchObject({ status: 200, body: "a page", headers: { "content-type": "image/png" } });
  const drawing = await ask("GET", at("plans/ring.svg"));
  expect(drawing.headers["content-type"]).toBe("image/svg+xml");
  expect(drawing.headers["content-security-policy"]).toMatch(/^default-src 'none';.* sandbox;/);
  expect(drawing.headers["content-security-policy"]).not.toContain("script-src");
});

test("who asks only for the head, or goes away half-way, leaves no file open", async () => {
  writeFileSync(join(place, "papers/long.pdf"), new Uint8Array(8 * 1024 * 1024));
  const before = openFiles();
  for (let n = 0; n < 20; n++) {
    const told = await ask("HEAD", at("papers/long.pdf"));
    expect(told).toMatchObject({ status: 200, body: "", headers: { "content-length": "8388608" } });
    await leave(at("papers/long.pdf"));
  }
  await expect.poll(openFiles).toBeLessThan(before + 10);
  rmSync(join(place, "papers/long.pdf"));
});

const openFiles = (): number => readdirSync("/dev/fd").length;

/** Asks for a paper and goes away with the first bytes of it. */
function leave(path: string): Promise<void> {
  const { hostname, port, hash } = new URL(served.url);
  return new Promise((resolve) => {
    const asked = request(
      { hostname, port, path, headers: { "x-variorum-token": hash.replace("#token=", "") } },
      (answer) => answer.once("data", () => asked.destroy()),
    );
    asked.on("error", () => undefined);
    asked.on("close", resolve);
    asked.end();
  });
}

test("none of it without the token", async () => {
  for (const [method, path] of [
    ["GET", "/corpus/enclosed"],
    ["GET", at("papers/vane-1968.pdf")],
    ["PUT", at("papers/new.pdf")],
  ] as const) {
    expect((await ask(method, path, undefined, { "x-variorum-token": "0".repeat(32) })).status).toBe(403);
  }
  expect(existsSync(join(place, "papers/new.pdf"))).toBe(false);
});

const hostile = [
  "/corpus/enclosed/../../outside.pdf",
  "/corpus/enclosed/%2e%2e/outside.pdf",
  "/corpus/enclosed/..%2foutside.pdf",
  "/corpus/enclosed/papers/..%2f..%2foutside.pdf",
  "/corpus/enclosed/papers%5c..%5c..%5coutside.pdf",
  "/corpus/enclosed/papers/linked.pdf",
  "/corpus/enclosed/papers/far/b.pdf",
  "/corpus/enclosed/papers/.hidden.pdf",
  "/corpus/enclosed/.variorum/kept.pdf",
  "/corpus/enclosed/node_modules/x/doc.pdf",
  "/corpus/enclosed/other/papers/a.pdf",
  "/corpus/enclosed/papers/notes.txt",
  "/corpus/enclosed/papers/notes.txt%00.pdf",
  "/corpus/enclosed/corpus.yaml",
  "/corpus/enclosed/%2fetc%2fpasswd",
  "/corpus/enclosed/papers//vane-1968.pdf",
  "/corpus/enclosed/papers/%zz.pdf",
  "/corpus/enclosed/",
  "/corpus/enclosed/papers",
];

test.each(hostile)("%s gives nothing, and takes nothing", async (path) => {
  const before = everything();
  const given = await ask("GET", path);
  expect(given.body).not.toContain(secret);
  expect(given.status).toBe(404);
  const taken = await ask("PUT", path, "mine");
  expect([400, 404, 409]).toContain(taken.status);
  expect(everything()).toEqual(before);
});

const everything = (): readonly string[] =>
  (readdirSync(around, { recursive: true }) as string[]).filter((one) => !/\.variorum/.test(one)).sort();

test("whatever a path is made of, what is opened lies in the list", () => {
  const part = fc.constantFrom(
    "..",
    ".",
    "",
    "papers",
    "far",
    "other",
    "vane-1968.pdf",
    "linked.pdf",
    "outside.pdf",
    "b.pdf",
    "\\",
    "a:b.pdf",
    "plans",
    "ring.svg",
    ".variorum",
    "kept.pdf",
    "corpus",
    "~",
  );
  const listed = new Set(enclosedIn(place).map(({ file }) => file));
  fc.assert(
    fc.property(
      fc.array(part, { minLength: 1, maxLength: 5 }),
      fc.constantFrom("/", "\\", "//"),
      (parts, sign) => {
        const file = parts.join(sign);
        const found = openEnclosed(place, file);
        if (found) expect(listed).toContain(file);
      },
    ),
    { numRuns: 300 },
  );
});

test("a new paper is brought in whole, and never over another", async () => {
  const bytes = Uint8Array.from({ length: 300_000 }, (_, n) => (n * 31) % 256);
  expect((await ask("PUT", at("papers/new/ferrant-1951.pdf"), bytes)).status).toBe(201);
  const path = join(place, "papers/new/ferrant-1951.pdf");
  expect(readFileSync(path).equals(Buffer.from(bytes))).toBe(true);
  const again = await ask("PUT", at("papers/new/ferrant-1951.pdf"), "another");
  expect(again.status).toBe(409);
  expect(again.body).toContain("expected none");
  expect(readFileSync(path).length).toBe(bytes.length);
  expect(readdirSync(join(place, "papers/new"))).toEqual(["ferrant-1951.pdf"]);
});

test("of two that are brought to one place at once, one is there and the other is told", async () => {
  const both = await Promise.all(["one", "two"].map((text) => ask("PUT", at("images/a.png"), text)));
  expect(both.map(({ status }) => status).sort()).toEqual([201, 409]);
  expect(readFileSync(join(place, "images/a.png"), "utf8")).toBe(both[0]?.status === 201 ? "one" : "two");
});

test.each([
  "plans/new.svg",
  "new.pdf",
  "papers/new.html",
  "papers/none",
  "images/a.yaml",
  "Papers/x.pdf",
  "papers",
])("nothing is brought to %s", async (file) => {
  const { status, body } = await ask("PUT", at(file), "x");
  expect(status).toBe(400);
  expect(body).toContain("nothing was written");
  expect(existsSync(join(place, file)) && file !== "papers").toBe(false);
});

test("what is too large is told, and leaves nothing behind", async () => {
  const told = await ask("PUT", at("papers/large.pdf"), undefined, {
    "content-length": String(largestEnclosed + 1),
    expect: "100-continue",
  });
  expect(told.status).toBe(413);
  expect(told.body).toContain("200 MiB");
  async function* endless(): AsyncGenerator<Uint8Array> {
    const part = new Uint8Array(32 * 1024 * 1024);
    for (;;) yield part;
  }
  await expect(encloseNew(place, "papers/endless.pdf", endless(), sink())).rejects.toBeInstanceOf(TooLarge);
});

test("nothing is brought into a corpus that can only be read", async () => {
  const closed = {
    ...sink(),
    tryWriting: () => {
      throw Object.assign(new Error("closed"), { code: "EACCES" });
    },
  };
  async function* one(): AsyncGenerator<Uint8Array> {
    yield Buffer.from("a");
  }
  await expect(encloseNew(place, "papers/closed.pdf", one(), closed)).rejects.toThrow("may only be read");
});

/** A disk that takes any bytes and keeps none of them. */
function sink(): Parameters<typeof encloseNew>[3] & object {
  return {
    see: (path) =>
      /\.[a-z]+$/.test(path) ? null : { kind: "folder", size: 0, mode: 0, uid: 0, gid: 0, changed: 0 },
    tryWriting: () => undefined,
    read: () => new Uint8Array(),
    list: () => [],
    open: () => 0,
    write: (_, bytes) => bytes.length,
    liken: () => undefined,
    sync: () => undefined,
    close: () => undefined,
    rename: () => expect.unreachable(),
    link: () => expect.unreachable(),
    remove: () => undefined,
    makeFolder: () => undefined,
    removeFolder: () => undefined,
  };
}

test("what breaks off half-way leaves nothing behind", async () => {
  async function* broken(): AsyncGenerator<Uint8Array> {
    yield Buffer.from("half");
    throw Object.assign(new Error("gone"), { code: "ECONNRESET" });
  }
  await expect(encloseNew(place, "papers/half/a.pdf", broken())).rejects.toThrow("nothing was written");
  expect(readdirSync(join(place, "papers/half"))).toEqual([]);
});
