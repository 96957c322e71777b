import { DOMParser } from "linkedom";
import { storable } from "../../../base/text/steering.ts";

/** An SVG of the corpus as it may be handed on. */
export interface CleanSvg {
  readonly svg: string;
  /** Its own size in px, by its view box or its width and height. */
  readonly width: number;
  readonly height: number;
}

/** What an SVG draws with; all else goes: scripts, foreign content, movement, what an editor keeps for itself, and what is said about it. */
const elements = new Set(
  `svg g defs symbol use title desc style path rect circle ellipse line polyline polygon text tspan textPath image
  linearGradient radialGradient stop pattern clipPath mask marker filter feGaussianBlur feOffset feMerge feMergeNode feColorMatrix
  feBlend feComposite feFlood switch`.split(/\s+/),
);

/** Takes out of an SVG all that runs, leads elsewhere or was written about it; null where it is none. Pictures within it go through `inner`, and go where that gives none. */
export function cleanSvg(text: string, inner: (address: string) => string | null): CleanSvg | null {
  const document = new DOMParser().parseFromString(withoutHead(text), "image/svg+xml") as unknown as Document;
  const root = document.documentElement as Element | null;
  if (root === null || root.localName !== "svg" || isTooDeep(root)) return null;
  cleanElement(root, inner);
  root.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  const [width, height] = sizeOf(root);
  const longer = Math.max(width / height, height / width);
  if (!(width > 0 && height > 0 && longer <= slimmest)) return null;
  return { svg: `<?xml version="1.0" encoding="UTF-8"?>\n${root.toString()}\n`, width, height };
}

/** How much longer than broad a drawing may be, and how deep its groups may lie in each other. */
const [slimmest, deepest] = [100, 64];

function isTooDeep(root: Element): boolean {
  let level: Element[] = [root];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > deepest) return true;
    level = level.flatMap((one) => [...one.children]);
  }
  return false;
}

/** Without what stands before the root, where entities could be declared, and without comments. */
function withoutHead(text: string): string {
  const root = text.search(/<svg[\s>]/);
  return root < 0 ? "<none/>" : storable(text.slice(root)).replace(/<!--[\s\S]*?-->/g, "");
}

function cleanElement(element: Element, inner: (address: string) => string | null): void {
  // Both lists change while they are gone through.
  const [attributes, children] = [[...element.attributes], [...element.childNodes]];
  for (const { name, value } of attributes) {
    const cleaned = cleanAttribute(element, name, value, inner);
    if (cleaned === null) element.removeAttribute(name);
    else if (cleaned !== value) element.setAttribute(name, cleaned);
  }
  for (const child of children) {
    if (child.nodeType === 3 || child.nodeType === 4) continue;
    const one = child as Element;
    const lost = one.localName === "image" && hrefOf(one) !== null && inner(hrefOf(one) ?? "") === null;
    if (child.nodeType !== 1 || !elements.has(one.nodeName) || lost) child.remove();
    else cleanElement(one, inner);
  }
  if (element.localName === "style") element.textContent = cleanStyle(element.textContent ?? "");
}

const hrefOf = (element: Element): string | null =>
  element.getAttribute("href") ?? element.getAttribute("xlink:href");

function cleanAttribute(
  element: Element,
  name: string,
  value: string,
  inner: (address: string) => string | null,
): string | null {
  if (name === "xmlns" || name === "xmlns:xlink" || name === "xml:lang" || name === "xml:space") return value;
  if (name === "href" || name === "xlink:href") {
    if (value.trim().startsWith("#")) return value;
    return element.localName === "image" ? inner(value) : null;
  }
  if (name.includes(":") || /^on/i.test(name) || name.startsWith("data-")) return null;
  return name === "style" || /url|expression/i.test(value) ? cleanStyle(value) : value;
}

/** Style that fetches nothing: what is written so that it cannot be read plainly goes whole. */
function cleanStyle(css: string): string {
  if (css.includes("\\") || /<|expression/i.test(css)) return "";
  return css
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/@import[^;]*;?/gi, "")
    .replace(/@font-face\s*\{[^}]*\}/gi, "")
    .replace(/(?:url|src|image|image-set)\(\s*(?!["']?#)[^)]*\)/gi, "none");
}

function sizeOf(root: Element): readonly [number, number] {
  const box = (root.getAttribute("viewBox") ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  const [, , width = 0, height = 0] = box;
  if (width > 0 && height > 0) return [width, height];
  const plain = (name: string): number => Number.parseFloat(root.getAttribute(name) ?? "") || 300;
  return [plain("width"), plain("height")];
}
