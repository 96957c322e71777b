// Runs inputs in a process of their own and watches it: one that takes too long, too much memory or the process with it
// is a find, and the row goes on behind it in a new process.
import { fork } from "node:child_process";
import { readFileSync } from "node:fs";

/** What an input may take: seconds of the processor, and bytes. */
export const most = { seconds: 5, bytes: 2 ** 30 };

/** Longest that is waited for an input on a machine that gives it no processor, in ms. */
const patience = 180_000;
const heap = ["--max-old-space-size=900", "--stack-size=984"];

/** Has the inputs of a row from one place to before another tried; `told` gets each outcome in turn. */
export async function triedInRow(child, { root, seed, from, to }, told) {
  for (let next = from; next < to;) {
    // A new process every now and then: what one input left in memory is not the fault of another.
    const stop = Math.min(to, next + 2500);
    next = await once(child, root, { seed, from: next, to: stop }, told);
  }
}

/** One process over what it is told to do; the place at which to go on. */
function once(child, root, order, told) {
  return new Promise((resolve, reject) => {
    const process = fork(child, [root], { execArgv: heap, stdio: ["ignore", "ignore", "pipe", "ipc"] });
    let [place, begun, used] = [order.from, null, 0];
    let [said, strays, isOver, isReady] = ["", [], false, false];
    process.stderr.on("data", (data) => (said = (said + data).slice(-4000)));
    const watch = setInterval(() => {
      if (begun === null) return;
      const seconds = secondsOf(process.pid);
      const isSlow =
        seconds === null ? performance.now() - begun > most.seconds * 1000 : seconds - used > most.seconds;
      if (isSlow) over(["takes more than 5 s"]);
      else if (performance.now() - begun > patience) over(["never comes to an end"]);
    }, 250);
    const finish = (next) => {
      if (isOver) return;
      isOver = true;
      clearInterval(watch);
      process.kill("SIGKILL");
      resolve(next);
    };
    const over = (faults) => {
      if (isOver) return;
      told({
        place,
        format: null,
        how: null,
        faults,
        ms: performance.now() - (begun ?? performance.now()),
        memory: 0,
      });
      finish(place + 1);
    };
    process.on("message", (message) => {
      if (message.ready) isReady = process.send(order);
      if (message.making !== undefined) place = message.making;
      if (message.begun !== undefined)
        [place, begun, used] = [message.begun, performance.now(), secondsOf(process.pid) ?? 0];
      if (message.stray !== undefined)
        strays.push(`a promise that nobody waited for: ${message.stray.split("\n")[0]}`);
      if (message.done !== undefined) {
        begun = null;
        const heavy = message.memory > most.bytes ? ["takes more than 1 GB"] : [];
        told({ ...message, place, faults: [...message.faults, ...strays.splice(0), ...heavy] });
        if (heavy.length > 0) finish(place + 1);
      }
      if (message.ended) finish(order.to);
    });
    process.on("exit", (code, signal) => {
      if (!isReady) return reject(new Error(`The process that tries inputs does not begin: ${said}`));
      const isFull = /heap out of memory|allocation failed/iu.test(said);
      over([
        isFull
          ? "takes more than 1 GB"
          : `ends the process with ${code ?? signal}: ${said.trim().split("\n").at(0)}`,
      ]);
    });
  });
}

/** Seconds of the processor that the first thread of a process has had, which somebody waits for; null where the system does not tell. */
function secondsOf(id) {
  try {
    const fields = readFileSync(`/proc/${id}/task/${id}/stat`, "utf8")
      .replace(/^.*\) /u, "")
      .split(" ");
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return null;
  }
}
