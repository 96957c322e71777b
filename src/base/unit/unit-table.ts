import { nearest } from "../nearest.ts";
import { byText } from "../order.ts";
import { plainText } from "../quantity/plain-text.ts";
import type { Unit } from "./unit.ts";
import { builtInUnits } from "./units-builtin.ts";

/** The units of one corpus: its own first, then the built-in ones that they do not hide. */
export interface UnitTable {
  readonly units: readonly Unit[];
  /** Built-in units out of reach because an own unit has one of their names. */
  readonly hidden: readonly { readonly builtIn: Unit; readonly by: Unit }[];
  /** Length of the longest symbol or name, in UTF-16 units. */
  readonly longestName: number;
  /** The unit with this symbol (exactly) or name (without regard to case and plural). */
  readonly find: (text: string) => Unit | null;
  /** Names of units that somebody who wrote this may have meant, best first. */
  readonly near: (text: string) => readonly string[];
}

/** Puts the corpus's own units before the built-in ones; of own units with one name the first is kept. */
export function unitTable(own: readonly Unit[]): UnitTable {
  const hidden = builtInUnits.flatMap((builtIn) => {
    const by = own.find((unit) => sharesName(unit, builtIn));
    return by === undefined ? [] : [{ builtIn, by }];
  });
  const gone = new Set(hidden.map((one) => one.builtIn));
  const units = [...own, ...builtInUnits.filter((unit) => !gone.has(unit))];
  const bySymbol = new Map<string, Unit>();
  const byName = new Map<string, Unit>();
  for (const unit of units) {
    for (const symbol of unit.symbols) keepFirst(bySymbol, symbolKey(symbol), unit);
    for (const name of unit.names) keepFirst(byName, nameKey(name), unit);
  }
  const longestName =
    Math.max(...units.flatMap((unit) => [...unit.symbols, ...unit.names].map((name) => name.length))) + 4;
  return {
    units,
    hidden,
    longestName,
    find: (text) => bySymbol.get(symbolKey(text)) ?? byName.get(nameKey(text)) ?? null,
    near: (text) => nearUnits(text, units),
  };
}

function nearUnits(text: string, units: readonly Unit[]): readonly string[] {
  const key = nameKey(text);
  if (key === "") return [];
  const noun = units.filter((unit) =>
    [...unit.names, ...unit.looseNames].some(
      (name) => nameKey(name) === key || nameKey(name).endsWith(` ${key}`),
    ),
  );
  if (noun.length > 0) return distinctNames(noun.map((unit) => unit.name));
  const spelled = new Map<string, string>();
  for (const unit of units) {
    for (const name of [...unit.symbols, ...unit.names, ...unit.looseNames])
      keepFirst(spelled, name, unit.name);
  }
  // A symbol in the wrong case is the likeliest slip of all; one letter alone is otherwise like everything.
  const lower = symbolKey(text).toLowerCase();
  const cased = [...spelled.keys()].filter((name) => symbolKey(name).toLowerCase() === lower);
  const like = lower.length > 1 ? nearest(text, spelled.keys(), 5) : [];
  return distinctNames([...cased.sort(byText), ...like].map((name) => spelled.get(name) ?? name));
}

function distinctNames(names: readonly string[]): readonly string[] {
  return [...new Set(names)].slice(0, 6);
}

function sharesName(own: Unit, builtIn: Unit): boolean {
  const names = new Set(builtIn.names.map(nameKey));
  const symbols = new Set(builtIn.symbols.map(symbolKey));
  return own.names.some((name) => names.has(nameKey(name)) || symbols.has(symbolKey(name)));
}

function keepFirst<Value>(map: Map<string, Value>, key: string, value: Value): void {
  if (!map.has(key)) map.set(key, value);
}

function symbolKey(text: string): string {
  return plainText(text.normalize("NFC")).text.trim();
}

function nameKey(text: string): string {
  return symbolKey(text)
    .toLowerCase()
    .split(/[\s–_-]+/u)
    .map(singular)
    .join(" ");
}

function singular(word: string): string {
  if (word === "feet") return "foot";
  if (word.length > 4 && /(?:ch|sh|x|ss)es$/u.test(word)) return word.slice(0, -2);
  if (word.length > 4 && word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  return word.length > 3 && /[^sui]s$/u.test(word) ? word.slice(0, -1) : word;
}
