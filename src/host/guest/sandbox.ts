import variant from "@jitl/quickjs-wasmfile-release-sync";
import { DefaultIntrinsics, newQuickJSWASMModuleFromVariant, newVariant } from "quickjs-emscripten-core";
import type { QuickJSContext, QuickJSHandle } from "quickjs-emscripten-core";
import { coded, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { randomFrom } from "../../plugin.ts";
import { tidy } from "./contract.ts";
import { inside, numericsModule } from "./inside.ts";
import { answer, mostNumbers, numerics } from "./numerics.ts";

/** What a guest may use up: time in milliseconds, memory and stack in bytes, and the length of what it says. */
export interface Limits {
  readonly milliseconds: number;
  readonly bytes: number;
  readonly stack: number;
  readonly said: number;
}

/** The limits of one computation. */
export const computing: Limits = { milliseconds: 10_000, bytes: 32 << 20, stack: 256 << 10, said: 1 << 20 };

/** The limits of reading what a plug-in declares. */
export const declaring: Limits = { ...computing, milliseconds: 2_000, said: 256 << 10 };

/** The text of a plug-in's file, with the path it has in its corpus. */
export interface GuestText {
  readonly file: string;
  readonly text: string;
}

/** What a guest is asked: to declare itself, or to compute on inputs that are given as JSON. */
export type Question =
  { readonly ask: "describe" } | { readonly ask: "compute"; readonly given: string; readonly seed: number };

/** The JSON text a guest gave, or what went wrong; `passing` where it might go well another time. */
export type Answer = { readonly said: string } | { readonly trouble: Text; readonly passing?: true };

/**
 * Runs a guest's file in a machine of its own, made for this question and thrown away after it: a stranger's code sees
 * neither the host nor what ran before. `engine` is the compiled interpreter.
 */
export async function askGuest(
  engine: WebAssembly.Module,
  guest: GuestText,
  question: Question,
  limits: Limits,
  report: (done: number) => void = () => undefined,
): Promise<Answer> {
  // The interpreter's own limit does not count the buffers of typed arrays: what it stands in must be limited as well.
  const wasmMemory = new WebAssembly.Memory({
    initial: pagesAtFirst,
    maximum: pagesAtFirst + limits.bytes / page,
  });
  const machine = await newQuickJSWASMModuleFromVariant(
    newVariant(variant, { wasmModule: engine, wasmMemory }),
  );
  const runtime = machine.newRuntime();
  runtime.setMemoryLimit(limits.bytes);
  runtime.setMaxStackSize(limits.stack);
  runtime.setModuleLoader((name) =>
    name === "variorum"
      ? numericsModule(Object.keys(numerics))
      : { error: new TypeError("A plug-in may import from “variorum” alone") },
  );
  const end = performance.now() + limits.milliseconds;
  let late = false;
  runtime.setInterruptHandler(() => (late ||= performance.now() > end));
  try {
    const context = runtime.newContext({ intrinsics: { ...DefaultIntrinsics, Date: false } });
    const result = conversation(context, guest, question, limits, report);
    return late ? tooSlow(limits) : result;
  } catch {
    // The interpreter itself broke, as it may when a guest recurses: nothing of it is used again.
    return late ? tooSlow(limits) : { trouble: say`it broke off: too deep a recursion, or memory used up` };
  }
}

/** The unit in which the interpreter gets memory, in bytes, and how much of it it needs to begin: 16 MiB. */
const page = 65_536;
const pagesAtFirst = 256;

function tooSlow(limits: Limits): Answer {
  return { trouble: say`it was stopped after ${`${limits.milliseconds / 1000} s`}`, passing: true };
}

function conversation(
  context: QuickJSContext,
  guest: GuestText,
  question: Question,
  limits: Limits,
  report: (done: number) => void,
): Answer {
  const seed = question.ask === "compute" ? question.seed : 0;
  const driver = prepared(context, seed, report);
  const loaded = context.evalCode(guest.text, guest.file, { type: "module", strict: true });
  if (loaded.error) return troubleIn(context, driver, loaded.error);
  const state = context.getPromiseState(loaded.value);
  if (state.type === "rejected") return troubleIn(context, driver, state.error);
  if (state.type === "pending")
    return { trouble: say`it waits (${coded("await")}) at its top, expected nothing to wait for` };
  const plugin = context.getProp(state.value, "default");
  const given = question.ask === "compute" ? [context.newString(question.given)] : [];
  const said = context.callFunction(
    context.getProp(driver, question.ask),
    context.undefined,
    plugin,
    ...given,
  );
  return said.error ? uncaught(context, said.error) : heard(context, said.value, limits);
}

/** Runs our own script, and has the module of numerics take its way to the host before the guest comes in. */
function prepared(context: QuickJSContext, seed: number, report: (done: number) => void): QuickJSHandle {
  const random = randomFrom(seed);
  const many = (n: number, one: () => number): QuickJSHandle => {
    const size = Number.isFinite(n) ? Math.min(Math.max(0, Math.floor(n)), mostNumbers) : 0;
    return context.newString(JSON.stringify(Array.from({ length: size }, one)));
  };
  const host = context.newFunction("host", (name, given) =>
    context.newString(answer(context.getString(name), context.getString(given))),
  );
  const draw = context.newFunction("draw", (kind, given) => {
    const n = context.getNumber(given);
    switch (context.getString(kind)) {
      case "normal":
        return context.newNumber(random.normal());
      case "below":
        return context.newNumber(random.below(n));
      case "uniforms":
        return many(n, random.uniform);
      case "normals":
        return many(n, random.normal);
      default:
        return context.newNumber(random.uniform());
    }
  });
  let told = 0;
  const progress = context.newFunction("progress", (done) => {
    const share = context.getNumber(done);
    if (!(share >= told + 0.01 && share <= 1)) return;
    told = share;
    report(share);
  });
  const script = context.unwrapResult(context.evalCode(`(${inside})`, "inside"));
  const driver = context.unwrapResult(context.callFunction(script, context.undefined, host, draw, progress));
  context.unwrapResult(context.evalCode('import "variorum";', "before", { type: "module" }));
  return driver;
}

function troubleIn(context: QuickJSContext, driver: QuickJSHandle, error: QuickJSHandle): Answer {
  const told = context.callFunction(context.getProp(driver, "told"), context.undefined, error);
  return told.error ? uncaught(context, told.error) : heard(context, told.value, { said: 1 << 16 });
}

/** What no script can catch: the limits, as the interpreter itself puts them. */
function uncaught(context: QuickJSContext, error: QuickJSHandle): Answer {
  const message = context.typeof(error) === "object" ? context.getProp(error, "message") : error;
  const text = context.typeof(message) === "string" ? context.getString(message) : "";
  return {
    trouble: /memory/.test(text)
      ? say`it used up its memory`
      : say`it broke off: ${tidy(text.slice(0, 200))}`,
  };
}

function heard(context: QuickJSContext, said: QuickJSHandle, limits: Pick<Limits, "said">): Answer {
  const length = context.getNumber(context.getProp(said, "length"));
  if (length > limits.said) return { trouble: say`it said more than ${`${limits.said >> 10} kB`}` };
  const text = context.getString(said);
  return text.startsWith("=") ? { said: text.slice(1) } : { trouble: text.slice(1) };
}
