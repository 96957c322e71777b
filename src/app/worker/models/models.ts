import { groundOf, stand, tellingOf } from "../../../build.ts";
import type { Checked, Ground, Lens, Memo, Model, SourceFile, Stood } from "../../../build.ts";
import type { Finding } from "../../../base/finding.ts";
import type { Plugin } from "../../../plugin.ts";
import { inSlices } from "../planning/slices.ts";
import type { Progress, Turns } from "../planning/slices.ts";
import { carriedFrom, stillSaid, withCarried } from "./carried.ts";
import type { Carried } from "./carried.ts";

/** The models of a corpus under lenses: what stands is there at once, what it rests on and what the rules find follows. */
export interface Models {
  /** Other files, or other plug-ins: everything is built again. */
  readonly take: (files: readonly SourceFile[]) => void;
  /** Numbers came: what stands is judged again, nothing is read again. */
  readonly renumber: () => void;
  /** What stands; findings alone where the corpus cannot be read. */
  readonly stood: (lens: Lens) => Stood | { readonly findings: readonly Finding[] };
  /** The model as far as it is there: whole, or with what was last said of it carried along. */
  readonly now: (lens: Lens) => Checked<Model>;
  /**
   * How the model may be shown: whole; meanwhile with what was carried along; of a large corpus bare, where nothing was;
   * null where it is to be waited for. What is left is made in slices, and told when it is there.
   */
  readonly shown: (lens: Lens, whenWhole: () => void) => "whole" | "meanwhile" | "bare" | null;
}

/** What takes no longer than this is waited for, in ms: a page that changes twice at once is worse. */
const soon = 60;

/** From so many records on, what the rules find is not waited for: that would take longer than anybody waits. */
const many = 5000;

/** Models that are made beside everything else that a worker does. */
export function modelsBeside(
  memo: Memo,
  plugins: () => readonly Plugin[],
  turns: Turns,
  large: number = many,
): Models {
  let files: readonly SourceFile[] = [];
  let grounds = new Map<string, ReturnType<typeof groundOf>>();
  /** What the files said before they were changed, as far as they could be read. */
  let earlier: Ground | undefined;
  let stoods = new Map<string, Stood>();
  let carried = new Map<string, Carried>();
  const meanwhile = new WeakMap<Stood, Checked<Model>>();
  /** How long the last model took beyond what stands, in ms. */
  let cost = 0;

  function* telling(stood: Stood): Generator<Progress, Checked<Model>> {
    const work = tellingOf(stood, { plugins: plugins(), memo: memo.compute });
    for (let spent = 0; ;) {
      const begun = turns.now();
      const slice = work.next();
      spent += turns.now() - begun;
      if (slice.done === true) {
        cost = spent;
        return slice.value;
      }
      yield { done: 0, of: 0 };
    }
  }
  const slices = inSlices<Stood, Checked<Model>>(telling, turns);

  const groundUnder = ({ suppose }: Lens): ReturnType<typeof groundOf> => {
    const key = JSON.stringify(suppose ?? null);
    const ground = grounds.get(key) ?? groundOf(files, memo.read, suppose, earlier);
    grounds.set(key, ground);
    return ground;
  };
  const isRead = (ground: ReturnType<typeof groundOf>): ground is Ground => "graph" in ground;
  const stood = (lens: Lens): Stood | { readonly findings: readonly Finding[] } => {
    const ground = groundUnder(lens);
    if (!isRead(ground)) return ground;
    const key = JSON.stringify(lens);
    const one = stoods.get(key) ?? stand(ground, plugins(), memo.compute, lens);
    stoods.set(key, one);
    return one;
  };
  const now = (lens: Lens): Checked<Model> => {
    const one = stood(lens);
    if (!("graph" in one)) return { model: null, findings: one.findings };
    const known = slices.made(one) ?? meanwhile.get(one);
    if (known) return known;
    const made = withCarried(one, stillSaid(one, carried.get(JSON.stringify(lens))));
    meanwhile.set(one, made);
    return made;
  };
  /** Settings may withhold something, or have other rules: what was said under the ones before is not said again. */
  const settings = (): string => files.find(({ path }) => path === "corpus.yaml")?.text ?? "";
  const carry = (): void => {
    const next = new Map<string, Carried>();
    for (const [key, one] of stoods) {
      const made = slices.made(one);
      const kept = (made && carriedFrom(made)) ?? carried.get(key);
      if (kept) next.set(key, kept);
    }
    carried = next;
    stoods = new Map();
    slices.stop();
  };
  return {
    take: (next) => {
      const before = settings();
      carry();
      files = next;
      earlier = [...grounds.values()].find(isRead) ?? earlier;
      grounds = new Map();
      if (settings() !== before) carried = new Map();
    },
    renumber: carry,
    stood,
    now,
    shown: (lens, whenWhole) => {
      const one = stood(lens);
      if (!("graph" in one)) return "whole";
      const isLarge = one.graph.records.size >= large;
      if (slices.made(one) === null)
        slices.work(one, { progress: () => undefined, done: whenWhole }, cost > soon || isLarge ? 0 : soon);
      if (slices.made(one) !== null) return "whole";
      if (stillSaid(one, carried.get(JSON.stringify(lens)))) return "meanwhile";
      return isLarge ? "bare" : null;
    },
  };
}
