const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

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

/** What an XML file cannot hold at all is left out. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);
}
