import { count, say, type Text } from "../../src/plugin.ts";
import type { Row } from "./rows.ts";

/** Whether peg and socket are compatible, or the pegs and sockets of several joints. */
export function verdict(rows: readonly Row[], several: boolean): Text {
  const n = rows.length;
  const out = rows.filter(({ flag }) => flag === "impossible").length;
  const all = rows.every(({ flag }) => flag === "fits");
  if (several) return ofSeveral(n, out, all);
  if (out > 0)
    return n === 1
      ? say`The peg is not compatible with the socket.`
      : say`The peg is not compatible with the socket in ${count(out)} of ${count(n)} dimensions.`;
  if (!all) return say`Whether the peg goes into the socket cannot be decided.`;
  return n === 1
    ? say`The peg is compatible with the socket.`
    : say`The peg is compatible with the socket in all ${count(n)} dimensions.`;
}

function ofSeveral(n: number, out: number, all: boolean): Text {
  if (out > 0)
    return say`The pegs are not compatible with their sockets in ${count(out)} of ${count(n)} pairs of dimensions.`;
  return all
    ? say`The pegs are compatible with their sockets in all ${count(n)} pairs of dimensions.`
    : say`Whether the pegs go into their sockets cannot be decided.`;
}

/** What the chance would be with the peg of another joint, over so many crossings of joints. */
export function crossed(mean: Text, crossings: number): Text {
  return crossings === 1
    ? say`With a peg of another of these sockets the chance would be ${mean} on average (1 crossing).`
    : say`With a peg of another of these sockets the chance would be ${mean} on average (${count(crossings)} crossings).`;
}
