import { plot } from "@observablehq/plot";
import type { Markish } from "@observablehq/plot";
import type { Figure, Mark, Panel } from "./figure.ts";
import type { Palette } from "../pen/palette.ts";
import { axesOf } from "./axes.ts";
import { groundOf, letters, linesOf } from "./ground.ts";
import { keyOf } from "./key.ts";
import type { Ground } from "./ground.ts";
import { plotMarks } from "./marks.ts";

const NS = "http://www.w3.org/2000/svg";
const FONT = '"Source Sans 3", "Noto Naskh Arabic", "Helvetica Neue", Arial, sans-serif';
const LINE = 18;
const BETWEEN = 26;

/** What a figure is drawn with: the document it becomes part of, its width in px, its colours, a name for its title and description. */
export interface Drawing {
  /** Where it goes on from an earlier page: the place of its first panel in the whole figure. */
  readonly from?: number;
  readonly document: Document;
  readonly width: number;
  readonly palette: Palette;
  readonly id: string;
  /** The most that the plot of a panel is high, in px; rows that are named keep room for their names. */
  readonly tallest?: number;
}

/** Draws a figure, its panels from top to bottom; nothing in it needs a style sheet. */
export function draw(figure: Figure, drawing: Drawing): SVGSVGElement {
  const { document, width, palette, id, tallest, from } = drawing;
  const svg = document.createElementNS(NS, "svg");
  const add = (tag: string, words: string, name: string): void => {
    const element = document.createElementNS(NS, tag);
    element.setAttribute("id", name);
    element.textContent = words;
    svg.appendChild(element);
  };
  add("title", figure.title, `${id}-title`);
  add("desc", figure.panels.map((panel) => `${panel.title}. ${panel.caption}`).join(" "), `${id}-words`);
  let at = 0;
  for (const [place, panel] of figure.panels.entries()) {
    const lettered = figure.panels.length > 1 || from !== undefined;
    const letter = lettered ? `${String.fromCharCode(97 + place + (from ?? 0))}  ` : "";
    const title = linesOf(`${letter}${panel.title}`, width, letters.title, 600);
    svg.appendChild(titleOf(document, title, at, palette));
    at += title.length * LINE;
    const key = keyOf(panel, width, palette, document);
    set(key.group, { transform: `translate(0,${at})` });
    svg.appendChild(key.group);
    at += key.height;
    const ground = groundOf(panel, width, palette, tallest);
    const group = document.createElementNS(NS, "g");
    set(group, { transform: `translate(0,${at})` });
    for (const part of partsOf(panel, ground, document)) group.appendChild(part);
    svg.appendChild(group);
    at += ground.height + (place + 1 < figure.panels.length ? BETWEEN : 0);
  }
  const height = Math.ceil(at);
  set(svg, {
    width: String(width),
    height: String(height),
    viewBox: `0 0 ${width} ${height}`,
    role: "img",
    "aria-labelledby": `${id}-title`,
    "aria-describedby": `${id}-words`,
    "font-family": FONT,
    "font-size": "12",
    "text-anchor": "middle",
    fill: palette.ink,
  });
  return svg;
}

const under: readonly Mark["mark"][] = ["reach", "band"];

/** The parts of one plot, without its style sheet and with the colours told. */
function partsOf(panel: Panel, ground: Ground, document: Document): readonly Element[] {
  const { width, height, left, right, top, bottom, x, y, palette } = ground;
  const drawn = (fills: boolean): readonly Markish[] =>
    panel.marks
      .filter((mark) => under.includes(mark.mark) === fills)
      .flatMap((mark) => [...plotMarks(mark, ground)]);
  const scale = (log: boolean) => (log ? ({ type: "log" } as const) : ({ type: "linear" } as const));
  const made = plot({
    document,
    width,
    height,
    marginLeft: left,
    marginRight: right,
    marginTop: top,
    marginBottom: bottom,
    x: {
      ...scale(panel.x.scale === "log"),
      domain: [...x],
      axis: null,
    },
    y: {
      ...scale(panel.y.scale === "log"),
      domain: [...y],
      axis: null,
    },
    marks: [...drawn(true), ...axesOf(ground), ...drawn(false)],
  });
  const parts = [...made.children].filter((part) => part.localName.toLowerCase() !== "style");
  for (const part of parts)
    for (const element of [part, ...part.querySelectorAll("*")]) settle(element, palette);
  return parts;
}

function titleOf(document: Document, lines: readonly string[], at: number, palette: Palette): Element {
  const element = document.createElementNS(NS, "text");
  set(element, {
    "font-size": String(letters.title),
    "font-weight": "600",
    "text-anchor": "start",
    fill: palette.ink,
  });
  for (const [place, words] of lines.entries()) {
    const span = document.createElementNS(NS, "tspan");
    set(span, { x: "0", y: String(at + 13 + place * LINE) });
    span.textContent = words;
    element.appendChild(span);
  }
  return element;
}

function settle(element: Element, palette: Palette): void {
  for (const name of ["class", "aria-label", "aria-hidden"]) element.removeAttribute(name);
  for (const name of ["fill", "stroke"]) {
    if (element.getAttribute(name)?.toLowerCase() === "currentcolor") element.setAttribute(name, palette.ink);
  }
}

function set(element: Element, attributes: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
}
