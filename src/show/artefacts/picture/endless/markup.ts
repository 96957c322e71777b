/** An element of a drawing, by the order in which they begin. */
export interface DrawnElement {
  /** Without the letters of its namespace. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Where the first element stands that is no longer in it. */
  readonly to: number;
}

/** What a drawing says, as it would be read where it is shown. */
export interface Markup {
  readonly elements: readonly DrawnElement[];
  /** Its style sheets, one behind the other. */
  readonly sheets: string;
}

const tag = /<(\/?)([^\s<>/!?]+)((?:[^<>"']|"[^"]*"|'[^']*')*?)(\/?)>/gu;
const declaration = /<!(ENTITY|ATTLIST)((?:[^<>"']|"[^"]*"|'[^']*')*)/gu;
const attribute = /([^\s=/]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/gu;

/** The elements of an SVG; null where it cannot be told what it draws: it is in another encoding than it seems to be, declares markup, or holds another drawing or style sheet in an address. */
export function markupOf(svg: string): Markup | null {
  const told = declaredIn(svg);
  if (told === null || isVeiled(svg)) return null;
  const text = plain(svg);
  const elements: { name: string; attributes: ReadonlyMap<string, string>; to: number }[] = [];
  const open: number[] = [];
  let sheets = "";
  let from = 0;
  const close = (end: number): void => {
    const last = elements[open.pop() ?? -1];
    if (!last) return;
    last.to = elements.length;
    if (last.name === "style") sheets += `${decoded(text.slice(from, end), told)}\n`;
  };
  for (const { 0: whole, 1: end, 2: name = "", 3: said = "", 4: alone, index } of text.matchAll(tag)) {
    if (end !== "") {
      close(index);
      continue;
    }
    const attributes = attributesIn(said, told);
    if ([...attributes.values()].some(holdsMore)) return null;
    open.push(elements.length);
    elements.push({ name: name.replace(/^.*:/u, ""), attributes, to: Infinity });
    from = index + whole.length;
    if (alone !== "") close(from);
  }
  for (const one of elements) one.to = Math.min(one.to, elements.length);
  return holdsMore(sheets) ? null : { elements, sheets };
}

function attributesIn(said: string, told: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  const all = new Map<string, string>();
  for (const [, name = "", one, other] of said.matchAll(attribute))
    all.set(name, decoded(one ?? other ?? "", told));
  return all;
}

/** Whether an address in a text is itself something that draws; pixels and fonts are not. */
function holdsMore(text: string): boolean {
  return /(?:^|["'(])\s*data:(?!image\/(?:png|jpe?g|gif|webp|bmp|avif)\b|(?:application|font)\/)/iu.test(
    text.replace(/[\t\r\n]/gu, ""),
  );
}

/** Whether a text is none that can be looked through: in another encoding than it seems to be, as a browser may read it. */
function isVeiled(svg: string): boolean {
  const encoding = /^\uFEFF?<\?xml[^>]{0,200}\sencoding\s*=\s*["']([^"']{0,40})/u.exec(svg)?.[1] ?? "utf-8";
  return (
    svg.includes("\u0000") ||
    svg.includes("<?xml-stylesheet") ||
    !/^(?:utf-8|us-ascii|iso-8859-\d+|windows-125\d)$/iu.test(encoding)
  );
}

/** The words that stand for signs and for what a drawing declares; null where it declares markup, or what elements say unasked. */
function declaredIn(svg: string): Readonly<Record<string, string>> | null {
  const words: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
  for (const [, what, said = ""] of svg.matchAll(declaration)) {
    if (what === "ENTITY" && /[<&]/u.test(said)) return null;
    if (what === "ATTLIST" && /["'][^"']*[#(]/u.test(said.replace(/["']https?:[^"']*["']/gu, "")))
      return null;
    const [, name = "", one, other] = /^\s+([^\s%"']+)\s+(?:"([^"]*)"|'([^']*)')/u.exec(said) ?? [];
    words[name] = one ?? other ?? "";
  }
  return words;
}

/** What a text says once its signs by number and by name are the signs. */
function decoded(text: string, told: Readonly<Record<string, string>>): string {
  return text.replace(
    /&(?:#x([\da-f]{1,6})|#(\d{1,7})|([^\s;&#]{1,100}));/giu,
    (whole, hex, decimal, name) => {
      if (name !== undefined) return told[String(name)] ?? String(whole);
      const code = Number.parseInt(String(hex ?? decimal), hex === undefined ? 10 : 16);
      return code <= 0x10ffff ? String.fromCodePoint(code) : String(whole);
    },
  );
}

/** What stands in a text without being an element: each with its marks. */
const apart = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
] as const;

/** A text without comments and what is said to programs, and with what is no markup written so; what never ends goes to the end. */
function plain(svg: string): string {
  const kept: string[] = [];
  let at = 0;
  for (let start = svg.indexOf("<"); start >= 0; start = svg.indexOf("<", Math.max(at, start + 1))) {
    const marks = apart.find(([mark]) => svg.startsWith(mark, start));
    if (!marks) continue;
    const [begins, ends] = marks;
    const end = svg.indexOf(ends, start + begins.length);
    kept.push(svg.slice(at, start));
    if (end < 0) return kept.join("");
    if (begins === "<![CDATA[")
      kept.push(
        svg
          .slice(start + begins.length, end)
          .replace(/&/gu, "&amp;")
          .replace(/</gu, "&lt;"),
      );
    at = end + ends.length;
  }
  return [...kept, svg.slice(at)].join("");
}
