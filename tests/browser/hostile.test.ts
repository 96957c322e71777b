import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Asked } from "../../src/host/telling/kind.ts";
import { kinds } from "../../src/host/telling/kinds.ts";
import { kindOf, listNames } from "../../src/read/grammar/kinds.ts";
import { attempt, filesByGrammar, lure } from "../outputs/hostile/by-grammar.ts";
import { toldIn } from "../outputs/page-corpus.ts";
import { walk } from "./chromium.ts";
import { smallPdf } from "./small-pdf.ts";
import { filesOf, through } from "./through.ts";
import { patience } from "./walking.ts";

const script = (text: string): string => `<< /S /JavaScript /JS (${text.replace(/[\\()]/g, "\\$&")}) >>`;

/** A paper that would run something when it is opened, closed, looked at or clicked in (ISO 32000-1, 12.6 and 12.7). */
const paper = smallPdf([{ lines: [attempt.slice(0, 60), "<img src=x onerror=ran>"] }, { lines: [] }], {
  more: {
    whole: [
      `/OpenAction ${script("window.ran = 20; app.alert(20)")} /AA << /WC ${script("app.alert(21)")} >>`,
      `/Names << /JavaScript << /Names [(a) ${script("ran = 22")}] >> >>`,
      `/AcroForm << /Fields [] /XFA (<script>ran = 23</script>) >>`,
    ].join(" "),
    page: [
      `/AA << /O ${script("app.alert(24)")} >> /Annots [`,
      `<< /Type /Annot /Subtype /Link /Rect [0 0 420 595] /A << /S /URI /URI (${lure}) >> >>`,
      `<< /Type /Annot /Subtype /Link /Rect [0 0 420 300] /A << /S /Launch /F (calc.exe) >> >>`,
      `<< /Type /Annot /Subtype /Widget /FT /Tx /T (f) /V (<img src=x onerror=ran>) /Rect [0 0 90 90] /AA << /Fo ${script("ran = 25")} >> >> ]`,
    ].join(" "),
  },
});

/** What is seen of a page: where it leads, what in it is not the program's, and what it says. */
interface Seen {
  readonly links: readonly string[];
  readonly foreign: readonly string[];
  readonly ran: unknown;
  readonly text: string;
}

/** Looks at the page that is shown, and runs there. */
const look = (): Seen => {
  const foreign = document.querySelectorAll(
    "iframe, object, embed, base, meta[http-equiv]:not([content^='default-src']), form[action], img:not([src^='blob:'], [src^='data:']), " +
      "[srcdoc], [autofocus], foreignObject, set, animate, image:not([href^='data:']), link[rel=stylesheet]:not([href^='/assets/']), script:not([src^='/assets/'])",
  );
  const own = [...foreign].filter((one) => location.protocol !== "file:" || !one.matches("script, link"));
  const handlers = [...document.querySelectorAll("*")].filter((one) =>
    one.getAttributeNames().some((name) => /^on/i.test(name)),
  );
  return {
    links: [...document.querySelectorAll("a, area, use")].map(
      (one) => one.getAttribute("href") ?? one.getAttribute("xlink:href") ?? "#",
    ),
    foreign: [...own, ...handlers].map((one) => one.outerHTML.slice(0, 200)),
    ran: (window as { ran?: unknown }).ran,
    text: document.body.textContent ?? "",
  };
};

/** Goes to a page of the app, and waits until it is shown. */
const go = (page: Page, path: string): Promise<void> =>
  page.evaluate(
    async ([to, patience]) => {
      history.pushState(null, "", to);
      const until = performance.now() + patience;
      const bare = location.pathname;
      const isThere = (): boolean => {
        const main = document.querySelector<HTMLElement>("main");
        const shown = main?.dataset["shown"];
        return (shown === bare || shown === decodeURI(bare)) && main?.querySelector("h1") instanceof Element;
      };
      while (!isThere() && performance.now() < until) await new Promise(requestAnimationFrame);
      if (!isThere()) throw new Error(`${to} is not shown`);
    },
    [path, patience] as const,
  );

/** Which of many alike pages are gone to: those of records, and two of what is looked at in several ways. */
function chosen(link: string, gone: Map<string, number>): boolean {
  if (/[?&]as-of=|-wrong-(?!0$)|part-|^\/edit\/.*-b$/.test(link)) return false;
  const [, head = ""] = link.split(/[/?]/);
  const times = (gone.get(head) ?? 0) + 1;
  gone.set(head, times);
  return times <= 2 || /^(?:record|edit|write)$/.test(head);
}

/** Goes to every page that is led to, from the first one on. */
async function throughAll(page: Page): Promise<ReadonlyMap<string, Seen>> {
  const seen = new Map<string, Seen>();
  const met = new Set(["/", "/talk/talks-a", "/image/images-endless", "/new/talks"]);
  const gone = new Map<string, number>();
  for (const path of met) {
    await go(page, path);
    const one = await page.evaluate(look);
    seen.set(path, one);
    for (const link of one.links)
      if (link.startsWith("/") && !met.has(link) && chosen(link, gone)) met.add(link);
  }
  return seen;
}

function judged(path: string, { links, foreign, ran }: Seen): void {
  expect(ran, path).toBe(undefined);
  expect(foreign, path).toEqual([]);
  expect(
    links.filter((link) => !/^(?:\/(?!\/)|#|https:\/\/)/.test(link)),
    path,
  ).toEqual([]);
}

walk(
  "nothing that a corpus says runs, leads out or is fetched, on any page that can be gone to",
  async (page) => {
    const fill = filesOf(filesByGrammar());
    await through(
      page,
      (folder) => {
        fill(folder);
        mkdirSync(join(folder, "papers"));
        for (const name of ["k1.pdf", `k1 "onload=ran=26 <img src=x onerror=ran=27>.pdf`])
          writeFileSync(join(folder, "papers", name), paper);
      },
      async ({ folder }) => {
        const seen = await throughAll(page);
        for (const [path, one] of seen) judged(path, one);
        const gone = [...seen.keys()];
        for (const list of listNames) {
          expect(
            gone.filter((path) => path.startsWith(`/record/${list}`) || path.endsWith("%40k1")).length,
            list,
          ).toBeGreaterThan(0);
          expect(seen.get("/records")?.text).toContain(kindOf(list).singular);
        }
        const all = [...seen.values()].map(({ text }) => text).join("\n");
        for (const text of [attempt.slice(0, 40), lure]) expect(all).toContain(text);
        await worked(page);
        await written(page, folder);
      },
    );
  },
);

/** Presents the talk, reads the paper, and searches. */
async function worked(page: Page): Promise<void> {
  await go(page, "/talk/talks-a");
  await page.getByRole("button", { name: "Present", exact: true }).click();
  await page.locator(".presenting .slide").waitFor();
  for (let slide = 0; slide < 3; slide++) {
    await page.keyboard.press("PageDown");
    judged("presenting", await page.evaluate(look));
  }
  await page.keyboard.press("Escape");
  await go(page, "/paper/k1");
  await page.locator("canvas").first().waitFor();
  await page.locator(".paper-text span").first().click();
  judged("paper", await page.evaluate(look));
  await go(page, "/image/images-endless");
  await page.getByText("more often than can be drawn").waitFor();
  await page.locator("#search-field").fill("onerror");
  await page.locator("#search-field").press("Enter");
  await page.locator("a.hit").first().waitFor();
  judged("search", await page.evaluate(look));
}

const pages: Readonly<Record<string, Asked>> = {
  review: {},
  application: { examination: "examinations-a" },
  visit: { examination: "examinations-a", "with-values": true },
  page: {},
};

/** Writes each page that can be opened without the program, and opens it from its file. */
async function written(page: Page, folder: string): Promise<void> {
  const told = await toldIn(folder, {}, { plan: true, history: true });
  for (const [name, asked] of Object.entries(pages)) {
    const kind = await kinds[name]?.();
    const made = (await kind?.make(told, "html", name, asked)) ?? [];
    if ("refused" in made) throw new Error(inEnglish(made.refused));
    const file = join(folder, `.${name}.html`);
    writeFileSync(file, made[0]?.content ?? "");
    await page.goto(pathToFileURL(file).href);
    const one = await page.evaluate(look);
    judged(name, one);
    expect(one.text, name).toContain("<img src=x");
    if (name !== "page") continue;
    const ids = await page.locator("section.page").evaluateAll((all) => all.map((each) => each.id));
    expect(ids.length).toBeGreaterThan(2 * listNames.length);
    for (const id of ids) await page.evaluate((hash) => (location.hash = encodeURIComponent(hash)), id);
    judged(name, await page.evaluate(look));
  }
}
