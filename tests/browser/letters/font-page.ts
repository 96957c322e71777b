import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";

const packages = ["source-serif-4", "source-sans-3", "noto-serif", "noto-naskh-arabic"];
const folder = new URL("../../../node_modules/@fontsource/", import.meta.url);

/** The families of each face, in the order in which the app looks for a letter. */
export const families = {
  serif: `"Source Serif 4", "Noto Serif", "Noto Naskh Arabic"`,
  sans: `"Source Sans 3", "Noto Naskh Arabic"`,
} as const;

/** The bundled fonts as one style sheet that needs no other file. */
function fontSheet(): string {
  return packages
    .flatMap((name) => [400, 600].map((weight) => new URL(`${name}/${weight}.css`, folder)))
    .map((sheet) =>
      readFileSync(sheet, "utf8").replace(/src: url\((\S+?\.woff2)\)[^;]*;/g, (_, file: string) => {
        const bytes = readFileSync(new URL(file, sheet)).toString("base64");
        return `src: url(data:font/woff2;base64,${bytes}) format("woff2");`;
      }),
    )
    .join("\n");
}

/** Opens a page that has the bundled fonts and a canvas to measure on. */
export async function openFontPage(page: Page): Promise<void> {
  await page.setContent(`<!doctype html><style>${fontSheet()}</style><canvas></canvas>`);
}

/** Advance widths of texts in px, as Chromium sets them. */
export async function widthsOnPage(
  page: Page,
  font: { readonly face: keyof typeof families; readonly weight: 400 | 600; readonly size: number },
  texts: readonly string[],
): Promise<readonly number[]> {
  const css = `${font.weight} ${font.size}px ${families[font.face]}`;
  return page.evaluate(
    async ({ css, texts }) => {
      await document.fonts.load(css, texts.join(""));
      const brush = document.querySelector("canvas")?.getContext("2d");
      if (!brush) throw new Error("no canvas");
      brush.font = css;
      return texts.map((text) => brush.measureText(text).width);
    },
    { css, texts },
  );
}
