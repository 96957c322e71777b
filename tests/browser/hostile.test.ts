import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { filesOf, through, visit } from "./through.ts";

const bad = `<img src=x onerror="window.ran=1"><script>window.ran=1</script><svg/onload=window.ran=1>`;
const lure = `javascript:window.ran=1`;
const key = `k'onload=1`;

/** Every kind of record, with markup in every field that takes text. */
const records = {
  scholars: [{ id: "s", name: `Ada ${bad}`, "known-as": [bad], note: bad }],
  artefacts: [
    {
      id: "thing",
      name: `Thing ${bad}`,
      kind: bad,
      material: lure,
      numbers: { [bad]: bad },
      "found-at": bad,
      "held-at": bad,
      access: { keeper: bad, permit: bad, "lead-time": bad, note: bad },
      history: [{ when: "1998", what: bad, kind: "loss" }],
    },
    { id: "thing/javascript-window-ran-1", name: lure },
  ],
  images: [{ id: "i", of: "thing", file: `images/${lure}.svg`, credit: bad, licence: lure, "made-by": bad }],
  questions: [{ id: "q", text: `Why ${bad}?`, answers: ["a", "b"] }],
  claims: [
    { id: "a", text: `Because ${bad}`, dates: [{ event: bad, after: "1998" }] },
    { id: "b", text: `Not ${bad}`, short: `<b onclick=ran>${lure}` },
  ],
  passages: [
    {
      id: "p",
      at: bad,
      quote: bad,
      lang: `"><b>`,
      translation: bad,
      paraphrase: lure,
      from: "k1",
      selector: { type: bad },
    },
  ],
  positions: [{ id: "h", who: "s", claim: "a", stance: "holds", words: bad, from: `k1 ${bad}` }],
  observations: [{ id: "o", of: "thing", text: `Seen ${bad}`, feature: bad, from: "p" }],
  measurements: [
    {
      id: "m",
      of: "thing",
      dimension: `width ${bad}`,
      value: "3 m",
      condition: bad,
      between: bad,
      instrument: bad,
    },
  ],
  relations: [{ id: "r", earlier: bad, later: lure, because: bad }],
  arguments: [{ id: "g", because: ["o", "m"], therefore: "a", text: bad, "why-strength": bad, from: "k1" }],
  derivations: [
    { id: "d", plugin: bad, inputs: { [bad]: { of: bad } }, text: bad, parameters: { unit: lure } },
    {
      id: "d2",
      plugin: "unit-fit",
      inputs: { values: { of: "thing", dimension: bad } },
      text: `Number ${bad}`,
    },
  ],
  examinations: [
    { id: "e", of: "thing", method: bad, outcomes: [{ id: "yes", text: bad, therefore: ["a"] }] },
  ],
  talks: [{ id: "t", title: `Talk ${bad}`, steps: [{ show: ["a"], text: bad, notes: bad }] }],
  searches: [{ id: "f", where: bad, words: bad }],
  readings: [{ id: "z", from: "k1", status: "read" }],
  [bad]: [{ id: bad }],
};

walk("shows markup in any field of any kind as text, on every sheet", async (page) => {
  const corpus = filesOf({
    [`"onload=window.ran=1 <b>/<img src=x onerror=ran>.yaml`]: records,
    "broken.yaml": `claims:\n  - id: ${bad}\n    text: [`,
    "sources.json": [csl("k1"), csl(key)],
    "corpus.yaml": { title: `Corpus ${bad}`, bibliography: "sources.json" },
  });
  await through(page, corpus, async () => {
    await visit(page, "/records");
    await page.locator(".index a").first().waitFor();
    const sheets = await page
      .locator(".index a")
      .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
    for (const list of Object.keys(records).filter((name) => name !== bad && name !== "derivations")) {
      await expect.poll(() => page.locator("main").textContent(), { message: list }).toContain(list);
    }
    expect(sheets.length).toBeGreaterThanOrEqual(18);
    for (const path of ["/", "/question/q", "/map", "/outline", "/findings", "/records", ...sheets]) {
      await visit(page, path);
      await page.locator("h1").waitFor();
      await expect.poll(() => page.locator("body").textContent(), { message: path }).toContain("<img src=x");
      expect(await page.evaluate(() => "ran" in window), path).toBe(false);
      expect(
        await page.locator("main img, main script, main iframe, main b, main [onload]").count(),
        path,
      ).toBe(0);
      const targets = await page
        .locator("a")
        .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
      for (const target of targets) expect(target).toMatch(/^(\/|#page$)/);
    }
  });
});

function csl(id: string): object {
  return {
    id,
    type: "book",
    title: `Title ${bad}`,
    author: [{ family: bad, given: lure }],
    publisher: bad,
    "container-title": bad,
    URL: lure,
    issued: { "date-parts": [[1990]] },
  };
}
