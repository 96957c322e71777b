import { drawMap } from "../../src/write/map/map.ts";
import { mapSvg } from "../../src/write/map/map-svg.ts";
import { distanceAt } from "../../src/write/map/sight.ts";
import type { Frame } from "../../src/write/map/sight.ts";
import { canvasPen } from "../../src/write/pen/canvas-pen.ts";
import { light } from "../../src/write/pen/palette.ts";
import { svgFile, svgPen } from "../../src/write/pen/svg-pen.ts";
import { scene, states } from "../laws/map/map-scene.ts";

/** A text or path as one of the pens placed it, in px on the screen. */
export interface Place {
  readonly what: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Both pens' places in one order, and the ink the canvas has there. */
export interface Placed {
  readonly canvas: readonly Place[];
  readonly svg: readonly Place[];
  /** For each text how many pixels of its colour there are. */
  readonly ink: readonly { readonly words: string; readonly pixels: number }[];
  /** Share of points along each plain line of ink that have its colour. */
  readonly lines: readonly number[];
  /** Pixels of ink in the free margin over the drawing. */
  readonly stray: number;
}

/** Draws the fixture with both pens from one distance, and says where everything lies. */
export function placesAt(scale: number): Placed {
  // Names far off rise above the answers.
  const over = 40 + 90 / scale;
  const window = { x: -104, y: -over, width: scene.width + 128, height: scene.height + over + 24 };
  const drawing = { scene, states, beaten: [], scale, distance: distanceAt(scale), window };
  const pen = svgPen(light);
  drawMap(pen, drawing);
  document.body.innerHTML = svgFile(window, "Map", pen.drawn()).replace(/^<\?xml[^>]*>/, "");
  const elements = [...document.querySelectorAll<SVGGraphicsElement>("svg text, svg path, svg circle")];
  const toScreen = (what: string, box: Frame): Place => ({
    what,
    left: (box.x - window.x) * scale,
    right: (box.x + box.width - window.x) * scale,
    top: (box.y - window.y) * scale,
    bottom: (box.y + box.height - window.y) * scale,
  });
  const svg = elements.map((one) => toScreen(nameOf(one), frameOf(one)));
  const context = boardFor(window, scale);
  const canvas: Place[] = [];
  drawMap(
    canvasPen(
      watched(context, (what, box) => canvas.push(toScreen(what, box))),
      light,
    ),
    drawing,
  );
  const pixels = pixelsOf(context);
  return {
    canvas,
    svg,
    ink: elements.flatMap((one, n) => {
      const place = svg[n];
      if (one.tagName !== "text" || !place) return [];
      return [{ words: place.what, pixels: countIn(pixels, place, one.getAttribute("fill") ?? "") }];
    }),
    lines: plainLines().map((line) => shareAlong(pixels, line, window, scale)),
    stray: countIn(pixels, { what: "", left: 110, right: pixels.width, top: 0, bottom: 20 }, light.ink),
  };
}

const nameOf = (one: Element): string => (one.tagName === "text" ? (one.textContent ?? "") : one.tagName);

/** A text's box in a file takes in what letters reach over; the places of its letters do not. */
function frameOf(one: SVGGraphicsElement): Frame {
  if (!(one instanceof SVGTextElement)) return one.getBBox();
  const cells = [...Array(one.getNumberOfChars()).keys()].map((n) => one.getExtentOfChar(n));
  const { y, height } = one.getBBox();
  const x = Math.min(...cells.map((cell) => cell.x));
  return { x, y, width: Math.max(...cells.map((cell) => cell.x + cell.width)) - x, height };
}

function boardFor(window: Frame, scale: number): CanvasRenderingContext2D {
  const board = document.createElement("canvas");
  board.width = Math.ceil(window.width * scale);
  board.height = Math.ceil(window.height * scale);
  const context = board.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("no canvas");
  context.scale(scale, scale);
  context.translate(-window.x, -window.y);
  return context;
}

const letters: Readonly<Record<string, string>> = {
  moveTo: "M",
  lineTo: "L",
  quadraticCurveTo: "Q",
  closePath: "Z",
  arc: "O",
};

/** The same canvas, with every text and path told on its way through. */
function watched(
  context: CanvasRenderingContext2D,
  tell: (what: string, box: Frame) => void,
): CanvasRenderingContext2D {
  const ruler = document.createElementNS("http://www.w3.org/2000/svg", "path");
  document.querySelector("svg")?.append(ruler);
  let [data, told] = ["", ""];
  const painted = (): void => {
    // One element of the file fills and strokes: the canvas does so in two calls.
    if (data === told) return;
    told = data;
    const [x = 0, y = 0, r = 0] = data.startsWith("O") ? data.slice(1).split(" ").map(Number) : [];
    if (r > 0) return tell("circle", { x: x - r, y: y - r, width: 2 * r, height: 2 * r });
    ruler.setAttribute("d", data);
    tell("path", ruler.getBBox());
  };
  return new Proxy(context, {
    set: (target, key, value) => Reflect.set(target, key, value),
    get: (target, key) => {
      const found: unknown = Reflect.get(target, key);
      if (typeof found !== "function") return found;
      return (...given: never[]): unknown => {
        if (key === "beginPath") [data, told] = ["", ""];
        data += letters[String(key)] === undefined ? "" : `${letters[String(key)] ?? ""}${given.join(" ")}`;
        if (key === "fill" || key === "stroke") painted();
        if (key === "fillText") {
          const [words = "", x = 0, y = 0] = given as unknown as [string, number, number];
          tell(words, textFrame(target, words, x, y));
        }
        return Reflect.apply(found, target, given);
      };
    },
  });
}

function textFrame(context: CanvasRenderingContext2D, words: string, x: number, y: number): Frame {
  const { width, fontBoundingBoxAscent, fontBoundingBoxDescent } = context.measureText(words);
  const ahead = (context.textAlign === "start") === (context.direction === "ltr");
  const left = context.textAlign === "center" ? x - width / 2 : ahead ? x : x - width;
  const height = fontBoundingBoxAscent + fontBoundingBoxDescent;
  return { x: left, y: y - fontBoundingBoxAscent, width, height };
}

type Pixels = Pick<ImageData, "data" | "width" | "height">;

const pixelsOf = (context: CanvasRenderingContext2D): Pixels =>
  context.getImageData(0, 0, context.canvas.width, context.canvas.height);

function isNear({ data, width }: Pixels, x: number, y: number, colour: string, within: number): boolean {
  const at = (Math.round(y) * width + Math.round(x)) * 4;
  return [0, 1, 2].every((n) => {
    const wanted = Number.parseInt(colour.slice(1 + 2 * n, 3 + 2 * n), 16);
    return Math.abs((data[at + n] ?? 0) - wanted) < within;
  });
}

function countIn(pixels: Pixels, place: Place, colour: string): number {
  let found = 0;
  for (let y = Math.max(0, place.top); y < place.bottom; y++) {
    for (let x = Math.max(0, place.left); x < place.right; x++) if (isNear(pixels, x, y, colour, 90)) found++;
  }
  return found;
}

/** Lines of records that are whole, in a colour that nothing else has. */
function plainLines(): readonly SVGPathElement[] {
  const colours: readonly string[] = [light.ink, light.blue, light.red];
  const all = document.querySelectorAll<SVGPathElement>("svg g > path[stroke]:not([stroke-dasharray])");
  return [...all].filter((line) => colours.includes(line.getAttribute("stroke") ?? ""));
}

function shareAlong(pixels: Pixels, line: SVGPathElement, window: Frame, scale: number): number {
  const [length, points] = [line.getTotalLength(), 24];
  const steps = [-1.5, -0.5, 0.5];
  let met = 0;
  for (let n = 1; n < points; n++) {
    const at = line.getPointAtLength((length * n) / points);
    const [x, y] = [(at.x - window.x) * scale, (at.y - window.y) * scale];
    // A line between two rows of pixels is half as dark in both.
    const colour = line.getAttribute("stroke") ?? "";
    if (steps.some((dx) => steps.some((dy) => isNear(pixels, x + dx, y + dy, colour, 150)))) met++;
  }
  return met / (points - 1);
}

/** Reads the fixture's file as XML, with words made to break it; gives what the parser complains of, and how many texts there are. */
export function readAsXml(): { readonly error: string | null; readonly texts: number } {
  const title = `A <title> & "signs" \u0007 ]]> \ud800`;
  const boxes = scene.boxes.map((box) => ({ ...box, id: `${box.id}/<&">`, records: [], title }));
  const file = mapSvg({ scene: { ...scene, boxes }, states, beaten: [], palette: light, title });
  const read = new DOMParser().parseFromString(file, "image/svg+xml");
  return {
    error: read.querySelector("parsererror")?.textContent ?? null,
    texts: read.getElementsByTagNameNS("http://www.w3.org/2000/svg", "text").length,
  };
}
