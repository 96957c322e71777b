import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { say } from "../../../base/text/said/said.ts";
import { worded } from "../../../base/text/said/worded.ts";
import type { CitationStyle } from "../../../read/bibliography/style/style.ts";
import { ofAllYears } from "../../../show/judged/suppose/supposed.ts";
import { printYears } from "../../../show/pages/question.ts";
import type { Stage } from "../../../show/telling/page/course.ts";
import { disputeOf } from "../../../show/telling/page/dispute.ts";
import type { Dispute } from "../../../show/telling/page/dispute.ts";
import { draw } from "../../../write/figure/draw.ts";
import { svgText } from "../../../write/figure/svg-text.ts";
import { disputeHtml, disputePage } from "../../../write/page/page.ts";
import type { PagePicture } from "../../../write/page/paper.ts";
import { ofThePage } from "../../../write/pen/screen.ts";
import { localesFor } from "../../../write/references/locales/locales.ts";
import { referencesIn } from "../../../write/references/references.ts";
import { htmlOf } from "../../../write/references/runs.ts";
import { shippedStyle } from "../../../write/references/shipped-styles.ts";
import { imageOf } from "../../print/image.ts";
import { svgDocument } from "../../print/svg-document.ts";
import type { Kind, Told } from "../kind.ts";
import { facesFor } from "./faces.ts";
import { styleAsked, styleOption } from "./style.ts";

/** The breadth of a figure in the page, in px. */
const breadth = 680;

/** The whole dispute as one page to be read in any browser, that needs nothing else. */
export const page: Kind = {
  doc: "the whole dispute as one page to read in any browser, from a file",
  formats: ["html"],
  several: false,
  options: [styleOption],
  reach: {},
  make: async (told, _format, name, asked) => {
    const style = styleAsked(told, asked);
    if ("refused" in style) return style;
    const { model, findings, plugins, memo } = told;
    const { asOf } = model.lens;
    const whole = asOf === undefined ? model : (await told.under(ofAllYears(model.lens))).model;
    const earlier = await earlierOf(told);
    if (whole === null || earlier === null)
      return { refused: say`The corpus cannot be read without its lens.` };
    const files = new Map(told.files.map(({ path, text }) => [path, text]));
    const desk = { model, whole, earlier, findings, files, plugins, memo: memo.compute };
    const dispute = disputeOf(desk);
    const paper = {
      dispute,
      places: new Map([...dispute.sheets.keys()].map((id, place) => [id, place])),
      references: await referencesOf(dispute, style),
      pictures: await picturesOf(told.folder, dispute),
      figureOf: (id: Id) => figureOf(dispute, id),
    };
    const body = disputeHtml(paper);
    return [
      {
        path: `${name}.html`,
        content: disputePage(paper, body, facesFor([body, ...saidIn(dispute)].join(" "))),
      },
    ];
  },
};

/** The corpus as of every year in which something came into print, but the year that is looked from. */
async function earlierOf({ model, under }: Told): Promise<readonly Stage[] | null> {
  const { asOf = Infinity } = model.lens;
  const stages: Stage[] = [];
  for (const year of printYears(model.graph).filter((one) => one < asOf)) {
    const { model: then } = await under({ ...model.lens, asOf: year });
    if (then === null) return null;
    stages.push({ year, model: then });
  }
  return stages;
}

/** What is said of records in earlier years: it is put into the page by its script. */
function saidIn({ courses }: Dispute): readonly string[] {
  return [...new Set([...courses.values()].flatMap(({ said }) => said))];
}

/** The references of all sources that may be cited, in a style. */
async function referencesOf(
  { language, sources }: Dispute,
  style: CitationStyle,
): Promise<ReadonlyMap<Id, string>> {
  const text = "shipped" in style ? await shippedStyle(style.shipped) : style.text;
  const manner = { style: text, locales: await localesFor(text, language), language };
  const references = referencesIn(manner, sources);
  return new Map(sources.map(({ id }) => [id, htmlOf(references.reference(id))]));
}

/** Published pictures as addresses that hold them, without what was written about them. */
async function picturesOf(folder: string, { sheets }: Dispute): Promise<ReadonlyMap<Id, PagePicture>> {
  const pictures = new Map<Id, PagePicture>();
  for (const one of [...sheets.values()].flatMap((sheet) => sheet.pictures)) {
    if (pictures.has(one.id)) continue;
    const image = await imageOf(folder, one.file);
    if ("refused" in image) continue;
    const { type, bytes, width, height } = image;
    const address = `data:${type};base64,${Buffer.from(bytes).toString("base64")}`;
    pictures.set(one.id, { address, width: Math.round(width), height: Math.round(height) });
  }
  return pictures;
}

/** The figure of a number as SVG within the page, whose colours are the page's. */
function figureOf({ sheets }: Dispute, id: Id): string {
  const shown = sheets.get(id)?.number?.figure ?? null;
  if (shown === null || shown.figure.panels.length === 0) return "";
  const drawn = draw(worded(shown.figure, inEnglish), {
    document: svgDocument(),
    width: breadth,
    palette: ofThePage,
    id: `figure-${[...sheets.keys()].indexOf(id)}`,
  });
  return svgText(drawn).replace(/^<\?xml[^>]*\?>\n/, "");
}
