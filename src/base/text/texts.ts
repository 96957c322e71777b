/** Texts by the paths of their files. */
export type Texts = ReadonlyMap<string, string>;

/** Texts by path that are looked up when they are asked for: what they are held as is not a text. */
export function lookedUp(paths: Iterable<string>, look: (path: string) => string): Texts {
  const known = new Set(paths);
  function* entries(): Generator<[string, string], undefined> {
    for (const path of known) yield [path, look(path)];
    return undefined;
  }
  function* values(): Generator<string, undefined> {
    for (const path of known) yield look(path);
    return undefined;
  }
  const texts: Texts = {
    size: known.size,
    get: (path) => (known.has(path) ? look(path) : undefined),
    has: (path) => known.has(path),
    keys: () => known.values(),
    values,
    entries,
    [Symbol.iterator]: entries,
    forEach: (each) => {
      for (const [path, text] of entries()) each(text, path, texts);
    },
  };
  return texts;
}

/** The texts whose paths are wanted. */
export function someTexts(texts: Texts, wanted: (path: string) => boolean): Texts {
  return lookedUp([...texts.keys()].filter(wanted), (path) => texts.get(path) ?? "");
}

/** Texts with others in the place of some, or beside them. */
export function textsWith(texts: Texts, others: Texts): Texts {
  return lookedUp([...texts.keys(), ...others.keys()], (path) => others.get(path) ?? texts.get(path) ?? "");
}

/** Texts that are being changed, beside what they were. */
export interface Changing {
  readonly get: (path: string) => string | undefined;
  readonly has: (path: string) => boolean;
  readonly set: (path: string, text: string) => void;
  /** All of them as they now are. */
  readonly now: () => Texts;
  /** Those that are another text than before, and those that are new. */
  readonly changed: () => readonly (readonly [path: string, text: string])[];
}

/** Begins to change texts, which themselves stay as they are. */
export function changing(texts: Texts): Changing {
  const others = new Map<string, string>();
  return {
    get: (path) => others.get(path) ?? texts.get(path),
    has: (path) => others.has(path) || texts.has(path),
    set: (path, text) => void others.set(path, text),
    now: () => textsWith(texts, others),
    changed: () => [...others].filter(([path, text]) => texts.get(path) !== text),
  };
}
