import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deflateSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { imageOf } from "../../src/host/print/image.ts";
import { cleanSvg } from "../../src/host/print/images/drawing.ts";
import { cleanJpeg } from "../../src/host/print/images/jpeg.ts";
import { cleanPng } from "../../src/host/print/images/png-chunks.ts";
import { pixelsOf } from "./reading/pixels.ts";

/** A photograph of 16 by 8 px, white with its upper left quarter black, as a browser made it. */
const photograph = Buffer.from(
  "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAIABADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAf/xAAYEAEAAwEAAAAAAAAAAAAAAAAAF2Wk4v/EABQBAQAAAAAAAAAAAAAAAAAAAAD/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADAMBAAIRAxEAPwBGVvm7UAAf/9k=",
  "base64",
);
/** What must be in no output: a place, a name, a camera's word. */
const secret = "SECRET-51.1789N";

const segment = (marker: number, content: Buffer): Buffer => {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([head, content]);
};

/** Exif with an orientation, a place and a camera (Exif 2.32: TIFF, one directory, tags 0x010f, 0x0112, 0x8825). */
function exif(orientation: number): Buffer {
  const words = Buffer.from(`${secret}\0`);
  const tiff = Buffer.alloc(8 + 2 + 3 * 12 + 4);
  tiff.write("II*\0", 0, "latin1");
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(3, 8);
  const entries: readonly (readonly [number, number, number, number])[] = [
    [0x010f, 2, words.length, tiff.length],
    [0x0112, 3, 1, orientation],
    [0x8825, 4, 1, tiff.length],
  ];
  entries.forEach(([tag, type, count, value], n) => {
    const at = 10 + 12 * n;
    tiff.writeUInt16LE(tag, at);
    tiff.writeUInt16LE(type, at + 2);
    tiff.writeUInt32LE(count, at + 4);
    tiff.writeUInt32LE(value, at + 8);
  });
  return segment(0xe1, Buffer.concat([Buffer.from("Exif\0\0"), tiff, words]));
}

const taken = (orientation: number): Buffer =>
  Buffer.concat([
    photograph.subarray(0, 2),
    exif(orientation),
    segment(0xe1, Buffer.from(`http://ns.adobe.com/xap/1.0/\0<x>${secret}</x>`)),
    segment(0xed, Buffer.from(`Photoshop 3.0\0${secret}`)),
    segment(0xfe, Buffer.from(secret)),
    photograph.subarray(2),
    Buffer.from(secret),
  ]);

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "images-"));
  mkdirSync(join(folder, "images"));
  writeFileSync(join(folder, "corpus.yaml"), "title: T\n");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function imageFrom(name: string, bytes: Uint8Array | string) {
  writeFileSync(join(folder, "images", name), bytes);
  const image = await imageOf(folder, `images/${name}`);
  if ("refused" in image) throw new Error(JSON.stringify(image));
  expect(Buffer.from(image.bytes).includes(secret)).toBe(false);
  return image;
}

test("a photograph loses all that was written about it and none of its picture", async () => {
  const image = await imageFrom("upright.jpg", taken(1));
  expect(image).toMatchObject({ type: "image/jpeg", width: 16, height: 8 });
  expect(Buffer.compare(Buffer.from(image.bytes), photograph)).toBe(0);
});

/** Where the black quarter of the photograph lies once it is turned as Exif says: left or right, above or below. */
const corners: readonly (readonly [number, "left" | "right", "above" | "below"])[] = [
  [2, "right", "above"],
  [3, "right", "below"],
  [4, "left", "below"],
  [5, "left", "above"],
  [6, "right", "above"],
  [7, "right", "below"],
  [8, "left", "below"],
];

test.each(corners)("a photograph taken in orientation %i is upright", async (orientation, side, height) => {
  const image = await imageFrom(`turned-${orientation}.jpg`, taken(orientation));
  const standing = orientation >= 5;
  expect(image).toMatchObject({ type: "image/png", width: standing ? 8 : 16, height: standing ? 16 : 8 });
  const { width, height: high, dark } = pixelsOf(image.bytes);
  const ink = (x: number, y: number): number => dark[y * width + x] ?? 0;
  const x = side === "left" ? 1 : width - 2;
  const y = height === "above" ? 1 : high - 2;
  expect(ink(x, y)).toBeGreaterThan(200);
  expect(ink(width - 1 - x, y)).toBeLessThan(60);
  expect(ink(x, high - 1 - y)).toBeLessThan(60);
});

test("a PNG keeps its pixels and colours and loses words, times, places and what lies behind its end", async () => {
  const chunk = (name: string, data: Buffer): Buffer => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    return Buffer.concat([length, Buffer.from(name), data, Buffer.alloc(4)]);
  };
  const header = Buffer.from([0, 0, 0, 2, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  const kept = [chunk("IHDR", header), chunk("gAMA", Buffer.from([0, 0, 177, 143]))];
  const pixels = [chunk("IDAT", deflateSync(Buffer.from([0, 0, 255]))), chunk("IEND", Buffer.alloc(0))];
  const words = ["tEXt", "zTXt", "iTXt", "eXIf", "tIME", "prVt"].map((name) =>
    chunk(name, Buffer.from(secret)),
  );
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]);
  const image = await imageFrom(
    "t.png",
    Buffer.concat([signature, ...kept, ...words, ...pixels, Buffer.from(secret)]),
  );
  expect(Buffer.compare(Buffer.from(image.bytes), Buffer.concat([signature, ...kept, ...pixels]))).toBe(0);
  expect(image).toMatchObject({ type: "image/png", width: 2, height: 1 });
});

test("a drawing keeps what is drawn and loses what runs, leads elsewhere or was written about it", async () => {
  const inner = `data:image/jpeg;base64,${taken(1).toString("base64")}`;
  const image = await imageFrom(
    "t.svg",
    `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY e "${secret}">]><!-- ${secret} -->
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:own="http://editor.example/${secret}" viewBox="0 0 40 20" onload="${secret}" own:path="${secret}" data-at="${secret}">
<metadata><rdf>${secret}</rdf></metadata><script>${secret}</script><own:view note="${secret}"/>
<style>@import url(http://elsewhere.example/${secret}); .a { fill: url(http://elsewhere.example/${secret}) } .b { stroke: #123456 }</style>
<foreignObject><p>${secret}</p></foreignObject><!-- ${secret} -->
<a href="http://elsewhere.example/${secret}"><text>${secret}</text></a>
<use href="http://elsewhere.example/${secret}#x"/><use href="#one"/>
<image href="http://elsewhere.example/${secret}.png" width="1" height="1"/><image id="photo" href="${inner}" width="4" height="2"/>
<animate attributeName="href" to="${secret}"/>
<path id="one" class="b" d="M0 0L10 10" style="fill: url('http://elsewhere.example/${secret}')"/><text x="3" y="4">Ω 7</text></svg>`,
  );
  const svg = Buffer.from(image.bytes).toString();
  expect(svg).not.toMatch(/elsewhere|editor|script|metadata|foreign|ENTITY|onload|animate|<!--/);
  expect(svg).toMatch(/<path[^>]* d="M0 0L10 10"/);
  expect(svg).toContain(">Ω 7</text>");
  expect(svg).toContain("stroke: #123456");
  expect(svg).toContain('href="#one"');
  expect(svg).toContain(`data:image/jpeg;base64,${photograph.toString("base64")}`);
  expect(image).toMatchObject({ type: "image/svg+xml", width: 40, height: 20 });
});

test("what is no picture, lies elsewhere or is of another kind is refused", async () => {
  for (const [name, bytes] of [
    ["w.webp", "RIFF....WEBP"],
    ["g.gif", "GIF89a"],
    ["n.svg", "<html/>"],
    ["n.jpg", "no picture"],
    ["short.jpg", photograph.subarray(0, 30)],
  ] as const)
    writeFileSync(join(folder, "images", name), bytes);
  const names = ["images/w.webp", "images/g.gif", "images/n.svg", "images/n.jpg", "images/short.jpg"];
  for (const file of [...names, "images/none.png", "../../etc/hostname", "corpus.yaml"])
    expect(await imageOf(folder, file), file).toHaveProperty("refused");
});

test("any cut or changed file is refused or read, and never thrown at", () => {
  const all = taken(6);
  for (let length = 0; length < all.length; length += 7) {
    expect(() => cleanJpeg(all.subarray(0, length))).not.toThrow();
    expect(() =>
      cleanPng(
        Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), all.subarray(0, length)]),
      ),
    ).not.toThrow();
    const changed = Buffer.from(all);
    changed[length] = 255 - (changed[length] ?? 0);
    expect(() => cleanJpeg(changed)).not.toThrow();
  }
  for (const text of ["", "<svg", "<svg>", "<svg><g></svg>", "<svg xmlns='x'/>"])
    expect(() => cleanSvg(text, () => null)).not.toThrow();
});
