import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";
import { Resvg } from "@resvg/resvg-js";
import { Hono } from "hono";
import { Parser } from "n3";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { ended } from "../../../src/base/text/steering.ts";
import { write } from "../../../src/cli/write/write.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { imageOf } from "../../../src/host/print/image.ts";
import { pngApart, pngOf } from "../../../src/host/print/png.ts";
import { takenAmong } from "../../../src/host/telling/files/place.ts";
import type { Asked, Told } from "../../../src/host/telling/kind.ts";
import { kinds } from "../../../src/host/telling/kinds.ts";
import { review } from "../../../src/host/telling/review.ts";
import { slides } from "../../../src/host/telling/slides.ts";
import { tellingRoutes } from "../../../src/server/telling.ts";
import { escaped } from "../../../src/write/telling/markdown/escape.ts";
import { unzipped } from "../reading/unzipped.ts";
import { folderWith, hostile } from "./corpus.ts";

const asked: Readonly<Record<string, Asked>> = {
  application: { examination: "look" },
  visit: { examination: "look", "with-values": true },
  slides: { talk: "talk" },
  figures: { of: ["map:sets", "around:one-set:3"], dpi: "300" },
};

let folder = "";
const written = new Map<string, Uint8Array>();

async function toldIn(of: string): Promise<Told> {
  const files = readCorpusFolder(of);
  const memo = emptyMemo();
  const under: Told["under"] = (lens, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens, reach });
  const { model, findings } = await under({}, { plan: true, history: true });
  if (!model) throw new Error("no model");
  return { folder: of, files, model, findings, plugins, memo, under, today: "2026-11-26" };
}

beforeAll(async () => {
  folder = folderWith(hostile);
  const told = await toldIn(folder);
  for (const [name, load] of Object.entries(kinds)) {
    const kind = await load();
    for (const format of kind.formats) {
      const made = await kind.make(told, format, name, asked[name] ?? {});
      if ("refused" in made) throw new Error(`${name} ${format}: ${inEnglish(made.refused)}`);
      for (const { path, content } of made)
        written.set(`${name} ${format}: ${path}`, Buffer.from(content as Uint8Array));
    }
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every file and what is packed in it. */
const all = (): readonly (readonly [string, string])[] =>
  [...written]
    .flatMap(([path, bytes]) => {
      const packed = /\.(?:docx|pptx|xlsx|zip)$/.test(path) ? [...unzipped(bytes)] : [];
      return [
        [path, bytes] as const,
        ...packed.map(([name, entry]) => [`${path} > ${name}`, entry] as const),
      ];
    })
    .map(([path, bytes]) => [path, Buffer.from(bytes).toString("utf8")]);

/** What is wrong with a text as XML, by a parser that is strict about it; empty for nothing. */
function wrongIn(xml: string): string {
  const inner = xml.replace(/^\uFEFF?<\?xml[^>]*\?>\s*/, "");
  try {
    new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"><desc>${inner}</desc></svg>`);
    return "";
  } catch (error) {
    return String(error).slice(0, 200);
  }
}

test("the judge of XML knows what is none", () => {
  for (const xml of ["<a>\u0001</a>", "<a>&</a>", "<a><b></a>", "<a b:c='1'/>"])
    expect(wrongIn(xml), xml).not.toBe("");
});

test("whatever a corpus says, every file of XML can be read", () => {
  const parts = all().filter(([path]) => /\.(?:xml|rels|svg|graphml)$/.test(path));
  expect(parts.length).toBeGreaterThan(40);
  expect(parts.flatMap(([path, xml]) => (wrongIn(xml) === "" ? [] : [`${path}: ${wrongIn(xml)}`]))).toEqual(
    [],
  );
});

test("texts, tables, triples and pages hold no control, and triples can be read", () => {
  const texts = all().filter(([path]) => /\.(?:md|csv|ttl|html)$/.test(path));
  expect(texts.length).toBeGreaterThan(8);
  for (const [path, text] of texts) {
    // oxlint-disable-next-line no-control-regex
    expect(/[\u0000-\u0008\u000B\u000C\u000E-\u001F]/.exec(text), path).toBeNull();
    if (path.endsWith(".ttl")) expect(new Parser().parse(text).length, path).toBeGreaterThan(10);
  }
});

test("in pages nothing of a stranger's runs, leads astray or is fetched", () => {
  const pages = all().filter(([path]) => /(?:review|application) html: /.test(path));
  expect(pages).toHaveLength(2);
  for (const [path, page] of pages) {
    expect(page, path).toContain("&lt;script&gt;");
    expect(/<(?:script|iframe|img(?! src="data:))/i.exec(page), path).toBeNull();
    expect(/(?:href|src)="(?!#|data:image\/|https:)[^"]*/i.exec(page), path).toBeNull();
  }
  for (const [path, list] of all().filter(([path]) => path.endsWith(".rels")))
    expect(/Target="(?!https:)[^"]*"[^>]*TargetMode="External"/.exec(list), path).toBeNull();
});

test("what turns the order of reading ends with the text it stands in", () => {
  expect(ended("a\u202eb")).toBe("a\u202eb\u202c");
  expect(ended("a\u2066b\u2069\u2067")).toBe("a\u2066b\u2069\u2067\u2069");
  expect(ended("plain")).toBe("plain");
});

test("a word between colons is no sign of Markdown's", () => {
  expect(escaped(":smile: at 10:30")).toBe("\\:smile: at 10:30");
});

const picture = async (name: string, content: string | Uint8Array): Promise<string> => {
  mkdirSync(join(folder, "images"), { recursive: true });
  writeFileSync(join(folder, "images", name), content);
  const image = await imageOf(folder, `images/${name}`);
  return "refused" in image ? inEnglish(image.refused) : image.type;
};

const svg = (inner: string, size = 'viewBox="0 0 4 4"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${inner}</svg>`;

test("a drawing that cannot be drawn is none, and takes nothing down with it", async () => {
  const uses = Array.from(
    { length: 9 },
    (_, n) => `<g id="u${n + 1}">${`<use href="#u${n}"/>`.repeat(10)}</g>`,
  ).join("");
  const drawings = {
    deep: svg(`${"<g>".repeat(20_000)}${"</g>".repeat(20_000)}`),
    slim: svg("", 'viewBox="0 0 1 1000000000"'),
    sizeless: svg("", 'width="0" height="0"'),
    control: svg("<text>&#1;</text>"),
  };
  for (const [name, drawing] of Object.entries(drawings))
    expect(await picture(`${name}.svg`, drawing)).toBe(
      `Unreadable drawing \`images/${name}.svg\`, expected an SVG`,
    );
  const blurs = (n: number): string =>
    svg(
      `<filter id="f">${'<feGaussianBlur stdDeviation="1"/>'.repeat(n)}</filter><rect width="4" height="4" filter="url(#f)"/>`,
    );
  const multiplied = svg(`<g id="u0"><rect width="1" height="1"/></g>${uses}<use href="#u9"/>`);
  expect(await picture("multiplied.svg", multiplied)).toMatch(/^Unexpected drawing .* repeats itself/);
  expect(await picture("blurred.svg", blurs(300))).toMatch(/^Unexpected filters in drawing/);
  const plain = svg('<rect width="2" height="2"/>');
  expect(await picture("plain.svg", plain)).toBe("image/svg+xml");
  // What is drawn as a trial may still take long at the size in which it is printed.
  expect(await pngApart(blurs(9), { width: 190, dpi: 1200 }, 400)).toBeNull();
  const printed = { width: 20, dpi: 300 };
  expect(await pngApart(plain, printed)).toEqual(await pngOf(plain, printed));
});

/** A PNG of black and white that says it is so large (PNG 3, 11.2.1). */
function png(width: number, height: number): Buffer {
  const chunk = (name: string, data: Buffer): Buffer => {
    const bytes = Buffer.alloc(12 + data.length);
    bytes.writeUInt32BE(data.length, 0);
    bytes.write(name, 4, "latin1");
    data.copy(bytes, 8);
    bytes.writeUInt32BE(crc32(bytes.subarray(4, 8 + data.length)), 8 + data.length);
    return bytes;
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 1;
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const rows = chunk("IDAT", deflateSync(Buffer.alloc(2)));
  const end = chunk("IEND", Buffer.alloc(0));
  return Buffer.concat([signature, chunk("IHDR", head), rows, end]);
}

test("a picture without a head, without a size, or too large to be unpacked is none", async () => {
  const kind = (name: string): string =>
    `Unexpected kind of picture \`images/${name}\`, expected a PNG, a JPEG or an SVG`;
  const bare = Buffer.concat([png(1, 1).subarray(0, 8), png(1, 1).subarray(-12)]);
  expect(await picture("one.png", png(1, 1))).toBe("image/png");
  expect(await picture("bare.png", bare)).toBe(kind("bare.png"));
  expect(await picture("none.png", png(0, 0))).toBe(kind("none.png"));
  expect(await picture("drawing.png", svg(""))).toBe(kind("drawing.png"));
  expect(await picture("vast.png", png(30_000, 30_000))).toBe(
    "Unexpected size of picture `images/vast.png`, expected at most 200 million pixels",
  );
  // Nor one within a drawing: it goes, and the drawing stays.
  const address = `data:image/png;base64,${png(30_000, 30_000).toString("base64")}`;
  expect(await picture("holds.svg", svg(`<image width="4" height="4" href="${address}"/>`))).toBe(
    "image/svg+xml",
  );
  const image = await imageOf(folder, "images/holds.svg");
  expect("bytes" in image && Buffer.from(image.bytes).toString()).not.toContain("<image");
});

test("nothing that the corpus is read from is written over, and a link that leads nowhere is there", async () => {
  const own = join(folder, "review", "introduction.md");
  const before = readFileSync(own, "utf8");
  await expect(write("review", review, folder, { to: own, over: true }, {})).rejects.toThrow(
    "of the corpus itself",
  );
  expect(readFileSync(own, "utf8")).toBe(before);
  const link = join(folder, "link.md");
  symlinkSync(join(folder, "nowhere"), link);
  expect(takenAmong([{ path: link, content: "" }])).toBe(link);
  expect(takenAmong([{ path: join(folder, "x".repeat(300)), content: "" }])).toBeNull();
});

test("an order as long as a book is not read", async () => {
  const hono = new Hono();
  const store = { load: () => new Map(), save: () => undefined };
  tellingRoutes(hono, folder, { plugins, script: new URL(import.meta.url), store });
  const order = { kind: "review", format: "md", options: { style: "x" }, asOf: null, suppose: null };
  const status = async (options: object): Promise<number> => {
    const body = JSON.stringify({ ...order, kind: "none", options });
    return (await hono.request("/corpus/told", { method: "POST", body })).status;
  };
  expect(await status({})).toBe(422);
  expect(await status({ style: "x".repeat(200_000) })).toBe(400);
});

test("texts that are longer than a slide leave no room for its picture, and a talk all the same", async () => {
  const long = folderWith("word ".repeat(4000));
  try {
    const made = await slides.make(await toldIn(long), "pptx", "talk", { talk: "talk" });
    expect("refused" in made ? made : made.map(({ path }) => path)).toEqual(["talk.pptx"]);
  } finally {
    rmSync(long, { recursive: true, force: true });
  }
});
