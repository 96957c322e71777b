import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { arabicSaid } from "../../../src/app/words/arabic/said/index.ts";
import { arabic } from "../../../src/base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";

const corpora = fileURLToPath(new URL("../../corpora/", import.meta.url));
const tongue = arabic(arabicSaid, String);

/** What is left of a text without the stretches that are kept together: texts of the corpus, and what a file has or is to have. */
function ownWords(text: string): string {
  const without = text.replace(/\u2068[^\u2068\u2069]*\u2069/gu, "");
  return without === text ? text : ownWords(without);
}

const folders = ["planted", ...readdirSync(`${corpora}fixes`).map((name) => `fixes/${name}/before`)];

test.each(folders)("%s: every mistake and its mending is told in Arabic, whole", (folder) => {
  const { findings } = build(readCorpusFolder(`${corpora}${folder}`), plugins, emptyMemo());
  if (folder === "planted") expect(findings.length).toBeGreaterThanOrEqual(40);
  for (const { message, fix } of findings) {
    for (const said of [message, ...(fix ? [fix.label] : [])]) {
      expect(typeof said, inEnglish(said)).toBe("object");
      expect(ownWords(inWords(said, tongue)), inEnglish(said)).not.toMatch(/[A-Za-z]/);
    }
  }
});
