import type { Canvas } from "../../../src/write/pen/canvas-pen.ts";

/** Reads XML strictly, as far as the pen writes it: elements, attributes in quotation marks, text; throws where it is not well formed. */
export function elementsOf(xml: string): readonly {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly text: string;
}[] {
  const found: { name: string; attributes: Map<string, string>; text: string }[] = [];
  const open: (typeof found)[number][] = [];
  const plain = (text: string): string => {
    if (/[<>]|&(?!(?:amp|lt|gt|quot);)/.test(text)) throw new Error(`unescaped: ${text}`);
    // eslint-disable-next-line no-control-regex
    if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text))
      throw new Error("a sign XML has no place for");
    if (/[\ud800-\udfff]/u.test(text)) throw new Error("half a sign");
    return text
      .replace(/&lt;/g, "<")
      .replace(/&gt;/g, ">")
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, "&");
  };
  const token = /<(\/?)([a-z]+)((?: [\w:-]+="[^"]*")*)(\/?)>|([^<]+)/gy;
  while (token.lastIndex < xml.length) {
    const at = token.lastIndex;
    const match = token.exec(xml);
    if (!match) throw new Error(`not XML: ${xml.slice(at, at + 60)}`);
    const [, closing, name = "", attributes = "", alone, text] = match;
    const last = open.at(-1);
    if (text !== undefined) {
      if (last) last.text += plain(text);
      else if (text.trim() !== "") throw new Error("text outside");
    } else if (closing) {
      if (open.pop()?.name !== name) throw new Error(`not open: ${name}`);
    } else {
      const pairs = [...attributes.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(
        ([, key = "", value = ""]): [string, string] => [key, plain(value)],
      );
      if (new Set(pairs.map(([key]) => key)).size !== pairs.length) throw new Error("an attribute twice");
      const element = { name, attributes: new Map(pairs), text: "" };
      found.push(element);
      if (!alone) open.push(element);
    }
  }
  if (open.length > 0) throw new Error(`left open: ${open.length}`);
  return found;
}

/** A canvas that writes down what it is told, as path data and settings at each stroke, fill and text. */
export function recorder(): { readonly canvas: Canvas; readonly said: string[] } {
  const said: string[] = [];
  let path = "";
  const n = (value: number): string => String(Math.round(value * 100) / 100 + 0);
  const canvas: Canvas & { dash: readonly number[] } = {
    fillStyle: "",
    strokeStyle: "",
    lineWidth: 1,
    lineCap: "butt",
    lineJoin: "miter",
    miterLimit: 10,
    font: "",
    textAlign: "start",
    textBaseline: "alphabetic",
    direction: "ltr",
    dash: [],
    beginPath: () => void (path = ""),
    moveTo: (x, y) => void (path += `M${n(x)} ${n(y)}`),
    lineTo: (x, y) => void (path += `L${n(x)} ${n(y)}`),
    quadraticCurveTo: (a, b, x, y) => void (path += `Q${n(a)} ${n(b)} ${n(x)} ${n(y)}`),
    closePath: () => void (path += "Z"),
    arc: (x, y, radius) => void (path += `O${n(x)} ${n(y)} ${n(radius)}`),
    setLineDash: (dash) => void (canvas.dash = dash),
    fill: () => said.push(`fill ${path} ${String(canvas.fillStyle)}`),
    stroke: () =>
      said.push(
        `stroke ${path} ${String(canvas.strokeStyle)} ${n(canvas.lineWidth)} ${canvas.dash.join()} ${canvas.lineCap}`,
      ),
    fillText: (words, x, y) =>
      said.push(
        `text ${words} ${n(x)} ${n(y)} ${canvas.font} ${String(canvas.fillStyle)} ${canvas.textAlign} ${canvas.direction}`,
      ),
  };
  return { canvas, said };
}

/** What an SVG file says, in the recorder's words. */
export function saidBy(svg: string): readonly string[] {
  return elementsOf(`<g>${svg}</g>`).flatMap(({ name, attributes, text }) => {
    const of = (key: string, without = ""): string => attributes.get(key) ?? without;
    if (name === "text") {
      const font = `${of("font-weight", "400")} ${of("font-size")}px ${of("font-family").replaceAll("'", '"')}`;
      const anchor = of("text-anchor", "start").replace("middle", "center");
      return [`text ${text} ${of("x")} ${of("y")} ${font} ${of("fill")} ${anchor} ${of("direction", "ltr")}`];
    }
    if (name !== "path" && name !== "circle") return [];
    const path = name === "path" ? of("d") : `O${of("cx")} ${of("cy")} ${of("r")}`;
    const fill = of("fill") === "none" ? [] : [`fill ${path} ${of("fill")}`];
    const dash = of("stroke-dasharray").replaceAll(" ", ",");
    const stroke = `stroke ${path} ${of("stroke")} ${of("stroke-width")} ${dash} ${of("stroke-linecap", "butt")}`;
    return attributes.has("stroke") ? [...fill, stroke] : fill;
  });
}
