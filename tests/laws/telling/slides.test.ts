import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { unzipped } from "../../../src/host/telling/files/zip.ts";
import type { Told } from "../../../src/host/telling/kind.ts";
import { slides } from "../../../src/host/telling/slides.ts";
import { leavesOf } from "../../../src/show/telling/talk/layout/layout.ts";
import { talkOf } from "../../../src/show/telling/talk/talk.ts";
import { deskOf } from "./talk-cases.ts";

const folder = mkdtempSync(join(tmpdir(), "variorum-slides-"));
const state: { told?: Told; wide?: ReadonlyMap<string, Buffer> } = {};

const told = (): Told => {
  if (!state.told) throw new Error("not told");
  return state.told;
};

async function partsOf(asked: Readonly<Record<string, string>>): Promise<ReadonlyMap<string, Buffer>> {
  const made = await slides.make(told(), "pptx", "talk", asked);
  if ("refused" in made) throw new Error(inEnglish(made.refused));
  const [file] = made;
  if (!file || typeof file.content === "string") throw new Error("no file");
  expect(file.path).toBe("talk.pptx");
  return new Map(unzipped(file.content).map(({ path, content }) => [path, Buffer.from(content)]));
}

beforeAll(async () => {
  mkdirSync(join(folder, "images"));
  writeFileSync(
    join(folder, "images", "plan.svg"),
    `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><circle cx="10" cy="10" r="5"/></svg>`,
  );
  const { model, findings, files, memo, under } = await deskOf();
  state.told = { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
  state.wide = await partsOf({ talk: "all" });
});

afterAll(() => rmSync(folder, { recursive: true }));

const xmlParts = (parts: ReadonlyMap<string, Buffer>): readonly (readonly [string, string])[] =>
  [...parts]
    .filter(([path]) => /\.(?:xml|rels|svg)$/u.test(path))
    .map(([path, bytes]) => [path, bytes.toString()]);

const slidesIn = (parts: ReadonlyMap<string, Buffer>): readonly string[] =>
  Array.from({ length: 100 }, (_, n) => parts.get(`ppt/slides/slide${n + 1}.xml`)?.toString()).filter(
    (one) => one !== undefined,
  );

const wide = (): ReadonlyMap<string, Buffer> => state.wide ?? new Map<string, Buffer>();

/** The tags of an XML text that are opened and not closed, or closed and not opened. */
function unbalanced(xml: string): readonly string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [, close, name = "", self] of xml.matchAll(/<(\/?)([A-Za-z][\w:.-]*)(?:\s[^<>]*?)?(\/?)>/gu)) {
    if (self === "/") continue;
    if (close !== "/") open.push(name);
    else if (open.pop() !== name) wrong.push(name);
  }
  return [...open, ...wrong];
}

test("every part is well formed, and no shape of a slide has the number of another", () => {
  const parts = xmlParts(wide());
  expect(parts.length).toBeGreaterThan(20);
  for (const [path, xml] of parts) {
    expect(unbalanced(xml), path).toEqual([]);
    expect(xml, path).not.toMatch(/&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/iu);
    const ids = [...xml.matchAll(/<p:cNvPr id="(\d+)"/gu)].map(([, id]) => id);
    if (path.startsWith("ppt/slides/")) expect(new Set(ids).size, path).toBe(ids.length);
  }
});

test("there is a slide for each leaf, with its title, its notes, and an alternative for each picture and table", () => {
  const talk = talkOf({ model: told().model, under: () => told().model, plugins }, "all");
  const all = slidesIn(wide());
  const least =
    talk === null
      ? 0
      : leavesOf(talk, { shape: "16:9", told: inEnglish, fonts: "any", mirrored: false }).length;
  expect(all.length).toBeGreaterThan(least);
  for (const xml of all) {
    expect(xml).toMatch(/<p:ph\s[^>]*type="title"/u);
    for (const [picture] of xml.matchAll(/<p:pic>.*?<\/p:pic>/gsu))
      expect(picture).toMatch(/descr="[^"]{3,}"/u);
    for (const [table] of xml.matchAll(/<p:graphicFrame>.*?<\/p:graphicFrame>/gsu))
      expect(table).toMatch(/descr="[^"]{3,}"/u);
  }
  expect(all.join("")).toContain("<a:tbl>");
  const notes = [...wide()]
    .filter(([path]) => path.includes("notesSlide"))
    .map(([, bytes]) => bytes.toString());
  expect(notes.join("")).toContain("Let them look &lt;first&gt; &amp; wait.");
  expect(notes.join("")).toContain("Say both.");
});

test("text is text of 18 points or more, in a language, and standings are told by a word beside their line", () => {
  const all = slidesIn(wide()).join("");
  const sizes = [...all.matchAll(/<a:rPr[^>]* sz="(\d+)"/gu)].map(([, size]) => Number(size));
  expect(sizes.length).toBeGreaterThan(40);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1800);
  expect(all).not.toContain('lang="en-US"');
  expect(all).toContain("The hole was bored with a spoon bit of iron.");
  expect(all).toMatch(/name="standing: open"/u);
  expect(all).toContain("<a:t>open</a:t>");
  expect(all).toContain("Hale 1990");
});

test("figures are vectors with a raster beside them", () => {
  const vectors = [...wide().keys()].filter((path) => path.endsWith(".svg"));
  expect(vectors.length).toBeGreaterThanOrEqual(4);
  for (const path of vectors) {
    const number = Number(/-(\d+)\.svg$/u.exec(path)?.[1]);
    const raster = wide().get(path.replace(/-\d+\.svg$/u, `-${number - 1}.png`));
    expect(raster?.subarray(0, 8).toString("hex"), path).toBe("89504e470d0a1a0a");
    // Its width and height are those of a slide's picture at 144 dots to the inch, not of a stand-in.
    expect(raster?.readUInt32BE(16) ?? 0, path).toBeGreaterThan(300);
  }
});

test("what is cited stands at the end in full, and nothing withheld is anywhere", () => {
  const last = slidesIn(wide()).at(-1) ?? "";
  expect(last).toContain("References");
  expect(last).toContain("Fen Press");
  for (const [path, bytes] of wide())
    for (const word of ["mbraw", "Umbra", "umbra-1950", "77.7", "51.1234", "Fennimore", "private"])
      expect(bytes.includes(word), `${path} ${word}`).toBe(false);
});

test("equal corpora on one day give equal bytes; 4:3 is as high and less wide", async () => {
  const again = await partsOf({ talk: "all" });
  expect([...again.keys()]).toEqual([...wide().keys()]);
  for (const [path, bytes] of again)
    expect(bytes.equals(wide().get(path) ?? Buffer.alloc(0)), path).toBe(true);
  expect(wide().get("docProps/core.xml")?.toString()).toContain("2026-11-26T00:00:00Z");
  expect(wide().get("ppt/presentation.xml")?.toString()).toMatch(/sldSz cx="1219\d{4}" cy="6858000"/u);
  const upright = await partsOf({ shape: "4:3" });
  expect(upright.get("ppt/presentation.xml")?.toString()).toMatch(/sldSz cx="9144000" cy="6858000"/u);
});

test("what cannot be is refused in words", async () => {
  const refused = async (asked: Readonly<Record<string, string>>): Promise<string> => {
    const made = await slides.make(told(), "pptx", "talk", asked);
    return "refused" in made ? inEnglish(made.refused) : "made";
  };
  expect(await refused({ shape: "5:4" })).toBe("Unknown shape `5:4`, expected `16:9` or `4:3`");
  expect(await refused({ talk: "al" })).toBe("Unknown talk `al`, expected `all`");
  const { model, findings, files, memo, under } = await deskOf({ "corpus.yaml": "title: Nothing\n" });
  const none = { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
  const made = await slides.make(none, "pptx", "talk", {});
  expect("refused" in made && inEnglish(made.refused)).toContain("Missing talk");
});
