/** The most elements that a drawing may gain once each `use` in it is written out: the signs on a plan of a whole site are fewer. */
const most = 100_000;

const tag = /<(\/?)([^\s<>/!?]+)((?:[^<>"']|"[^"]*"|'[^']*')*?)(\/?)>/gu;
const named = /(?:^|\s)id\s*=\s*(?:"([^"]*)"|'([^']*)')/u;
/** What is led to within the drawing, by whatever attribute: movement can set one of another. */
const leads = /["'\s;]#([^"'\s;]+)/gu;

/** Elements from one place to another, in the order in which they begin. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Whether an SVG multiplies itself beyond measure: an element that is used in another that is used again stands there
 * as often as it would be written out, and what shows it is not to be stopped. One that declares markup is too much too.
 */
export function multipliesItself(svg: string): boolean {
  if (isVeiled(svg)) return true;
  for (const [, declared = ""] of svg.matchAll(/<!ENTITY([^>]{0,1000})/gu))
    if (/[<&]/u.test(declared)) return true;
  const { stretches, used } = read(without(without(svg, "<!--", "-->"), "<![CDATA[", "]]>"));
  const known = new Map<string, number>();
  const sizeOf = (id: string, depth: number): number => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const stretch = stretches.get(id);
    if (!stretch) return 0;
    if (depth > 200) return Infinity;
    // What leads back to itself is not drawn.
    known.set(id, 0);
    let size = stretch.to - stretch.from;
    for (let at = stretch.from; at < stretch.to && size <= most; at++)
      for (const other of used.get(at) ?? []) size += sizeOf(other, depth + 1);
    known.set(id, size);
    return size;
  };
  let size = 0;
  for (const ids of used.values()) for (const id of ids) if (size <= most) size += sizeOf(id, 0);
  return size > most;
}

/** Whether a text is none that can be looked through: in another encoding than it seems to be, as a browser may read it. */
function isVeiled(svg: string): boolean {
  const encoding = /^\uFEFF?<\?xml[^>]{0,200}\sencoding\s*=\s*["']([^"']{0,40})/u.exec(svg)?.[1] ?? "utf-8";
  return svg.includes("\u0000") || !/^(?:utf-8|us-ascii|iso-8859-\d+|windows-125\d)$/iu.test(encoding);
}

/** What attributes say once their signs by number are the signs. */
function decoded(attributes: string): string {
  return attributes.replace(/&#(?:x([\da-f]{1,6})|(\d{1,7}));/giu, (whole, hex, decimal) => {
    const code = Number.parseInt(String(hex ?? decimal), hex === undefined ? 10 : 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : String(whole);
  });
}

/** A text without what stands between two marks. */
function without(text: string, begins: string, ends: string): string {
  const kept: string[] = [];
  for (let at = 0; at < text.length;) {
    const start = text.indexOf(begins, at);
    const end = start < 0 ? -1 : text.indexOf(ends, start + begins.length);
    kept.push(text.slice(at, end < 0 ? text.length : start));
    at = end < 0 ? text.length : end + ends.length;
  }
  return kept.join("");
}

/** Where each element with an id begins and ends, and which are used where. */
function read(svg: string): {
  readonly stretches: ReadonlyMap<string, Stretch>;
  readonly used: ReadonlyMap<number, readonly string[]>;
} {
  const stretches = new Map<string, Stretch>();
  const used = new Map<number, readonly string[]>();
  const open: { readonly id: string | null; readonly from: number }[] = [];
  let count = 0;
  const close = (): void => {
    const last = open.pop();
    if (typeof last?.id !== "string") return;
    const first = stretches.get(last.id);
    // Of two with one name the first is meant.
    if (!first || first.from > last.from) stretches.set(last.id, { from: last.from, to: count });
  };
  for (const [, end, name = "", attributes = "", alone] of svg.matchAll(tag)) {
    if (name === "") continue;
    if (end !== "") {
      close();
      continue;
    }
    const said = decoded(attributes);
    const found = named.exec(said);
    open.push({ id: found?.[1] ?? found?.[2] ?? null, from: count });
    if (/^(?:\w+:)?(?:use|set|animate)$/u.test(name))
      used.set(
        count,
        [...said.matchAll(leads)].flatMap(([, id]) => id ?? []),
      );
    count++;
    if (alone !== "") close();
  }
  while (open.length > 0) close();
  return { stretches, used };
}
