// Writes a find into tests/corpora/fuzzed: a small corpus with the input in it, as small as it gets.
import { fork } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** How long an input is made smaller, in ms; what takes seconds to go wrong, or ends the process, is kept as it was found. */
const patience = 120_000;

/** Keeps one find; the folder's name is told. */
export async function kept({ root, child, seed, place, what }) {
  const found = await asked(child, root, { keep: place, seed, what, small: true });
  const input = found ?? (await asked(child, root, { keep: place, seed, what, small: false }));
  if (!input) return console.error(`Nothing kept of the find at ${place}, which could not be made again`);
  const name = `${input.format}-${seed}-${place}`;
  const folder = join(root, "tests", "corpora", "fuzzed", name);
  for (const { path, text } of input.beside) put(join(folder, path), text);
  put(join(folder, input.path), Buffer.from(input.bytes, "base64"));
  console.log(`kept as tests/corpora/fuzzed/${name}: ${what}`);
  return undefined;
}

function put(path, content) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
}

/** What a process of its own gives for it; null where it never does. */
function asked(child, root, order) {
  return new Promise((resolve) => {
    const process = fork(child, [root], {
      execArgv: ["--max-old-space-size=900"],
      stdio: ["ignore", "ignore", "ignore", "ipc"],
    });
    const end = (input) => {
      clearTimeout(timer);
      process.kill("SIGKILL");
      resolve(input);
    };
    const timer = setTimeout(() => end(null), patience);
    process.on("message", (message) => {
      if (message.ready) process.send(order);
      if (message.kept) end(message.kept);
    });
    process.on("exit", () => end(null));
  });
}
