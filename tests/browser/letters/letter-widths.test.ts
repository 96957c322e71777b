import { writeFileSync } from "node:fs";
import { expect } from "vitest";
import { textWidth } from "../../../src/show/map/letters/letters.ts";
import { arabicWidths, letterWidths } from "../../../src/show/map/letters/widths-table.ts";
import { walk } from "../chromium.ts";
import { openFontPage, widthsOnPage } from "./font-page.ts";
import { measuredTable, tableText } from "./measured-table.ts";

// `WRITE_WIDTHS=1 npm test -- letter-widths` writes the table anew from the bundled fonts.
walk("the table of widths is what Chromium measures in the bundled fonts", async (page) => {
  await openFontPage(page);
  const table = await measuredTable(page);
  if (process.env["WRITE_WIDTHS"] === "1") {
    const place = new URL("../../../src/show/map/letters/widths-table.ts", import.meta.url);
    writeFileSync(place, tableText(table));
    return;
  }
  expect(letterWidths).toEqual(table.letters);
  expect(arabicWidths).toEqual(table.arabic);
});

const texts = [
  "The posts of the inner ring stood deep enough to bear the span of a roof.",
  "No fire burned inside the inner ring; AWAY Tower, “To Vale” — Wyoming’s ffi ﬁ.",
  "0.97 ± 0.04 m, 1937–1998, p < 0.01, −12.5 °, 2 × 3 ≈ 6 ≥ 5",
  "Größe, élan, Łódź, Žižkov, naïve, São, Ærø, œuvre, ÀÉÎÕÜ, ďábel",
  "Ο δακτύλιος έφερε στέγη· τὸν δακτύλιον, ὃς ἔφερεν ὄροφον, ᾄδω ᾼ Ἀθῆναι",
  "Кольцо несло крышу, Щёлково",
  "حملت الحلقة الداخلية سقفًا، سلمى حدّاد لا إلى ١٩٩٨",
  "by function, Oyelaran 2004",
];

walk("no text is wider than its estimate by more than 2 %", async (page) => {
  await openFontPage(page);
  for (const face of ["serif", "sans"] as const)
    for (const weight of [400, 600] as const)
      for (const size of [13, 16, 18]) {
        const font = { face, weight, size };
        const real = await widthsOnPage(page, font, texts);
        texts.forEach((text, at) => {
          const estimate = textWidth(text, face, size, weight);
          expect(estimate, `${face} ${weight} ${size}: ${text}`).toBeGreaterThanOrEqual(
            (real[at] ?? 0) * 0.98,
          );
          expect(estimate, `${face} ${weight} ${size}: ${text}`).toBeLessThanOrEqual((real[at] ?? 0) * 1.2);
        });
      }
});
