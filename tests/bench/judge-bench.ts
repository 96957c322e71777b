import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { median } from "../../src/base/numeric/sample.ts";
import { randomFrom } from "../../src/base/outcome/random.ts";
import { derive } from "../../src/derive/derive.ts";
import { judge } from "../../src/judge/judge.ts";
import { reviser } from "../../src/judge/revise.ts";
import type { Change } from "../../src/judge/revise.ts";
import { frameworkProgram } from "../../src/judge/solver/framework.ts";
import type { Program } from "../../src/judge/solver/program.ts";
import { revisable } from "../../src/judge/solver/revision/revision.ts";
import type { Edit } from "../../src/judge/solver/revision/revision.ts";
import { FALSE, TRUE, wellFounded } from "../../src/judge/solver/well-founded.ts";
import { link } from "../../src/link/link.ts";
import { plugins } from "../../plugins/index.ts";
import { readCorpus } from "../../src/read/read.ts";
import { corpusOf } from "../make-corpus/corpus.ts";
import type { Row } from "./search-bench.ts";

/** A framework by places: `attackers[k]` attacks `attacked[k]`, no pair twice. */
interface Attacks {
  readonly count: number;
  readonly attackers: Int32Array;
  readonly attacked: Int32Array;
}

/** How many arguments are in and out. */
interface Labels {
  readonly in: number;
  readonly out: number;
}

interface Timed<T> {
  readonly ms: number;
  readonly result: T;
}

/** Goals 2 and 3: the well-founded model of 100,000 arguments, and of 10,000 after one record has changed. */
export default async function bench(): Promise<readonly Row[]> {
  return [...(await labelling(randomAttacks(100_000, 250_000, 2))), ...revising()];
}

function randomAttacks(count: number, attacks: number, seed: number): Attacks {
  const random = randomFrom(seed);
  const pairs = new Set<number>();
  while (pairs.size < attacks) pairs.add(random.below(count) * count + random.below(count));
  return {
    count,
    attackers: Int32Array.from(pairs, (pair) => Math.floor(pair / count)),
    attacked: Int32Array.from(pairs, (pair) => pair % count),
  };
}

async function labelling(attacks: Attacks): Promise<readonly Row[]> {
  const ours = (): Timed<Labels> => onProcessor(() => ourLabels(attacks));
  const compiled = compiledPeer(attacks);
  const what = `${attacks.count} arguments, ${attacks.attackers.length} attacks, built and judged, of the processor`;
  // What is compiled while it runs is measured once it is compiled.
  for (let round = 0; round < 15; round++) ours();
  const rows = compiled
    ? [row("2", `${what}, against C`, ...(await inTurn(ours, compiled.run, 25)), 3.5)]
    : [];
  compiled?.close();
  const plain = (): Timed<Labels> => onProcessor(() => plainLabels(attacks));
  return [...rows, row("2", `${what}, against Map and Set`, ...(await inTurn(ours, plain, 5)), 0.05)];
}

/** Times of ours and of a peer in turn; they must label alike. */
async function inTurn(
  ours: () => Timed<Labels>,
  peer: () => Timed<Labels> | Promise<Timed<Labels>>,
  rounds: number,
): Promise<readonly [ours: readonly number[], peer: readonly number[]]> {
  const [mine, theirs]: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round++) {
    const [one, other] = [ours(), await peer()];
    if (one.result.in !== other.result.in || one.result.out !== other.result.out)
      throw new Error(`Unexpected ${JSON.stringify(other.result)}, expected ${JSON.stringify(one.result)}`);
    mine.push(one.ms);
    theirs.push(other.ms);
  }
  return [mine, theirs];
}

function ourLabels({ count, attackers, attacked }: Attacks): Labels {
  const values = wellFounded(frameworkProgram(count, attackers, attacked));
  let [inside, out] = [0, 0];
  for (let argument = 0; argument < count; argument++) {
    if (values[argument] === TRUE) inside++;
    else if (values[argument] === FALSE) out++;
  }
  return { in: inside, out };
}

/** The labelling as one writes it down first: a Map of Sets each way, and names for labels. */
function plainLabels({ count, attackers, attacked }: Attacks): Labels {
  const targets = new Map<number, Set<number>>();
  const left = new Map<number, Set<number>>();
  for (let argument = 0; argument < count; argument++) {
    targets.set(argument, new Set());
    left.set(argument, new Set());
  }
  attackers.forEach((from, k) => {
    const to = attacked[k] ?? 0;
    targets.get(from)?.add(to);
    left.get(to)?.add(from);
  });
  const label = new Map<number, "in" | "out">();
  const waiting = [...left.keys()].filter((argument) => left.get(argument)?.size === 0);
  for (const argument of waiting) label.set(argument, "in");
  for (let argument = waiting.pop(); argument !== undefined; argument = waiting.pop()) {
    for (const beaten of targets.get(argument) ?? []) {
      if (label.has(beaten)) continue;
      label.set(beaten, "out");
      for (const freed of targets.get(beaten) ?? []) {
        const still = left.get(freed);
        still?.delete(beaten);
        if (still?.size !== 0 || label.has(freed)) continue;
        label.set(freed, "in");
        waiting.push(freed);
      }
    }
  }
  const found = [...label.values()];
  return { in: found.filter((one) => one === "in").length, out: found.filter((one) => one === "out").length };
}

/** The labelling in C, compiled now; null where there is no compiler. */
function compiledPeer({ count, attackers, attacked }: Attacks) {
  const folder = mkdtempSync(join(tmpdir(), "grounded-"));
  const [binary, data] = [join(folder, "grounded"), join(folder, "attacks")];
  const source = fileURLToPath(new URL("grounded.c", import.meta.url));
  const end = (): void => rmSync(folder, { recursive: true });
  const made = ["cc", "gcc", "clang"].some(
    (compiler) => spawnSync(compiler, ["-O3", "-o", binary, source], { stdio: "ignore" }).status === 0,
  );
  if (!made) {
    end();
    return null;
  }
  writeFileSync(data, Int32Array.from([count, attackers.length, ...attackers, ...attacked]));
  // One process for all rounds: every fork makes this process touch its pages anew.
  const child = spawn(binary, [data], { stdio: ["pipe", "pipe", "inherit"] });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const run = async (): Promise<Timed<Labels>> => {
    child.stdin.write("\n");
    const { value, done } = await lines.next();
    if (done === true) throw new Error("The compiled labelling ended, expected a line");
    const [time = 0, inside = 0, out = 0] = value.split(" ").map(Number);
    return { ms: time / 1e6, result: { in: inside, out } };
  };
  const close = (): void => {
    child.stdin.end();
    end();
  };
  return { run, close };
}

function revising(): readonly Row[] {
  const framework = randomAttacks(10_000, 25_000, 3);
  const program = frameworkProgram(framework.count, framework.attackers, framework.attacked);
  const random = randomFrom(5);
  const one = (): Edit => new Map([[random.below(framework.count), []]]);
  const made = reading();
  const ids = made.judgement.compiled.arguments.filter(({ id, from }) => id === from).map(({ id }) => id);
  const gone = (): number => made.judgement.compiled.atoms.get(ids[random.below(ids.length)] ?? "") ?? 0;
  const evidence = made.graph.list("observations").map(({ id }) => id);
  const changes = (): Change => ({
    gone: [
      (random.uniform() < 0.5 ? ids[random.below(ids.length)] : evidence[random.below(evidence.length)]) ??
        "",
    ],
  });
  const revise = reviser(made.graph, made.derivations, made.judgement);
  const whole = Array.from({ length: 300 }, () => onProcessor(() => revise(changes())).ms);
  const corpus = `a corpus of ${ids.length} arguments`;
  const figure = { goal: "3", peer: null, ratio: null, goalRatio: null, unit: "ms" };
  return [
    besideWhole(
      `one argument of ${framework.count} gone, its standing and all that hangs on it`,
      program,
      one,
    ),
    besideWhole(
      `one argument gone in ${corpus}`,
      made.judgement.compiled.program,
      () => new Map([[gone(), []]]),
    ),
    {
      ...figure,
      what: `one record gone in ${corpus}, all standings, of the processor: median`,
      ours: median(whole),
      goalFigure: 16,
    },
    {
      ...figure,
      what: `one record gone in ${corpus}, all standings, of the processor: 99th in a hundred`,
      ours: whole.toSorted((a, b) => a - b)[Math.floor(0.99 * whole.length)] ?? 0,
      goalFigure: 16,
    },
  ];
}

/** Edits of a program beside the model of the whole of it, in turn; the two are the same, which is checked. */
function besideWhole(what: string, program: Program, edit: () => Edit): Row {
  const { values, revise } = revisable(program);
  const ours: number[] = [];
  const peer: number[] = [];
  for (let round = 0; round < 300; round++) {
    const change = edit();
    const mine = timed(() => revise(change));
    ours.push(mine.ms);
    const without = new Uint8Array(program.atomCount);
    for (const atom of change.keys()) without[atom] = 1;
    const whole = timed(() => wellFounded(program, { without }));
    peer.push(whole.ms);
    whole.result.forEach((value, atom) => {
      if (value !== (mine.result.get(atom) ?? values[atom]))
        throw new Error(`Unexpected value of atom ${atom}`);
    });
  }
  return row("3", what, ours, peer, 0.25);
}

/** A made corpus of 10,000 arguments, judged; its numbers are not computed, and so bear on nothing. */
function reading() {
  const files = corpusOf({ records: 30_000, arguments: 10_000, seed: 11 });
  const read = readCorpus(files, new Map());
  if (!("settings" in read)) throw new Error("no corpus");
  const graph = link(read);
  const derivations = derive(graph, plugins, new Map(), {});
  return { graph, derivations, judgement: judge(graph, derivations, {}) };
}

function row(
  goal: string,
  what: string,
  ours: readonly number[],
  peer: readonly number[],
  goalRatio: number,
): Row {
  const [mine, theirs] = [median(ours), median(peer)];
  return { goal, what, ours: mine, peer: theirs, ratio: mine / theirs, goalRatio, unit: "ms" };
}

function timed<T>(work: () => T): Timed<T> {
  const begun = performance.now();
  const result = work();
  return { ms: performance.now() - begun, result };
}

/** Milliseconds of the processor, which other work on the machine lengthens less than those of the clock. */
function onProcessor<T>(work: () => T): Timed<T> {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  return { ms: (user + system) / 1000, result };
}
