import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { endlessIn } from "../../../src/show/artefacts/picture/endless/endless.ts";
import { ownTime } from "../base/processor.ts";

const range = (n: number): readonly number[] => Array.from({ length: n }, (_, at) => at);
const drawing = (inner: string, head = ""): string =>
  `${head}<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4">${inner}</svg>`;
const doubled = (times: number, by: number, use = "href"): string =>
  `<defs><g id='u0'><path d="M0 0"/></g>${range(times)
    .map((at) => `<g id="u${at + 1}">${`<use ${use}="#u${at}"/>`.repeat(by)}</g>`)
    .join("")}</defs>`;
/** What is worn by what wears the one below it, nine deep and by eights. */
const worn = (tag: string, by: string): string =>
  `${range(9)
    .map(
      (at) =>
        `<${tag} id="u${at}">${`<path d="M0 0L1 1 2 2 3 3" ${at > 0 ? `${by}="url(#u${at - 1})"` : ""}/>`.repeat(8)}</${tag}>`,
    )
    .join("")}<path ${by}="url('#u8')" d="M0 0L1 1"/>`;

test("a drawing that repeats itself is known before it is shown", () => {
  const endless = {
    plain: drawing(`${doubled(9, 10)}<use href="#u9"/>`),
    "by the older name": drawing(`${doubled(30, 2, "xlink:href")}<use xlink:href='#u30'/>`),
    "behind a comment": drawing(`<!-- <!-- --><![CDATA[ <g ]]>${doubled(9, 10)}<use href="#u9"/>`),
    "behind what looks like a comment": drawing(`<![CDATA[<!--]]>${doubled(9, 10)}<use href="#u9"/><!-- -->`),
    "behind what is said to a program": drawing(`<?p <!-- ?>${doubled(9, 10)}<use href="#u9"/><!-- -->`),
    "by movement": drawing(`${doubled(9, 10)}<use><set attributeName="href" to="#u9"/></use>`),
    "by what is declared": drawing("&u;", `<!DOCTYPE svg [<!ENTITY u '<use href="#u"/>'>]>`),
    "by a word that is declared": drawing(
      `${doubled(9, 10).replaceAll('"#', '"&h;')}<use href="&h;u9"/>`,
      `<!DOCTYPE svg [<!ENTITY h "#">]>`,
    ),
    "by what is said unasked": drawing(
      `${doubled(8, 10)}${"<use/>".repeat(10)}`,
      `<!DOCTYPE svg [<!ATTLIST use href CDATA "#u8">]>`,
    ),
    "by signs in numbers": drawing(`${doubled(9, 10).replaceAll("#u", "&#35;u")}<use href="&#x23;u9"/>`),
    "behind another of its name": drawing(`${doubled(9, 10)}<g id="u9"/><use href="#u9"/>`),
    "behind a name in a name": drawing(
      `${doubled(9, 10).replaceAll('<g id="', `<g class=" id='x'" id="`)}<use href="#u9"/>`,
    ),
    "by masks": drawing(worn("mask", "mask")),
    "by clips": drawing(worn("clipPath", "clip-path")),
    "by hatches": drawing(worn("pattern", "fill")),
    "by marks": drawing(worn("marker", "marker-mid")),
    "in a drawing within": drawing('<image href="da&#10;ta:image/svg+xml,%3Csvg"/>'),
    "in another encoding": drawing("", `<?xml version="1.0" encoding="UTF-7"?>`),
    "with a sign between all others": [...drawing("")].join("\u0000"),
  };
  for (const [name, svg] of Object.entries(endless)) expect(endlessIn(svg), name).toBe("repeated");
});

const blur = '<feGaussianBlur stdDeviation="3"/>';
const filter = (steps: string): string => `<filter id="f">${steps}</filter>`;
const wearing = (times: number): string => '<path filter="url(#f)" d="M0 0L1 1"/>'.repeat(times);
const calls = "blur(3px) ".repeat(30);

test("a drawing whose filters would take too long is known before it is shown", () => {
  const endless = {
    "a stack of blurs": drawing(filter(blur.repeat(300)) + wearing(1)),
    "blurs on many parts": drawing(filter(blur.repeat(20)) + wearing(25)),
    "blurs on groups in groups": drawing(
      `${filter(blur.repeat(5))}${'<g filter="url(#f)">'.repeat(50)}${"</g>".repeat(50)}`,
    ),
    "steps that are made from one twice": drawing(
      filter(
        range(30)
          .map((at) => `<feBlend in="r${at - 1}" in2="r${at - 1}" result="r${at}"/>`)
          .join(""),
      ) + wearing(1),
    ),
    "layers of layers": drawing(
      filter(`<feMerge>${"<feMergeNode/>".repeat(20)}</feMerge>`.repeat(20)) + wearing(1),
    ),
    "ink that spreads far": drawing(filter('<feMorphology radius="9"/>'.repeat(5)) + wearing(1)),
    "what is used often": drawing(
      `${filter(blur.repeat(5))}<g id="g"><path style="filter: url( '#f')"/></g>${'<use href="#g"/>'.repeat(50)}`,
    ),
    "what is worn often": drawing(
      `${filter(blur.repeat(5))}<mask id="m">${wearing(1)}</mask>${'<path mask="url(#m)"/>'.repeat(50)}`,
    ),
    "by a style sheet": drawing(`<style>.a, .b{filter:${calls}}</style>${'<path class="b"/>'.repeat(9)}`),
    "by a style sheet that is no markup": drawing(
      `<style><![CDATA[path{filter:${calls}}]]></style>${"<path/>".repeat(9)}`,
    ),
    "by a style sheet of signs": drawing(
      `<style>path{\\66 il/**/ter:${calls}; f\\69lter:${calls}}</style>${"<path/>".repeat(9)}`,
    ),
    "by rules in rules": drawing(
      `<style>svg { path { filter: ${calls}; .x { fill: red } } }</style>${"<path/>".repeat(9)}`,
    ),
    "by a style sheet that moves": drawing(
      `<style>@keyframes m{to{filter:${calls}}} path{animation:m 1s}</style>${"<path/>".repeat(9)}`,
    ),
    "by a style that is told elsewhere": drawing(
      `<style>svg{--f:${calls}}</style>${'<path style="filter:var(--f)"/>'.repeat(9)}`,
    ),
    "by movement": drawing(`${`<path><set attributeName="filter" to="${calls}"/></path>`.repeat(9)}`),
    "by a word that is declared": drawing(
      filter(blur.repeat(300)) + '<path filter="&w;"/>',
      `<!DOCTYPE svg [<!ENTITY w "url(#f)">]>`,
    ),
    "what is behind the picture": drawing(`<g style="backdrop-filter: ${calls}"/>`.repeat(9)),
  };
  for (const [name, svg] of Object.entries(endless)) expect(endlessIn(svg), name).toBe("filtered");
});

test("no other drawing is taken for an endless one", () => {
  const good = {
    "a plan with a thousand signs": drawing(
      `<symbol id="post"><circle r="1"/></symbol>${'<use href="#post"/>'.repeat(1000)}`,
    ),
    "a drawing of many lines": drawing('<path d="M0 0"/>'.repeat(100_000)),
    "a thousand hatched features": drawing(
      `<pattern id="p">${"<circle/>".repeat(200)}</pattern>${'<path style="fill:url(#p)"/>'.repeat(1000)}`,
    ),
    "lines with a mark at each of their points": drawing(
      `<marker id="m"><path/></marker>${`<path style="marker-mid:url(#m)" d="M0 0${" 1 1".repeat(500)}"/>`.repeat(50)}`,
    ),
    "what leads to itself": drawing('<g id="a"><use href="#a"/></g>'),
    "namespaces that are declared": drawing(
      "",
      `<!DOCTYPE svg [<!ENTITY ns_svg "http://www.w3.org/2000/svg"><!ATTLIST svg xmlns:xlink CDATA #FIXED "http://www.w3.org/1999/xlink#">]>`,
    ),
    "styles that are declared": drawing(
      '<path style="&st0;"/>',
      `<!DOCTYPE svg [<!ENTITY st0 "fill:none;stroke:#000000;">]>`,
    ),
    "a drawing with shadows": drawing(
      `${filter('<feFlood result="c"/><feComposite in="c" in2="SourceGraphic"/><feGaussianBlur stdDeviation="1"/><feOffset dx="1" result="o"/><feComposite in="SourceGraphic" in2="o"/>')}<style>.st0{filter:url(#f);} .st1{fill:url(#g)}</style><linearGradient id="g"/>${'<text class="st0">7</text>'.repeat(20)}${'<path class="st1"/>'.repeat(5000)}`,
    ),
    "a photograph within": drawing('<image href="data:image/png;base64,AAAA"/>'),
    nothing: "",
  };
  for (const [name, svg] of Object.entries(good)) expect(endlessIn(svg), name).toBeNull();
  const folder = fileURLToPath(new URL("../../../demo-corpus/images/", import.meta.url));
  const drawings = readdirSync(folder).filter((name) => name.endsWith(".svg"));
  expect(drawings.length).toBeGreaterThan(2);
  for (const name of drawings) expect(endlessIn(readFileSync(join(folder, name), "utf8")), name).toBeNull();
});

test("whatever a drawing is made of, it is looked through in a moment", () => {
  const spent = ownTime();
  const parts = [
    "<!--",
    "<![CDATA[",
    "<?",
    '<a "',
    "<use href='#a",
    "<!ENTITY ",
    '<!ENTITY "',
    "<g>",
    "</g>",
    `<g id="a">`,
    "<style>{",
    "<style>a{filter:url(#a)}</style>",
    "<feMerge><feMergeNode/>",
    '<path filter="url(#',
    `<path filter="${"url(#a) blur(".repeat(3)}"/>`,
    "&#x26;",
    "\\66 /*",
  ];
  for (const part of parts) endlessIn(drawing(part.repeat(20_000)));
  for (const part of ["{", "a{", "}", "/*", "filter:", "\\6", "a,", "var("])
    endlessIn(drawing(`<style>${part.repeat(20_000)}</style><path class="a"/>`));
  endlessIn(
    drawing(
      range(10_000)
        .map((at) => `<g id="g${at}"><use href="#g${at + 1}"/>`)
        .join(""),
    ),
  );
  expect(spent()).toBeLessThan(5000);
});
