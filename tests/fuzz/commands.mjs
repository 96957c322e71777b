// Puts inputs through the built command line: `check --json`, and some through `import` and `write`.
import { spawn } from "node:child_process";
import { fork } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** Longest that a command is waited for, in ms: it starts a program of its own, and writes pictures and pages. */
const patience = 120_000;
const kinds = ["review", "tables", "slides", "figures", "page", "data", "visit", "application"];

/** Runs so many commands on inputs of a row; how many, and the slowest in ms. `find` is told what is wrong. */
export async function triedThroughCommands({ root, child, seed, commands, from = 0 }, find) {
  const folder = mkdtempSync(join(tmpdir(), "variorum-fuzz-"));
  let [count, slowest] = [0, 0];
  try {
    for (const input of await inputsOf(child, root, { seed, commands, from })) {
      const corpus = join(folder, String(count));
      for (const { path, text } of input.beside) put(corpus, path, text);
      put(corpus, input.path, Buffer.from(input.bytes, "base64"));
      const words = wordsFor(input, count, corpus, folder);
      const begun = performance.now();
      const done = await ran(root, words, folder);
      slowest = Math.max(slowest, performance.now() - begun);
      for (const what of faultsOf(done, words)) find(`${words[0]}: ${what}`, input.place);
      rmSync(corpus, { recursive: true, force: true });
      count++;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { count, slowest };
}

/** What is run: most inputs are checked as part of their corpus, some come in, of some something is written. */
function wordsFor({ format, path }, count, corpus, folder) {
  if (count % 4 === 2 && ["bibtex", "ris", "csl-json", "table"].includes(format)) {
    const into = join(folder, "into");
    put(into, "corpus.yaml", "title: Pits\ndimensions: { depth: { kind: length } }\n");
    return ["import", join(corpus, path), "--into", into, "--json"];
  }
  if (count % 4 === 3)
    return ["write", kinds[(count >> 2) % kinds.length], corpus, "--to", join(folder, `told-${count}`)];
  return ["check", corpus, "--json"];
}

/** A path that would lead out of the folder, or that no file can have, is left out: the text names it, and that is all. */
function put(folder, path, content) {
  const to = join(folder, path);
  if (!to.startsWith(`${folder}/`) || path.includes("\0")) return;
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, content);
}

function faultsOf({ code, signal, out, err }, [command]) {
  const faults = [];
  if (signal) faults.push(`takes more than ${patience / 1000} s, or is ended by ${signal}`);
  else if (![0, 1, 2].includes(code)) faults.push(`ends with ${code}: ${err.split("\n")[0].slice(0, 200)}`);
  if (/^\s+at .+:\d+:\d+/mu.test(err))
    faults.push(`a trace on standard error: ${err.split("\n")[0].slice(0, 200)}`);
  if (code === 2 && err.trimEnd().split("\n").length > 1)
    faults.push(`more than a line on standard error: ${err.slice(0, 200)}`);
  if (code === 2 && out !== "") faults.push("a result on standard output where nothing could be done");
  if (command !== "write" && code !== 2 && !signal && !isJson(out)) faults.push("no JSON on standard output");
  return faults;
}

function isJson(text) {
  try {
    return typeof JSON.parse(text) === "object";
  } catch {
    return false;
  }
}

function ran(root, words, folder) {
  return new Promise((resolve) => {
    const env = { ...process.env, XDG_CACHE_HOME: join(folder, "cache") };
    const one = spawn(process.execPath, [join(root, "dist", "cli.js"), ...words], {
      env,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const [out, err] = [[], []];
    one.stdout.on("data", (data) => out.push(data));
    one.stderr.on("data", (data) => err.push(data));
    const timer = setTimeout(() => one.kill("SIGKILL"), patience);
    one.on("close", (code, signal) => {
      clearTimeout(timer);
      resolve({
        code,
        signal,
        out: Buffer.concat(out).toString("utf8"),
        err: Buffer.concat(err).toString("utf8"),
      });
    });
  });
}

/** The inputs of a row, but for papers, which no command reads. */
function inputsOf(child, root, order) {
  return new Promise((resolve, reject) => {
    const one = fork(child, [root], { stdio: ["ignore", "ignore", "inherit", "ipc"] });
    one.on("message", (message) => {
      if (message.ready) one.send({ give: order.commands, ...order });
      if (message.given) {
        one.kill("SIGKILL");
        resolve(message.given);
      }
    });
    one.on("exit", () => reject(new Error("Missing inputs for the command line")));
  });
}
