import { escaped } from "../../../base/text/steering.ts";
import type { OnSlide } from "./drawn.ts";

/** A picture on a slide as an SVG file of its own, at its size in points. */
export function svgOnSlide({ inner, box, width, height, letters }: OnSlide, title: string): string {
  const frame = [box.x, box.y, box.width, box.height].map(rounded).join(" ");
  const set = Object.entries(letters).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${rounded(width)}pt" height="${rounded(height)}pt" viewBox="${frame}"${set.join("")}><title>${escaped(title)}</title>${inner}</svg>`;
}

function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}
