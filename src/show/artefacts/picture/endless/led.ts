import type { DrawnElement, Markup } from "./markup.ts";

/** What is said of a look that bears on how long it takes to draw. */
interface Look {
  /** What it wears: a mask, a pattern, a mark, a filter. */
  readonly worn: readonly string[];
  /** How many filters it asks for by their names. */
  readonly filters: number;
  /** Its filters are told in some other place. */
  readonly elsewhere: boolean;
  /** It has a mark at each of its points. */
  readonly marked: boolean;
}

/** What an element leads to within the drawing, wherever that is said: in itself or in style sheets. */
export interface Led extends Look {
  /** By an address of its own, as a `use` is told what it repeats. */
  readonly used: readonly string[];
}

/** What is led to within the drawing, by whatever attribute: movement can set one of another. */
const leads = /(?:^|["'\s;])#([^"'\s;]+)/gu;
const repeats = new Set(["use", "set", "animate", "feImage"]);
/** What a look is told by, and what can move it. */
const telling = /^(?:style|filter|mask|clip-path|fill|stroke|marker(?:-\w+)?|to|from|by|values)$/u;

/** What each element of a drawing leads to; null where that is more than the most. */
export function ledBy(markup: Markup, most: number): readonly Led[] | null {
  const said = rulesIn(markup.sheets);
  const known = new Map<string, Look>();
  const lookOf = (text: string): Look => {
    const look = known.get(text) ?? lookIn(text);
    known.set(text, look);
    return look;
  };
  const all: Led[] = [];
  let count = 0;
  for (const element of markup.elements) {
    const own = [...element.attributes].filter(([name]) => telling.test(name));
    const told = own.map(([name, value]) => (name === "style" ? plainStyle(value) : `${name}:${value}`));
    const looks = [...told, ...said(element)].map(lookOf);
    const values = repeats.has(element.name) ? [...element.attributes.values()] : [];
    count += looks.reduce((sum, { worn }) => sum + worn.length, values.length);
    if (count > most) return null;
    all.push({
      used: values.flatMap((value) => [...value.matchAll(leads)].flatMap(([, id]) => id ?? [])),
      worn: looks.flatMap(({ worn }) => worn),
      filters: looks.reduce((sum, { filters }) => sum + filters, 0),
      elsewhere: looks.some(({ elsewhere }) => elsewhere),
      marked: looks.some(({ marked }) => marked),
    });
  }
  return all;
}

const functions =
  /\b(?:blur|drop-shadow|brightness|contrast|grayscale|hue-rotate|invert|opacity|saturate|sepia)\s{0,9}\(/giu;

function lookIn(text: string): Look {
  const filters = text.split(";").filter((one) => /filter\s*:/iu.test(one));
  // What is moved is told by another name than its own.
  const moved = /^(?:to|from|by|values):/u.test(text) ? [text] : [];
  return {
    worn: [...text.matchAll(/url\(\s*["']?#([^"')\s]+)/giu)].flatMap(([, id]) => id ?? []),
    filters: [...filters, ...moved].reduce((sum, one) => sum + (one.match(functions)?.length ?? 0), 0),
    elsewhere: filters.some((one) => /var\s*\(|inherit/iu.test(one)),
    marked: /marker(?:-mid)?\s*:/iu.test(text),
  };
}

/** Style without comments, its signs by number as the signs. */
function plainStyle(css: string): string {
  return css
    .replace(/\/\*[\s\S]*?(?:\*\/|$)/gu, " ")
    .replace(/\\([\da-f]{1,6})\s?/giu, (_, hex) => {
      const code = Number.parseInt(String(hex), 16);
      return code <= 0x10ffff ? String.fromCodePoint(code) : "";
    })
    .replace(/\\/gu, "");
}

const plainName = /^(?:\*|[a-z][\w-]*|[.#][\w-]+)$/iu;
const bearing = /url\(|filter|var\(/iu;

/** What style sheets say of an element that bears on how long it takes to draw. A rule that is not by plain names holds for all. */
function rulesIn(sheets: string): (element: DrawnElement) => readonly string[] {
  const css = plainStyle(sheets);
  const byName = new Map<string, string[]>();
  const add = (name: string, said: string): void => {
    if (!bearing.test(said)) return;
    const known = byName.get(name);
    if (known) known.push(said);
    else byName.set(name, [said]);
  };
  if (/@(?!charset|import|font-face|namespace|media)/iu.test(css)) add("*", css);
  else
    for (const { names, said } of plainRules(css))
      for (const name of names.every((one) => plainName.test(one)) ? names : ["*"]) add(name, said);
  return ({ name, attributes }) => {
    const classes = (attributes.get("class") ?? "").split(/\s+/u).map((one) => `.${one}`);
    const its = new Set(["*", name, `#${attributes.get("id") ?? ""}`, ...classes]);
    return [...its].flatMap((one) => byName.get(one) ?? []);
  };
}

/** The rules that hold no other; what stands outside of them is a rule for all. */
function plainRules(css: string): readonly { readonly names: readonly string[]; readonly said: string }[] {
  const rules: { names: readonly string[]; said: string }[] = [];
  const rest: string[] = [];
  let names: string | null = null;
  let said: string[] = [];
  let words = "";
  for (const part of css.split(/([{};])/u)) {
    if (part === "{") {
      rest.push(...said);
      [names, said, words] = [words, [], ""];
    } else if (part === "}") {
      if (names === null) rest.push(words, ";");
      else rules.push({ names: names.split(",").map((one) => one.trim()), said: [...said, words].join("") });
      [names, said, words] = [null, [], ""];
    } else if (part === ";") {
      (names === null ? rest : said).push(words, ";");
      words = "";
    } else words = part;
  }
  return [...rules, { names: ["*"], said: [...rest, ...said, words].join("") }];
}
