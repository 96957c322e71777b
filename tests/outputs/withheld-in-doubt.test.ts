import { expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { SourceFile } from "../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { toldOf } from "../../src/host/telling/told.ts";
import type { AtWork } from "../../src/host/telling/told.ts";

const things = "artefacts:\n  - { id: ring, name: The ring }\n  - { id: pit, name: The pit }\n";

/** Why nothing of a corpus may be written; null where it may. */
async function refusal(
  settings: string,
  others: Readonly<Record<string, string>> = {},
): Promise<string | null> {
  const texts = { "corpus.yaml": `title: T\n${settings}`, "things.yaml": things, ...others };
  const files = Object.entries(texts).map(([path, text]): SourceFile => ({ path, text }));
  const memo = emptyMemo();
  const under: AtWork["under"] = (lens, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens, reach });
  const told = await toldOf(
    "",
    { files, plugins, memo, under },
    { lens: {}, reach: {}, today: "2026-11-26" },
  );
  if ("unreadable" in told) throw new Error("unreadable");
  return "refused" in told ? inEnglish(told.refused) : null;
}

const doubt = (file: string): string =>
  `Unexpected error in \`withhold\` of \`${file}\`, expected ids that are there: nothing is written before it is known what is withheld`;

test.each([
  ["a map", "withhold: { ring: yes }\n"],
  ["a list in a list", "withhold: [[ring]]\n"],
  ["an id that is not there", "withhold: [rnig]\n"],
  ["an id that is not there beside one that is", "withhold:\n  - ring\n  - pti\n"],
])("nothing is written where what is withheld is %s", async (_, settings) => {
  expect(await refusal(settings)).toBe(doubt("corpus.yaml"));
});

test("what is withheld for certain is written without it, whatever else is amiss", async () => {
  for (const settings of [
    "",
    "withhold:\n",
    "withhold: [ring]\n",
    "withhold: [ring]\naccept: 3\nplus-minus: x\n",
  ])
    expect(await refusal(settings)).toBeNull();
});

test("the same holds for what another corpus withholds of what is taken from it", async () => {
  const use = "use: [{ as: down, folder: ../register }]\n";
  const register = (settings: string) => ({
    "../register/corpus.yaml": `title: R\n${settings}`,
    "../register/things.yaml": things,
  });
  expect(await refusal(use, register("withhold: { ring: yes }\n"))).toBe(doubt("../register/corpus.yaml"));
  expect(await refusal(use, register("withhold: [ring]\nbibliography: lost.bib\n"))).toBeNull();
});
