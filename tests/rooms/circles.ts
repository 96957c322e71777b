/** The strongly connected components of more than one file, or of one that imports itself, by Tarjan's method (1972). */
export function circles(graph: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const found: string[][] = [];

  const low = (file: string): number => lowest.get(file) ?? 0;
  const visit = (file: string): void => {
    order.set(file, order.size);
    lowest.set(file, order.size - 1);
    open.push(file);
    for (const target of graph.get(file) ?? []) {
      if (!graph.has(target)) continue;
      if (!order.has(target)) {
        visit(target);
        lowest.set(file, Math.min(low(file), low(target)));
      } else if (open.includes(target)) {
        lowest.set(file, Math.min(low(file), order.get(target) ?? 0));
      }
    }
    if (low(file) !== order.get(file)) return;
    const members = open.splice(open.indexOf(file));
    if (members.length > 1 || graph.get(file)?.includes(file) === true) found.push(members);
  };

  for (const file of graph.keys()) if (!order.has(file)) visit(file);
  return found;
}
