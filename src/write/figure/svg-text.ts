import { escaped } from "../../base/text/steering.ts";

/** A drawing as the text of an SVG file of its own, the same from any document. */
export function svgText(svg: SVGSVGElement): string {
  const root = elementText(svg).replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
}

function elementText(element: Element): string {
  const name = element.localName;
  const attributes = [...element.attributes]
    .filter((one) => one.name !== "xmlns")
    .map((one) => ` ${one.name}="${escaped(one.value)}"`)
    .sort();
  const inside = [...element.childNodes].map((node) =>
    node.nodeType === 1 ? elementText(node as Element) : escaped(node.textContent ?? ""),
  );
  return `<${name}${attributes.join("")}>${inside.join("")}</${name}>`;
}
