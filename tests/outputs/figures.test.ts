import { DOMParser } from "linkedom";
import { beforeAll, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Lens, Model } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, evaluate } from "../../src/host/evaluate.ts";
import { allPrintFonts } from "../../src/host/print/fonts.ts";
import { settled } from "../../src/host/print/text/settled.ts";
import { svgDocument } from "../../src/host/print/svg-document.ts";
import { figures } from "../../src/host/telling/figures.ts";
import type { Asked, Told } from "../../src/host/telling/kind.ts";
import { captioned } from "../../src/show/telling/figures/figure.ts";
import type { Captioned, PaperRoom } from "../../src/show/telling/figures/desk.ts";
import { wantedFigures } from "../../src/show/telling/figures/wanted.ts";
import { print } from "../../src/write/pen/palette.ts";
import { picturePages } from "../../src/write/pictures/picture.ts";
import type { Printed } from "../../src/write/pictures/picture.ts";
import { sightFor } from "../../src/write/pictures/section.ts";
import { scalesOf } from "../../src/write/pictures/to-scale.ts";
import { demoFolder, demoMemo } from "../demo-memo.ts";

const widths = [76, 85, 90, 140, 163, 170, 190];
/** Every kind of figure: all computed ones come with nothing asked for. */
const drawn = [
  "map:what-was-it",
  "map:belonging",
  "around:antler-marks:2",
  "around:hale-silence",
  "ring-a",
  "ring-a/post-07+ring-a/post-08",
];

let told: Told;
beforeAll(async () => {
  const files = readCorpusFolder(demoFolder);
  const memo = await demoMemo();
  const under = (lens: Lens) => evaluate(files, plugins, memo, computingHere(plugins), { lens });
  const { model, findings } = await under({});
  if (!model) throw new Error("the demo has no model");
  told = { folder: demoFolder, files, model, findings, plugins, memo, under, today: "2025-11-26" };
});

function pagesOn(
  model: Model,
  asked: readonly string[],
  width: number,
): readonly (Printed & { readonly of: string })[] {
  const room: PaperRoom = {
    reads: (scene) => {
      const sight = sightFor({ scene }, width);
      return sight === null ? "not" : sight.distance === "near" ? "whole" : "short";
    },
    scaleOf: (drawing) => scalesOf(drawing, width),
  };
  const wanted = wantedFigures(model, asked);
  if ("refused" in wanted) throw new Error(inEnglish(wanted.refused));
  return wanted.flatMap((one) => {
    const all = captioned({ model, whole: model, plugins }, one, room);
    expect(all.length, one.name).toBeGreaterThan(0);
    return all.flatMap(({ picture }) =>
      picture.is === "image"
        ? []
        : picturePages(picture, { width, document: svgDocument() }).map((page) => ({
            ...page,
            of: one.name,
          })),
    );
  });
}

/** Points on paper of a unit of an SVG's own. */
function pointsIn(svg: string): number {
  const [, mm] = /<svg\b[^>]* width="([\d.]+)mm"/.exec(svg) ?? [];
  const [, box] = /viewBox="([^"]*)"/.exec(svg) ?? [];
  return ((Number(mm) / Number(box?.split(" ")[2])) * 72) / 25.4;
}

const inherited = (element: Element, name: string): string | null => {
  for (let at: Element | null = element; at !== null; at = at.parentElement) {
    const value = at.getAttribute(name);
    if (value !== null) return value;
  }
  return null;
};

function elementsOf(svg: string): readonly Element[] {
  const document = new DOMParser().parseFromString(svg, "image/svg+xml") as unknown as Document;
  return [...document.querySelectorAll("*")];
}

/** Colours that tell nothing: white under words, tints, and the lines that only guide the eye. */
const quiet = [print.sheet, print.paper, print.hair, "none"];

function expectPrintable({ svg, of, ...size }: Printed & { readonly of: string }, width: number): void {
  const point = pointsIn(svg);
  expect(size.width).toBe(width);
  expect(size.height, of).toBeLessThanOrEqual(230);
  const elements = elementsOf(svg);
  const letters = elements.filter((one) => one.localName === "text");
  expect(letters.length, of).toBeGreaterThan(3);
  for (const one of letters) {
    const points = Number.parseFloat(inherited(one, "font-size") ?? "0") * point;
    expect(points, of).toBeGreaterThanOrEqual(7 - 1e-6);
  }
  const lines = elements.filter((one) => !quiet.includes(inherited(one, "stroke") ?? "none"));
  expect(lines.length, of).toBeGreaterThan(3);
  for (const one of lines) {
    const points = Number(inherited(one, "stroke-width") ?? "1") * point;
    expect(points, of).toBeGreaterThanOrEqual(0.5 - 1e-6);
  }
}

function expectWithin({ svg, of }: Printed & { readonly of: string }): void {
  const fonts = allPrintFonts();
  const [left = 0, top = 0, wide = 0, high = 0] =
    /viewBox="([^"]*)"/.exec(svg)?.[1]?.split(" ").map(Number) ?? [];
  for (const one of elementsOf(settled(svg).svg).filter((each) => each.localName === "text")) {
    const size = Number(one.getAttribute("font-size"));
    const [x, y] = placeOf(one);
    const font = fonts.find(
      ({ family, weight }) =>
        family === one.getAttribute("font-family") && String(weight) === one.getAttribute("font-weight"),
    );
    const words = one.textContent ?? "";
    const end = x + (font?.width(words, size) ?? Infinity);
    // A letter's side bearing may lie over the edge.
    expect(x, `${of}: ${words}`).toBeGreaterThanOrEqual(left - 0.1 * size);
    expect(end, `${of}: ${words}`).toBeLessThanOrEqual(left + wide + 0.1 * size);
    expect(y - 0.75 * size, `${of}: ${words}`).toBeGreaterThanOrEqual(top - 0.1 * size);
    expect(y, `${of}: ${words}`).toBeLessThanOrEqual(top + high);
  }
}

const few = ["ring-unit", "gully-when", "map:belonging", "ring-a/post-07"];

test.each(widths)(
  "on paper of %i mm figures have its width, a page's height, letters of 7 points, lines of half a point, and all letters within",
  (width) => {
    // All of them where letters have least room.
    const pages = width === 76 ? [[], drawn] : [few];
    for (const page of pages.flatMap((asked) => pagesOn(told.model, asked, width))) {
      expectPrintable(page, width);
      expectWithin(page);
    }
  },
);

/** Where a text stands, moved by all that is around it. */
function placeOf(text: Element): readonly [number, number] {
  let [x, y] = [Number(text.getAttribute("x")), Number(text.getAttribute("y"))];
  for (let at: Element | null = text; at !== null; at = at.parentElement) {
    const transform = at.getAttribute("transform");
    if (transform === null) continue;
    const [, dx, dy = "0"] = /^translate\(\s*(-?[\d.]+)(?:[\s,]+(-?[\d.]+))?\s*\)$/.exec(transform) ?? [];
    if (dx === undefined) throw new Error(`placeOf: ${transform}`);
    [x, y] = [x + Number(dx), y + Number(dy)];
  }
  return [x, y];
}

test("numbers and drawings are black and grey; in maps, blue and red are of lines that differ without them", () => {
  const computed = ["ring-unit", "plan-scale", "rhythm-compared", "gully-when", "foot-in-pipe", "ring-a"];
  for (const { svg, of } of pagesOn(told.model, computed, 85)) {
    expect(svg, of).not.toContain(print.blue);
    expect(svg, of).not.toContain(print.red);
  }
  const [page] = pagesOn(told.model, ["map:belonging"], 170);
  // What stands is one whole line, what falls a path that steps: four points.
  const lines = elementsOf(page?.svg ?? "").filter((one) => one.localName === "path");
  const blue = lines.filter((one) => one.getAttribute("stroke") === print.blue);
  const red = lines.filter((one) => one.getAttribute("stroke") === print.red);
  expect(blue.length).toBeGreaterThan(1);
  for (const one of blue) expect(one.getAttribute("d")).toMatch(/^M[^L]*L[^LQ]*$/);
  const steps = red.filter((one) => /^M[^LQ]*(?:L[^LQ]*){3}$/.test(one.getAttribute("d") ?? ""));
  expect(steps.length).toBeGreaterThan(1);
});

test("a drawing is true to the scale that stands on it", () => {
  const [page] = pagesOn(told.model, ["ring-a/post-07"], 170);
  const [, scale] = />1:(\d+)</.exec(page?.svg ?? "") ?? [];
  // The level line of a dimension, between its two slants; the record has about 1.2 m across the mouth.
  const levels = elementsOf(page?.svg ?? "").flatMap((one) => {
    const [, x1, y1, x2, y2] =
      /^M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)/.exec(one.getAttribute("d") ?? "") ?? [];
    return x1 !== undefined && y1 === y2 ? [Math.abs(Number(x2) - Number(x1))] : [];
  });
  const metres = levels.map((px) => (((px / 96) * 25.4) / 1000) * Number(scale));
  expect(metres.some((one) => Math.abs(one - 1.2) < 0.005)).toBe(true);
});

const make = async (asked: Asked, format = "svg") => {
  const made = await figures.make(told, format, "figs", asked);
  if ("refused" in made) return inEnglish(made.refused);
  return made;
};

test("each figure comes in every format asked for, with a caption that stands by itself", async () => {
  const made = await make({
    of: ["ring-unit", "plan-1998"],
    format: ["svg", "pdf", "png"],
    width: "90",
    dpi: "300",
  });
  if (typeof made === "string") throw new Error(made);
  expect(made.map(({ path }) => path)).toEqual([
    "ring-unit.svg",
    "ring-unit.pdf",
    "ring-unit.png",
    "ring-unit.caption.md",
    "plan-1998.svg",
    "plan-1998.pdf",
    "plan-1998.png",
    "plan-1998.caption.md",
  ]);
  const caption = String(made[3]?.content);
  expect(caption).toContain("Twenty-two gaps of both rings");
  expect(caption).toContain("n = 22 (measurements).");
  expect(caption).toContain("m: metres");
  expect(caption).toContain("Licence: CC0-1.0.");
  expect(caption).toContain("Marrack");
  expect(caption).toMatch(/\*\*Caution:\*\*/);
  const run = told.model.derivations.byId.get("ring-unit")?.run?.key ?? "none";
  expect(caption).toContain(run);
  expect(String(made[7]?.content)).toMatch(
    /Scale of the original: 1:150\..*Credit: The Merrow Down reading group\./s,
  );
  const again = await make({
    of: ["ring-unit", "plan-1998"],
    format: ["svg", "pdf", "png"],
    width: "90",
    dpi: "300",
  });
  expect(again).toEqual(made);
});

test("a caption has the n of the method, and tells readings that do not hold", () => {
  const room: PaperRoom = { reads: () => "whole", scaleOf: () => "1:20" };
  const of = (id: string): Captioned => {
    const wanted = wantedFigures(told.model, [id]);
    const [first] = "refused" in wanted ? [] : wanted;
    const [one] = first ? captioned({ model: told.model, whole: told.model, plugins }, first, room) : [];
    if (one === undefined) throw new Error(id);
    return one;
  };
  const words = (id: string): string =>
    of(id)
      .caption.map((one) => (typeof one === "string" || "say" in one ? inEnglish(one) : ""))
      .join("");
  // Nine pairs of two depths each; eight gaps, four of them in two surveys, and two that are cut off.
  expect(words("depth-scale")).toContain("n = 9 (from 18 measurements).");
  expect(words("rhythm-compared")).toContain("n = 14 and 10 (measurements).");
  expect(words("outer-spacing")).toContain("n = 8 (from 14 measurements).");
  expect(words("outer-spacing")).toContain("lower bounds: 2.");
  expect(words("finds-inside-and-out")).toContain("Computed from 4 measurements.");
  expect(words("depth-scale")).toContain(
    "95 % interval: made so as to take in the true value 95 times in 100",
  );
  expect(of("ring-a/post-07").cautions.map((one) => inEnglish(one))).toEqual([
    "Drawn by the mean of several readings, post-hole depth of inner post 7: 0.97 ± 0.04 m (Marrack & Oyelaran 1999) and 1 ft 11 in (Ferrant 1937).",
  ]);
  const cautions = (id: string): readonly string[] => of(id).cautions.map((one) => inEnglish(one));
  expect(cautions("brandt-spacing")[0]).toBe(
    "Of the readings that it takes 3 do not hold. So the number does not hold either.",
  );
  expect(cautions("depth-scale").join(" ")).not.toContain("hold.");
});

const wrong: readonly (readonly [Asked, RegExp])[] = [
  [{ width: "80" }, /^Unknown width `80`, expected `76`, .* mm$/],
  [{ dpi: "72" }, /^Unknown resolution `72`, expected `300`/],
  [{ format: ["gif"] }, /^Unknown format `gif`, expected `svg`/],
  [{ of: ["ring-unitt"] }, /^Unknown figure `ring-unitt`, expected .*`ring-unit`/],
  [{ of: ["map:ring-a"] }, /^Unknown figure `ring-a`, expected/],
  [{ of: ["around:antler-marks:many"] }, /^Unexpected number of steps `many`/],
  [{ of: ["lost-arc"] }, /^Nothing to draw of `lost-arc`, expected a number that was computed/],
  [{ of: ["pick-marks"] }, /^Nothing to show of `pick-marks`, expected a picture that may be published$/],
  [{ of: ["pdf:ring-unit"] }, /^Unknown figure `pdf:ring-unit`, expected an id, `map:QUESTION` or/],
];
test.each(wrong)("%j is refused in words", async (asked, words) => {
  expect(await make(asked)).toMatch(words);
});
