import { expect, test } from "vitest";
import { arabic } from "../../../src/base/text/said/arabic.ts";
import { either } from "../../../src/base/text/said/either.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import { paragraph } from "../../../src/base/text/said/paragraph.ts";
import { count, say } from "../../../src/base/text/said/said.ts";
import { worded } from "../../../src/base/text/said/worded.ts";
import { refuseFewer } from "../../../src/plugin.ts";

test("whatever is said at any depth is put into words, and nothing else is touched", () => {
  const data = {
    title: say`Fit to the ${"foot"}`,
    marks: [{ at: [1, null], label: "as it is", names: [say`half`] }],
    say: "no sentence of ours",
  };
  expect(worded(data, inEnglish)).toEqual({
    title: "Fit to the foot",
    marks: [{ at: [1, null], label: "as it is", names: ["half"] }],
    say: "no sentence of ours",
  });
});

test("one of several, and sentences one after another, in either language", () => {
  expect(inEnglish(either(["a"]))).toBe("a");
  expect(inEnglish(either(["a", say`b`, "c"]))).toBe("a or b or c");
  const tongue = arabic({ "{0} or {1}": "{0} أو {1}" }, String);
  expect(inWords(either(["a", "b"]), tongue)).toBe("\u2068a\u2069 أو \u2068b\u2069");
  expect(paragraph([null])).toBe("");
  expect(inEnglish(paragraph([null, "One.", null, say`Two: ${count(2)}.`]))).toBe("One. Two: 2.");
});

test("a refusal of too few says how many were needed", () => {
  const refusal = refuseFewer(1, 3, say`pairs`);
  expect(refusal && inEnglish(refusal.message)).toBe("Unexpected 1 pairs, expected at least 3.");
  expect(refuseFewer(3, 3, say`pairs`)).toBeNull();
});
