import { GlobalWorkerOptions, TextLayer, getDocument } from "pdfjs-dist";
import type { PDFDocumentProxy, PDFPageProxy } from "pdfjs-dist";
import type { OpenPaper, Piece, Refusal, Shape, Work } from "./paper.ts";
import { mostPages, scaleWithin } from "./room.ts";

GlobalWorkerOptions.workerSrc = new URL("pdfjs-dist/build/pdf.worker.min.mjs", import.meta.url).href;

/** What is asked for by name while a PDF is read; the build puts it beside the scripts. */
const beside = (part: string): string => `${location.origin}/papers/${part}/`;

/** Opens a PDF from its bytes, which it keeps; nothing in it runs, and nothing is fetched from outside. */
export async function openPdf(file: string, bytes: ArrayBuffer): Promise<OpenPaper | Refusal> {
  const opening = getDocument({
    data: bytes,
    isEvalSupported: false,
    enableXfa: false,
    cMapUrl: beside("signs"),
    cMapPacked: true,
    standardFontDataUrl: beside("fonts"),
    iccUrl: beside("colours"),
    wasmUrl: beside("decoders"),
    verbosity: 0,
  });
  try {
    const paper = await opening.promise;
    if (paper.numPages > mostPages) {
      void opening.destroy();
      return "long";
    }
    const first = shapeIn(await paper.getPage(1));
    const labels = await paper.getPageLabels().catch(() => null);
    return openedPdf(file, paper, first, labels, () => void opening.destroy());
  } catch (error) {
    void opening.destroy();
    return error instanceof Error && error.name === "PasswordException" ? "locked" : "broken";
  }
}

function openedPdf(
  file: string,
  paper: PDFDocumentProxy,
  first: Shape,
  labels: readonly string[] | null,
  close: () => void,
): OpenPaper {
  const pageAt = (page: number): Promise<PDFPageProxy> => paper.getPage(page + 1);
  return {
    kind: "pdf",
    count: paper.numPages,
    first,
    labels,
    fileOf: () => file,
    shapeOf: async (page) => shapeIn(await pageAt(page)),
    textOf: async (page) => {
      const found = await textIn(await pageAt(page));
      return found.map(({ text }) => text).join("");
    },
    draw: (page, canvas, scale) => drawn(pageAt(page), canvas, scale),
    lay: async (page, seat) => laid(await pageAt(page), seat),
    close,
  };
}

function shapeIn(page: PDFPageProxy): Shape {
  const { width, height } = page.getViewport({ scale: 1 });
  return { width, height };
}

/** The pieces of a page's text, each with the end of the line that it closes. */
async function textIn(page: PDFPageProxy): Promise<readonly { readonly text: string }[]> {
  const { items } = await page.getTextContent();
  return items.flatMap((item) => ("str" in item ? [{ text: `${item.str}${item.hasEOL ? "\n" : ""}` }] : []));
}

function drawn(page: Promise<PDFPageProxy>, canvas: HTMLCanvasElement, scale: number): Work {
  let leave = (): void => undefined;
  let isLeft = false;
  const done = page.then(async (one) => {
    if (isLeft) return;
    const viewport = one.getViewport({ scale: scaleWithin(shapeIn(one), scale) });
    canvas.width = Math.floor(viewport.width);
    canvas.height = Math.floor(viewport.height);
    const task = one.render({ canvas, viewport });
    leave = () => task.cancel();
    // What was left half-way is no fault, and a page that cannot be drawn stays blank beside those that can.
    await task.promise.catch(() => undefined);
  });
  return {
    done,
    leave: () => {
      isLeft = true;
      leave();
      // Pictures of a scan are large: a page that is out of sight keeps none.
      void page.then((one) => one.cleanup());
    },
  };
}

async function laid(page: PDFPageProxy, seat: HTMLElement): Promise<readonly Piece[]> {
  const content = await page.getTextContent();
  const layer = new TextLayer({
    textContentSource: content,
    container: seat,
    viewport: page.getViewport({ scale: 1 }),
  });
  await layer.render();
  const texts = content.items.filter((item) => "str" in item);
  let start = 0;
  return layer.textDivs.map((span, n) => {
    const piece = { span, start };
    const item = texts[n];
    start += item ? item.str.length + (item.hasEOL ? 1 : 0) : 0;
    return piece;
  });
}
