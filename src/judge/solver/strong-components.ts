import type { Rows } from "./program.ts";

/**
 * The circle each node lies on, numbered from 0, or -1 for a node on none: the strongly connected
 * components of the graph whose row `i` lists the successors of node `i` (Tarjan 1972), a lone node
 * counting only when it is its own successor.
 */
export function circlesOf({ start, items }: Rows): Int32Array {
  const count = start.length - 1;
  const order = new Int32Array(count).fill(-1);
  const lowest = new Int32Array(count);
  const circle = new Int32Array(count).fill(-1);
  const open = new Uint8Array(count);
  const next = start.slice(0, count);
  const path = new Int32Array(count);
  const waiting = new Int32Array(count);
  let waitingEnd = 0;
  let visited = 0;
  let circles = 0;

  const enter = (node: number): void => {
    order[node] = lowest[node] = visited++;
    open[node] = 1;
    waiting[waitingEnd++] = node;
  };
  const close = (root: number): void => {
    const from = waiting.lastIndexOf(root, waitingEnd - 1);
    const alone = waitingEnd - from === 1 && !isOwnSuccessor(root);
    for (let at = from; at < waitingEnd; at++) {
      const node = waiting[at]!;
      open[node] = 0;
      if (!alone) circle[node] = circles;
    }
    if (!alone) circles++;
    waitingEnd = from;
  };
  const isOwnSuccessor = (node: number): boolean => {
    for (let at = start[node]!; at < start[node + 1]!; at++) if (items[at] === node) return true;
    return false;
  };

  for (let root = 0; root < count; root++) {
    if (order[root] !== -1 || start[root] === start[root + 1]) continue;
    let depth = 0;
    path[0] = root;
    enter(root);
    while (depth >= 0) {
      const node = path[depth]!;
      if (next[node]! < start[node + 1]!) {
        const successor = items[next[node]!++]!;
        if (order[successor] === -1) {
          enter(successor);
          path[++depth] = successor;
        } else if (open[successor] === 1) lowest[node] = Math.min(lowest[node]!, order[successor]!);
      } else {
        if (lowest[node] === order[node]) close(node);
        depth--;
        if (depth >= 0) lowest[path[depth]!] = Math.min(lowest[path[depth]!]!, lowest[node]!);
      }
    }
  }
  return circle;
}
