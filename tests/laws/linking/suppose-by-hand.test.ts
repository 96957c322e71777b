import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { randomFrom } from "../../../src/base/outcome/random.ts";
import type { Lens, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { demoMemo } from "../../demo-memo.ts";
import { casePlugins, filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { moreOf, readUnder } from "./supposed-model.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const memo = await demoMemo();

const caseModel = (files: readonly SourceFile[], lens: Lens = {}): Model =>
  readUnder(files, casePlugins, emptyMemo(), lens).model;

describe("supposing an outcome is the same as writing it down", () => {
  /** The bibliography entry, the records, and the source put first wherever sources are named. */
  function writtenByHand(): readonly SourceFile[] {
    const gaps = ["1.22", "1.93", "2.08", "1.78", "1.68", "1.12"].map((value, n) => {
      const post = String(n + 6).padStart(2, "0");
      return `  - { of: ring-a/post-${post}, dimension: gap, value: ${value} ± 0.03 m }`;
    });
    const film = [
      "source: film-2026",
      "observations:",
      "  - { id: film-says, of: ring-a, text: The film gives the gaps of 1937. }",
      "measurements:",
      ...gaps,
      "",
    ].join("\n");
    return [
      ...demo.map((file) => ({
        ...file,
        text: file.path.endsWith("bibliography.bib")
          ? `${file.text}\n@misc{film-2026, title={The film}, author={Measurer, Ada}}\n`
          : file.text
              .replace(/from: marrack-1999 \}/g, "from: [film-2026, marrack-1999] }")
              .replace("prefer: [marrack-1999,", "prefer: [film-2026, marrack-1999,"),
      })),
      { path: "film.yaml", text: film },
    ];
  }

  test("a measurement that takes the place of others in a derivation", () => {
    const { model } = readUnder(writtenByHand(), plugins, memo);
    const then = readUnder(demo, plugins, memo, {
      suppose: { examination: "measure-the-1937-film", outcome: "film-agrees-with-1937" },
    }).model;
    expect(model.derivations.byId.get("ring-unit")?.numbers).toEqual(
      then.derivations.byId.get("ring-unit")?.numbers,
    );
    for (const id of readUnder(demo, plugins, memo).model.judgement.standings.keys())
      expect([id, model.judgement.standings.get(id)]).toEqual([id, then.judgement.standings.get(id)]);
  });

  test("arguments and observations, on random corpora", () => {
    for (let seed = 1; seed <= 80; seed++) {
      const one = randomCase(seed);
      const random = randomFrom(seed + 7000);
      const some = (list: readonly string[]): readonly string[] => list.filter(() => random.uniform() < 0.3);
      const evidence = [
        ...one.observations.map((each) => each.id),
        ...one.measurements,
        ...one.derivations.map((each) => each.id),
        ...one.positions.map((each) => each.id),
        ...one.arguments.map((each) => each.id),
      ];
      const claims = one.claims.map((each) => each.id);
      const therefore = some(claims);
      const against = [...some(claims), ...some(evidence)];
      const strength = ["weak", "ordinary", "strong"][random.below(3)] ?? "ordinary";
      const spoken = {
        ...(therefore.length > 0 ? { therefore } : {}),
        ...(against.length > 0 ? { against } : {}),
        strength,
      };
      const look = {
        id: "look",
        of: "post",
        method: "by eye",
        outcomes: [{ id: "so", text: "It is so.", ...spoken }],
      };
      const hand = {
        observations: [{ id: "found", of: "post", text: "It is so." }],
        arguments: [
          ...therefore.map((claim, n) => ({ id: `t${n}`, because: "found", therefore: claim, strength })),
          ...against.map((target, n) => ({ id: `x${n}`, because: "found", against: target, strength })),
        ],
      };
      const asked = caseModel([...filesOf(one), moreOf({ examinations: [look] })], {
        suppose: { examination: "look", outcome: "so" },
      });
      const written = caseModel([...filesOf(one), moreOf(hand)]);
      for (const id of [...claims, ...evidence])
        expect([seed, id, asked.judgement.standings.get(id)]).toEqual([
          seed,
          id,
          written.judgement.standings.get(id),
        ]);
    }
  });

  test("and an outcome that says nothing changes no standing, on random corpora", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const files = [
        ...filesOf(randomCase(seed)),
        moreOf({
          examinations: [
            {
              id: "look",
              of: "post",
              method: "by eye",
              outcomes: [
                {
                  id: "spoilt",
                  text: "Nothing can be told.",
                  sees: [{ feature: "rust", present: "unclear" }],
                },
              ],
            },
          ],
        }),
      ];
      const before = caseModel(files);
      const then = caseModel(files, { suppose: { examination: "look", outcome: "spoilt" } });
      for (const [id, standing] of before.judgement.standings)
        expect([seed, id, then.judgement.standings.get(id)]).toEqual([seed, id, standing]);
    }
  });
});

describe("a supposed measurement in a selection (format.md 4 and 7)", () => {
  /** A gap that one source gives as 1.41 m, between landmarks where these are named. */
  function usedBy(selection: object, recorded: object = {}): readonly string[] {
    const files = [
      ...corpus(
        {
          scholars: [{ id: "ada", name: "Ada North" }],
          artefacts: [{ id: "post", name: "A post" }],
          measurements: [
            {
              id: "said",
              of: "post",
              dimension: "gap",
              value: "1.41 m",
              by: "ada",
              from: "survey",
              ...recorded,
            },
          ],
          derivations: [
            { id: "echoed", plugin: "echo", inputs: { values: selection }, parameters: { p: "0.5" } },
          ],
          examinations: [
            {
              id: "look",
              of: "post",
              method: "with a tape",
              outcomes: [
                {
                  id: "so",
                  text: "It is less.",
                  measures: [{ of: "post", dimension: "gap", value: "1.22 m" }],
                },
              ],
            },
          ],
        },
        { bibliography: ["books.bib"] },
      ),
      { path: "books.bib", text: "@book{survey, title={A survey}, author={North, Ada}, year={1998}}\n" },
    ];
    const model = caseModel(files, { suppose: { examination: "look", outcome: "so" } });
    return model.derivations.byId.get("echoed")?.used ?? [];
  }
  const supposed = "look~so~measures-1";
  const gaps = { of: "post", dimension: "gap" };

  test.each([
    ["comes before every other reading", gaps, [supposed]],
    ["is admitted by every from", { ...gaps, from: "survey" }, [supposed]],
    ["comes before every source that is preferred", { ...gaps, prefer: "survey" }, [supposed]],
    ["is nobody's", { ...gaps, by: "ada" }, ["said"]],
    ["has no basis", { ...gaps, basis: "autopsy" }, ["said"]],
    ["does not enter a list of ids", ["said"], ["said"]],
    ["can be left out like another", { ...gaps, without: "said" }, [supposed]],
  ])("%s", (_, selection, used) => {
    expect(usedBy(selection, { basis: "autopsy" })).toEqual(used);
  });

  test("is another thing than one between landmarks", () => {
    expect(usedBy(gaps, { between: "hole 1 to hole 2" })).toEqual(["said", supposed]);
  });

  test("enters nothing where it is of another kind than its dimension, and is told at its place", () => {
    const outcome = {
      id: "so",
      text: "It is heavy.",
      measures: [{ of: "post", dimension: "gap", value: "5 kg" }],
    };
    const files = corpus({
      artefacts: [{ id: "post", name: "A post" }],
      measurements: [{ id: "said", of: "post", dimension: "gap", value: "1.41 m" }],
      derivations: [{ id: "echoed", plugin: "echo", inputs: { values: gaps }, parameters: { p: "0.5" } }],
      examinations: [{ id: "look", of: "post", method: "with a balance", outcomes: [outcome] }],
    });
    const suppose = { examination: "look", outcome: "so" };
    const { model, findings } = readUnder(files, casePlugins, emptyMemo(), { suppose });
    expect(model.derivations.byId.get("echoed")?.used).toEqual(["said"]);
    const [error] = findings.filter((one) => one.level === "error");
    expect(inEnglish(error?.message ?? "")).toBe("Unexpected mass `5 kg`, expected a length for gap");
    expect(files[1]?.text.slice(error?.at?.start, error?.at?.end)).toBe('"5 kg"');
  });
});
