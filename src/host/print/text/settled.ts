import { DOMParser } from "linkedom";
import { fontsAfter } from "../fonts.ts";
import type { Weight } from "../fonts.ts";
import { setLine } from "./runs.ts";
import type { Run, SetLine } from "./runs.ts";

const NS = "http://www.w3.org/2000/svg";

/** A drawing whose text is set: each run with its font and its place from the left, so that every renderer sets it alike. */
export interface Settled {
  readonly svg: string;
  /** Signs that none of the bundled fonts has a shape for, each once; they are drawn as empty boxes. */
  readonly lacking: readonly string[];
}

/** Sets the text of an SVG: scripts, directions, and halos, which are drawn under the letters they belong to. */
export function settled(svg: string): Settled {
  const document = new DOMParser().parseFromString(svg, "image/svg+xml") as unknown as Document;
  const lacking = new Set<string>();
  // A drawing of the corpus with a style sheet of its own is left to the renderer, which knows style sheets.
  if (document.querySelector("style, [style]") !== null) return { svg, lacking: [] };
  for (const text of document.querySelectorAll("text")) {
    const group = document.createElementNS(NS, "g");
    const transform = text.getAttribute("transform");
    if (transform !== null) group.setAttribute("transform", transform);
    for (const line of linesOf(text)) {
      for (const sign of setInto(group, line, document)) lacking.add(sign);
    }
    text.replaceWith(group);
  }
  return { svg: document.toString(), lacking: [...lacking] };
}

/** The runs of all words in a drawing, each with its font. */
export function runsIn(svg: string): readonly Run[] {
  const document = new DOMParser().parseFromString(svg, "image/svg+xml") as unknown as Document;
  return [...document.querySelectorAll("text")].flatMap((text) =>
    linesOf(text).flatMap((line) => lettersOf(line).set.runs),
  );
}

/** The signs in a drawing that none of the bundled fonts has a shape for, each once. */
export function signsLacking(svg: string): readonly string[] {
  return settled(svg).lacking;
}

interface LineOfText {
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly of: Element;
}

/** A text's own line, or those of its spans that have a place of their own. */
function linesOf(text: Element): readonly LineOfText[] {
  const spans = [...text.children].filter((one) => one.localName === "tspan" && one.hasAttribute("x"));
  const of = (element: Element, x: number, y: number): LineOfText => ({
    words: wordsOf(element),
    x: x + lengthOf(element, "dx"),
    y: y + lengthOf(element, "dy"),
    of: element,
  });
  const [x, y] = [lengthOf(text, "x"), lengthOf(text, "y")];
  if (spans.length === 0) return [of(text, x, y)];
  return spans.map((span) => of(span, lengthOf(span, "x"), span.hasAttribute("y") ? lengthOf(span, "y") : y));
}

function wordsOf(element: Element): string {
  const words = element.textContent ?? "";
  return inherited(element, "xml:space") === "preserve"
    ? words.replace(/\s/g, " ")
    : words.replace(/\s+/g, " ").trim();
}

/** A line as it is set, and the size of its letters. */
function lettersOf({ words, of }: LineOfText): {
  readonly set: SetLine;
  readonly size: number;
  readonly rtl: boolean;
} {
  const size = sizeOf(of);
  const weight: Weight = Number(inherited(of, "font-weight") ?? "400") >= 600 ? 600 : 400;
  const named = (inherited(of, "font-family") ?? "").split(",");
  const families = named.map((one) => one.trim().replace(/["']/g, ""));
  const rtl = inherited(of, "direction") === "rtl";
  return { set: setLine(words, rtl, fontsAfter(families, weight), size), size, rtl };
}

function setInto(group: Element, line: LineOfText, document: Document): readonly string[] {
  const { x, y, of } = line;
  const { set, size, rtl } = lettersOf(line);
  const anchor = inherited(of, "text-anchor") ?? "start";
  const left = x - set.width * (anchor === "middle" ? 0.5 : (anchor === "end") === !rtl ? 1 : 0);
  const [fill, stroke] = [inherited(of, "fill") ?? "#000000", inherited(of, "stroke")];
  const put = (paint: Readonly<Record<string, string>>): void => {
    for (const run of set.runs) group.appendChild(textOf(run, document, { left, y, size, paint }));
  };
  if (stroke !== null && stroke !== "none") {
    const width = inherited(of, "stroke-width") ?? "1";
    put({ fill: "none", stroke, "stroke-width": width, "stroke-linejoin": "round" });
  }
  put({ fill, stroke: "none" });
  return set.lacking;
}

interface Place {
  readonly left: number;
  readonly y: number;
  readonly size: number;
  readonly paint: Readonly<Record<string, string>>;
}

function textOf(run: Run, document: Document, { left, y, size, paint }: Place): Element {
  const element = document.createElementNS(NS, "text");
  const attributes = {
    x: String(Math.round((left + run.x) * 1000) / 1000),
    y: String(Math.round(y * 1000) / 1000),
    "font-family": run.font.family,
    "font-weight": String(run.font.weight),
    "font-size": String(size),
    "text-anchor": "start",
    "xml:space": "preserve",
    ...paint,
  };
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.textContent = run.text;
  return element;
}

function sizeOf(element: Element): number {
  return Number.parseFloat(inherited(element, "font-size") ?? "16");
}

function inherited(element: Element, name: string): string | null {
  for (let one: Element | null = element; one !== null; one = one.parentElement) {
    const value = one.getAttribute(name);
    if (value !== null) return value;
  }
  return null;
}

/** A length in the drawing's own unit; `em` is the size of the letters. */
function lengthOf(element: Element, name: string): number {
  const value = element.getAttribute(name);
  if (value === null) return 0;
  const number = Number.parseFloat(value);
  return value.trim().endsWith("em") ? number * sizeOf(element) : number;
}
