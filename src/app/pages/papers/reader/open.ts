import { inReadingOrder } from "../../../../show/desk/papers/papers.ts";
import { enclosedBytes } from "../../../model/enclosed.ts";
import type { OpenPaper, Refusal } from "./paper.ts";

/** What there is to open: one PDF, or the pictures of pages in their order. */
export interface Bundle {
  /** The name in the address: the PDF, or the first of the pictures. */
  readonly file: string;
  /** The pictures; null for a PDF. */
  readonly pictures: readonly string[] | null;
}

const ending = /\.[^.]*$/;
const picture = /\.(png|jpe?g|webp|gif)$/i;

/** The papers of a source as they are opened: each PDF by itself, the shortest name before those that go on from it; all pictures of pages together. */
export function bundlesOf(files: readonly string[]): readonly Bundle[] {
  const pictures = files.filter((file) => picture.test(file));
  const papers = files
    .filter((file) => /\.pdf$/i.test(file))
    .toSorted((a, b) => inReadingOrder(a.replace(ending, ""), b.replace(ending, "")))
    .map((file) => ({ file, pictures: null }));
  const [first] = pictures;
  return first === undefined ? papers : [...papers, { file: first, pictures }];
}

/** The bundle that holds a file; the first where none does. */
export function bundleWith(bundles: readonly Bundle[], file: string | null): Bundle | null {
  return bundles.find((one) => one.file === file || one.pictures?.includes(file ?? "")) ?? bundles[0] ?? null;
}

/** Opens a bundle; what reads PDFs is fetched only when there is one. */
export async function opened(bundle: Bundle): Promise<OpenPaper | Refusal> {
  if (bundle.pictures !== null) {
    const { openPictures } = await import("./pictures.ts");
    return openPictures(bundle.pictures);
  }
  const [{ openPdf }, bytes] = await Promise.all([import("./pdf.ts"), enclosedBytes(bundle.file)]);
  return bytes === null ? "gone" : openPdf(bundle.file, await bytes.arrayBuffer());
}
