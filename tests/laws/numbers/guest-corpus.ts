import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { plugins } from "../../../plugins/index.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { Checked, Model, Outcome, Run, SourceFile } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { declaredBy, runGuest } from "../../../src/host/guest/guest.ts";
import type { Guest } from "../../../src/host/guest/guest.ts";
import { computing } from "../../../src/host/guest/sandbox.ts";
import type { Limits } from "../../../src/host/guest/sandbox.ts";
import { standInFor } from "../../../src/host/guest/stand-in.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";

const wasm = createRequire(import.meta.url).resolve("@jitl/quickjs-wasmfile-release-sync/wasm");

/** The interpreter, compiled once for all tests of a file. */
export const engine = await WebAssembly.compile(readFileSync(wasm));

/** Limits that a test can wait for. */
export const short: Limits = { ...computing, milliseconds: 800 };

/** A guest by the text of its file. */
export function guestOf(text: string, name = "widest"): Guest {
  return { name, file: `plugins/${name}.js`, hash: hashOf(text), text };
}

/** What a guest's file is made of, where a test wants another part than the good one. */
interface Parts {
  readonly before?: string;
  readonly compute?: string;
  readonly figure?: string;
  readonly sentence?: string;
  readonly id?: string;
  readonly more?: string;
}

/** A plug-in that gives the widest of some widths with the share of it that is the mean; or a bad one instead. */
export function guestText(parts: Parts = {}): string {
  const compute =
    parts.compute ??
    `const widths = values.map((one) => one.quantity.value);
     const value = Math.max(...widths);
     report(0.5);
     return { numbers: { widest: { value, low: value - 0.1, high: value + 0.1 },
                         share: { value: mean(widths) / value, low: null, high: null },
                         drawn: { value: random.normal() + Math.random() + Math.exp(random.uniforms(3)[2]), low: null, high: null } },
              warnings: ["wide"], data: { at: values[widths.indexOf(value)].artefact, widths } };`;
  return `import { mean, median, refuse, formatNumber, studentQuantile } from "variorum";
${parts.before ?? ""}
export default {
  id: "${parts.id ?? "widest"}", version: "1", title: "Widest", doc: "The widest of some widths.",
  sources: ["None: made up for a test"],
  inputs: [{ name: "values", kind: "measurements", doc: "the widths" }],
  parameters: [{ name: "times", kind: "number", doc: "how often", default: "2" }],
  numbers: [{ name: "widest", kind: "input", doc: "the widest" }, { name: "share", kind: "number", doc: "the mean as a share of it" },
            { name: "drawn", kind: "number", doc: "a draw" }],
  cautions: [{ id: "wide", text: "The widest says little of the rest.", whenMet: true }],
  ${parts.more ?? ""}
  compute({ values }, settings, { random, report, looks }, recorded) { ${compute} },
  figure(computation, settings, name) { ${
    parts.figure ??
    `return { title: "Widths", panels: [{ title: "Widths", caption: "Each width is a dot.", shows: "together",
       x: { label: "place", unit: "1" }, y: { label: "width", unit: "m" },
       marks: [{ mark: "dots", label: "widths", dots: computation.data.widths.map((width, i) => ({ at: [i, width], label: i === 0 ? name(computation.data.at) : "" })) }] }] };`
  } },
  sentence(computation, settings, name) { ${
    parts.sentence ??
    `return "The widest is " + name(computation.data.at) + " with " + formatNumber(computation.numbers.widest.value) + " m.";`
  } },
};
`;
}

const things = ["hut", "barn", "byre", "shed"];
const widths = ["4.20 m", "7.50 m", "5.00 m", "3.30 m"];

/** The records: four things with their widths, and a claim that the plug-in's number bears on. */
export const records = {
  artefacts: things.map((name) => ({ id: name, name: `The ${name}` })),
  measurements: things.map((of, i) => ({ id: `w-${of}`, of, dimension: "width", value: widths[i] ?? "" })),
  claims: [{ id: "wide", text: "Something there was wider than seven metres." }],
  derivations: [
    {
      id: "how-wide",
      plugin: "widest",
      text: "The widest of four",
      inputs: { values: { of: things, dimension: "width" } },
      "bears-on": [{ claim: "wide", supports: { widest: "> 7 m" } }],
    },
  ],
};

/** The corpus as files, with its plug-in. */
export function filesWith(text: string, settings = ""): readonly SourceFile[] {
  return [
    { path: "corpus.yaml", text: `title: Widths\n${settings}` },
    { path: "plugins/widest.js", text },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
}

/** A corpus evaluated in this thread, with the guests that are allowed; and every outcome there was. */
export async function evaluatedWith(
  files: readonly SourceFile[],
  allowed: readonly Guest[],
  limits: Limits = computing,
): Promise<Checked<Model> & { readonly outcomes: ReadonlyMap<string, Outcome> }> {
  const declared = await Promise.all(allowed.map((guest) => declaredBy(engine, guest, limits)));
  const all = [...plugins, ...declared.map(standInFor)];
  const memo = emptyMemo();
  const sandboxed = (run: Run): Promise<Outcome> | null => {
    const guest = declared.find((one) => one.name === run.plugin);
    return guest ? runGuest(engine, guest, run, { limits }) : null;
  };
  const checked = await evaluate(files, all, memo, computingHere(plugins, sandboxed));
  return { ...checked, outcomes: memo.compute };
}

/** The outcome of the corpus's one derivation with a guest of that text. */
export async function outcomeOf(text: string, limits: Limits = computing): Promise<Outcome> {
  const { outcomes, model } = await evaluatedWith(filesWith(text), [guestOf(text)], limits);
  const derived = model?.derivations.byId.get("how-wide");
  const outcome = derived?.run ? outcomes.get(derived.run.key) : undefined;
  return outcome ?? { status: "failed", why: derived?.why ?? "nothing was derived" };
}

/** What a guest tells by refusing: a way to see from outside what it sees inside. */
const telling = (what: string, before = ""): string =>
  guestText({ before, compute: `return refuse("told", String(${what}));` });

/** What a guest tells of what it sees inside. */
export async function told(what: string, before = ""): Promise<string> {
  const outcome = await outcomeOf(telling(what, before));
  return outcome.status === "computed" ? "computed" : inEnglish(outcome.why);
}
