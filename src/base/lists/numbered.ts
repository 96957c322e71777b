/** What has numbers from 0: the key of each, and the number of each key. */
export interface Numbers<K> {
  readonly keys: readonly K[];
  readonly numberOf: Pick<ReadonlyMap<K, number>, "get">;
}

/**
 * One of a few words for things that have numbers, as a map: a byte for each thing, where a map of their own would take
 * over twenty. `places` has the place of each one's word among `words`, from 1; 0 is none.
 */
export function wordsBy<K, V>(
  { keys, numberOf }: Numbers<K>,
  words: readonly V[],
  places: Uint8Array,
): ReadonlyMap<K, V> {
  const get = (key: K): V | undefined => words[(places[numberOf.get(key) ?? -1] ?? 0) - 1];
  function* each<T>(tell: (key: K, word: V) => T): Generator<T, undefined> {
    for (const [number, key] of keys.entries()) {
      const word = words[(places[number] ?? 0) - 1];
      if (word !== undefined) yield tell(key, word);
    }
  }
  const entries = () => each<[K, V]>((key, word) => [key, word]);
  const map: ReadonlyMap<K, V> = {
    get,
    has: (key) => get(key) !== undefined,
    get size() {
      return places.reduce((count, place) => (place === 0 ? count : count + 1), 0);
    },
    entries,
    keys: () => each((key) => key),
    values: () => each((_, word) => word),
    forEach: (tell) => {
      for (const [key, word] of entries()) tell(word, key, map);
    },
    [Symbol.iterator]: entries,
  };
  return map;
}
