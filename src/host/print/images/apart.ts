import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import type { ResvgRenderOptions } from "@resvg/resvg-js";

/** Reads a drawing from its input, draws it as it is told, and gives the PNG; ends with 0 where that could be done. */
const script = `
const { Resvg } = require(process.argv[1]);
const parts = [];
process.stdin.on("data", (part) => parts.push(part)).on("end", () => {
  const drawn = new Resvg(Buffer.concat(parts).toString("utf8"), JSON.parse(process.argv[2])).render();
  process.stdout.write(drawn.asPng());
});
`;

/**
 * Draws an SVG of a stranger as a PNG, in a process of its own, since what draws can be stopped by nothing else when it
 * takes too long or too much memory; null where it cannot be drawn, or not within so many ms.
 */
export function drawnApart(
  svg: string,
  options: ResvgRenderOptions,
  patience: number,
): Promise<Uint8Array | null> {
  const drawing = createRequire(import.meta.url).resolve("@resvg/resvg-js");
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["-e", script, "--", drawing, JSON.stringify(options)], {
      stdio: ["pipe", "pipe", "ignore"],
      timeout: patience,
      killSignal: "SIGKILL",
      windowsHide: true,
    });
    const parts: Uint8Array[] = [];
    child.stdout.on("data", (part: Uint8Array) => parts.push(part));
    child.on("error", () => resolve(null));
    child.on("close", (code) => resolve(code === 0 ? new Uint8Array(Buffer.concat(parts)) : null));
    // One that has ended already takes no more of it.
    child.stdin.on("error", () => undefined);
    child.stdin.end(svg);
  });
}
