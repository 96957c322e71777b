import { spawn } from "node:child_process";
import { createRequire } from "node:module";

/** Reads a drawing from its input and draws it as broad as the trial asks; ends with 0 where that could be done. */
const script = `
const { Resvg } = require(process.argv[1]);
const parts = [];
process.stdin.on("data", (part) => parts.push(part)).on("end", () => {
  const svg = Buffer.concat(parts).toString("utf8");
  const fit = { mode: "width", value: Number(process.argv[2]) };
  process.exitCode = new Resvg(svg, { fitTo: fit, font: { loadSystemFonts: false } }).render().width > 0 ? 0 : 1;
});
`;

/** The breadth of a trial in px, and how long it may take in ms: a hundred times as long as what a busy plan takes. */
const [breadth, patience] = [1000, 10_000];

/**
 * Whether a drawing can be drawn: it is well-formed, has a size, and does not multiply itself beyond measure. It is tried in a
 * process of its own, since what draws it can be stopped by nothing else when it takes too long or too much memory.
 */
export function canBeDrawn(svg: string): Promise<boolean> {
  const drawing = createRequire(import.meta.url).resolve("@resvg/resvg-js");
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["-e", script, "--", drawing, String(breadth)], {
      stdio: ["pipe", "ignore", "ignore"],
      timeout: patience,
      killSignal: "SIGKILL",
      windowsHide: true,
    });
    child.on("error", () => resolve(false));
    child.on("close", (code) => resolve(code === 0));
    // One that has ended already takes no more of it.
    child.stdin.on("error", () => undefined);
    child.stdin.end(svg);
  });
}
