import { escaped } from "../../base/text/steering.ts";
import type { Point } from "../../show/map/scene.ts";
import { familyList } from "./faces.ts";
import type { Palette } from "./palette.ts";
import type { Colour, Letters, Pen, Stroke } from "./pen.ts";
import { traceLine, traceOutline } from "./trace.ts";
import type { Tracer } from "./trace.ts";

/** A pen that gathers SVG text. */
export interface SvgPen extends Pen {
  /** What was drawn so far: elements, without the root around them. */
  readonly drawn: () => string;
}

/** Makes a pen that writes SVG with presentation attributes alone; the prefix begins every id, for files that hold several pictures. */
export function svgPen(palette: Palette, prefix = ""): SvgPen {
  const parts: string[] = [];
  const names = new Map<string, number>();
  const path = (data: string, fill: Colour | null, stroke: Stroke | null): void => {
    if (data !== "") parts.push(`<path d="${data}"${painted(palette, fill, stroke)}/>`);
  };
  return {
    line: (points, stroke, corner = 0) =>
      path(
        data((to) => traceLine(points, corner, to)),
        null,
        stroke,
      ),
    lines: (lines, stroke, corner = 0) =>
      path(
        data((to) => {
          for (const points of lines) traceLine(points, corner, to);
        }),
        null,
        stroke,
      ),
    outline: (steps, fill, stroke) =>
      path(
        data((to) => traceOutline(steps, to)),
        fill,
        stroke,
      ),
    disc: (at, radius, fill, stroke) =>
      parts.push(
        `<circle cx="${n(at.x)}" cy="${n(at.y)}" r="${n(radius)}"${painted(palette, fill, stroke)}/>`,
      ),
    text: (words, at, letters) => parts.push(textElement(palette, words, at, letters)),
    part: (id, title, draw) => {
      const name = prefix + nameOf(id);
      const times = (names.get(name) ?? 0) + 1;
      names.set(name, times);
      parts.push(
        `<g id="${name}${times === 1 ? "" : `.${times}`}" data-record="${escaped(id)}"><title>${escaped(title)}</title>`,
      );
      draw();
      parts.push("</g>");
    },
    drawn: () => parts.join("\n"),
  };
}

/** A whole SVG file around what was drawn: the part of the plane it shows, in px, and what it is called. */
export function svgFile(
  frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  title: string,
  drawn: string,
): string {
  const box = [frame.x, frame.y, frame.width, frame.height].map(n).join(" ");
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${n(frame.width)}" height="${n(frame.height)}" viewBox="${box}" role="img">
<title>${escaped(title)}</title>
${drawn}
</svg>
`;
}

function textElement(palette: Palette, words: string, at: Point, letters: Letters): string {
  const attributes = [
    `x="${n(at.x)}" y="${n(at.y)}"`,
    `font-family="${familyList(letters.face, "'")}" font-size="${n(letters.size)}"`,
    letters.weight === 400 ? "" : `font-weight="${letters.weight}"`,
    `fill="${escaped(palette[letters.colour])}"`,
    letters.anchor === "start" ? "" : `text-anchor="${letters.anchor}"`,
    letters.rtl ? 'direction="rtl"' : "",
    letters.lang === null ? "" : `xml:lang="${escaped(letters.lang)}"`,
    // A canvas keeps every space, and so must the file.
    /^\s|\s$|\s\s/.test(words) ? 'xml:space="preserve"' : "",
  ];
  return `<text ${attributes.filter((one) => one !== "").join(" ")}>${escaped(words)}</text>`;
}

function painted(palette: Palette, fill: Colour | null, stroke: Stroke | null): string {
  const inside = fill === null ? "none" : escaped(palette[fill]);
  if (stroke === null) return ` fill="${inside}"`;
  const dash = stroke.dash === undefined ? "" : ` stroke-dasharray="${stroke.dash.map(n).join(" ")}"`;
  const cap = stroke.round ? ' stroke-linecap="round"' : "";
  const colour = escaped(palette[stroke.colour]);
  return ` fill="${inside}" stroke="${colour}" stroke-width="${n(stroke.width)}"${dash}${cap}`;
}

function data(trace: (to: Tracer) => void): string {
  const parts: string[] = [];
  trace({
    moveTo: (x, y) => parts.push(`M${n(x)} ${n(y)}`),
    lineTo: (x, y) => parts.push(`L${n(x)} ${n(y)}`),
    quadraticCurveTo: (byX, byY, x, y) => parts.push(`Q${n(byX)} ${n(byY)} ${n(x)} ${n(y)}`),
    closePath: () => parts.push("Z"),
  });
  return parts.join("");
}

/** A number to a hundredth of a px. */
function n(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return Object.is(rounded, -0) ? "0" : String(rounded);
}

/** An XML name that differs for ids that differ: every other character becomes its number between points. */
function nameOf(id: string): string {
  return `r-${id.replace(/[^\p{L}\p{Nd}_-]/gu, (one) => `.${(one.codePointAt(0) ?? 0).toString(16)}.`)}`;
}
