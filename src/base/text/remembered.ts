/** The same function of a name, its results kept: the names of a corpus are few, and asked for often. */
export function remembered<T>(of: (name: string) => T): (name: string) => T {
  const known = new Map<string, T>();
  return (name) => {
    const had = known.get(name);
    if (had !== undefined) return had;
    const found = of(name);
    known.set(name, found);
    return found;
  };
}
