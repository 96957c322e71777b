import { isUtf8 } from "node:buffer";
import { runInNewContext } from "node:vm";
import "./papers-in-node.ts";
import { openPdf } from "../../src/app/pages/papers/reader/pdf.ts";
import type { Input } from "./inputs/input.ts";
import { inputAt } from "./inputs/inputs.ts";
import { seedsIn } from "./inputs/seeds.ts";
import { smaller } from "./smaller.ts";
import { tried } from "./trials/trial.ts";

/** What the process is told to do: inputs of a row from one place to before another, or one input as it was written down. */
type Order =
  | { readonly seed: number; readonly from: number; readonly to: number }
  /** So many inputs of a row are to be given, papers and very long ones left out. */
  | { readonly give: number; readonly seed: number; readonly from: number }
  /** An input is to be given, and made smaller first as long as it has the same fault. */
  | { readonly keep: number; readonly seed: number; readonly what: string; readonly small: boolean };

/** Longest input that goes through the command line, in bytes. */
const longest = 2_000_000;
const root = process.argv[2] ?? ".";
// What opens papers in Node puts a JSON of its own in the engine's place, which takes many times as long.
JSON.stringify = runInNewContext("JSON.stringify") as typeof JSON.stringify;
const seeds = seedsIn(root);
const bench = { root, opening: openPdf };
const send = (told: object): void => void process.send?.(told);

async function at(place: number, input: Input): Promise<void> {
  send({ begun: place });
  const before = process.cpuUsage();
  const faults = await tried(input, place, bench);
  const { user, system } = process.cpuUsage(before);
  send({
    done: place,
    format: input.format,
    how: input.how,
    faults,
    ms: (user + system) / 1000,
    memory: process.memoryUsage.rss(),
  });
}

/** The input with as little in it as keeps the fault. */
async function asSmall(input: Input, place: number, what: string): Promise<Input> {
  // One letter to a byte, so that what is no text stays what it is.
  const isText = input.format !== "paper" && isUtf8(input.bytes);
  const code = isText ? "utf8" : "latin1";
  const withText = (text: string): Input => ({ ...input, bytes: Buffer.from(text, code) });
  const text = await smaller(Buffer.from(input.bytes).toString(code), async (one) =>
    (await tried(withText(one), place, bench)).includes(what),
  );
  return withText(text);
}

process.on("message", (order: Order) => {
  void (async () => {
    if ("give" in order) {
      const given: object[] = [];
      for (let place = order.from; given.length < order.give; place++) {
        const input = inputAt(order.seed, place, seeds);
        if (input.format === "paper" || input.bytes.length > longest) continue;
        given.push({ ...input, place, bytes: Buffer.from(input.bytes).toString("base64") });
      }
      send({ given });
      return;
    }
    if ("keep" in order) {
      const input = inputAt(order.seed, order.keep, seeds);
      const small = order.small ? await asSmall(input, order.keep, order.what) : input;
      send({ kept: { ...small, bytes: Buffer.from(small.bytes).toString("base64") } });
      return;
    }
    for (let place = order.from; place < order.to; place++) {
      send({ making: place });
      await at(place, inputAt(order.seed, place, seeds));
      // What was told goes out before the next is begun, which may never end.
      await new Promise((resolve) => setImmediate(resolve));
    }
    send({ ended: true });
  })();
});
// A promise that nobody waited for is a fault of the input in hand.
process.on("unhandledRejection", (error) =>
  send({ stray: String(error instanceof Error ? error.stack : error).slice(0, 400) }),
);

// Inputs of papers say something only where a paper that was not changed can be read.
for (const paper of [seeds.texts.paper.at(0) ?? "", seeds.texts.paper.at(-1) ?? ""]) {
  const opened = await openPdf("paper.pdf", Uint8Array.from(Buffer.from(paper, "latin1")).buffer);
  if (typeof opened === "string" || !(await opened.textOf(0)).includes("A post stood here"))
    throw new Error(
      `The reader of PDFs does not read, expected the text of a page: ${JSON.stringify(opened)}`,
    );
}
send({ ready: true });
