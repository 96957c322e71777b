import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { openPens, placesAt, readAsXml } from "./map-pens-page.ts";

for (const scale of [1, 0.5, 0.2]) {
  walk(
    `both pens draw everything at the same places at ${scale * 100} %, and the canvas has ink there`,
    async (page) => {
      await openPens(page);
      const { canvas, svg, ink, lines, stray } = await placesAt(page, scale);
      expect(canvas.map(({ what }) => what)).toEqual(svg.map(({ what }) => what));
      svg.forEach((place, n) => {
        const other = canvas[n];
        for (const side of ["left", "right", "top", "bottom"] as const) {
          const off = Math.abs((other?.[side] ?? Infinity) - place[side]);
          expect(off, `${side} of ${n}, ${place.what}`).toBeLessThanOrEqual(1);
        }
      });
      for (const { words, pixels } of ink) {
        expect(pixels, words).toBeGreaterThanOrEqual(2 * words.replace(/[\s.,…·:–−]/g, "").length);
      }
      expect(lines.length).toBeGreaterThan(10);
      expect(lines.reduce((sum, share) => sum + share, 0) / lines.length).toBeGreaterThan(0.8);
      expect(stray).toBe(0);
      if (scale < 1) return;
      const words = svg.map(({ what }) => what);
      expect(words).toContain("Ὁ κύκλος ὁ ἐντὸς ἀνοικτὸς ἦν.");
      expect(words).toContain("الحلقة الداخلية كانت مسقوفة");
      expect(words.some((one) => one.includes("−4 kN"))).toBe(true);
    },
  );
}

walk("the file is well-formed XML, whatever the words", async (page) => {
  await openPens(page);
  const { error, texts } = await readAsXml(page);
  expect(error).toBe(null);
  expect(texts).toBeGreaterThan(60);
});
