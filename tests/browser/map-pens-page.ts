import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { build } from "vite";
import type * as Entry from "./map-pens-entry.ts";

declare const pens: typeof Entry;

const modules = new URL("../../node_modules/", import.meta.url);

function fontRules(): string {
  const files = ["source-serif-4", "source-sans-3", "noto-serif", "noto-naskh-arabic"].flatMap((name) =>
    ["400", "600"].map((weight) => ({ name, weight })),
  );
  return files
    .map(({ name, weight }) => {
      const folder = new URL(`@fontsource/${name}/`, modules);
      return readFileSync(new URL(`${weight}.css`, folder), "utf8").replace(
        /url\(\.\/(files\/[^)]+\.woff2)\)/g,
        (_, file: string) =>
          `url(data:font/woff2;base64,${readFileSync(new URL(file, folder)).toString("base64")})`,
      );
    })
    .join("\n");
}

/** Opens a page with the pens, the fixture and the bundled letters. */
export async function openPens(page: Page): Promise<void> {
  const entry = fileURLToPath(new URL("map-pens-entry.ts", import.meta.url));
  const made = await build({
    configFile: false,
    logLevel: "warn",
    build: { write: false, lib: { entry, formats: ["iife"], name: "pens" } },
  });
  const [output] = Array.isArray(made) ? made : [made];
  if (!output || !("output" in output)) throw new Error("the pens were not built");
  await page.setContent("<!doctype html><html lang='en'><body style='margin:0'></body></html>");
  await page.addStyleTag({ content: fontRules() });
  await page.addScriptTag({ content: output.output[0].code });
  await page.evaluate(async () => {
    await Promise.all([...document.fonts].map((face) => face.load()));
  });
}

/** Draws the fixture with both pens from one distance, and says where everything lies. */
export async function placesAt(page: Page, scale: number): Promise<Entry.Placed> {
  return page.evaluate((zoom) => pens.placesAt(zoom), scale);
}

/** Reads the fixture's file as XML; gives what the parser complains of, and how many texts there are. */
export async function readAsXml(page: Page): Promise<ReturnType<typeof Entry.readAsXml>> {
  return page.evaluate(() => pens.readAsXml());
}
