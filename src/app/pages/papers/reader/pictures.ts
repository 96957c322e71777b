import { enclosedBytes } from "../../../model/enclosed.ts";
import type { OpenPaper, Refusal, Shape, Work } from "./paper.ts";
import { scaleWithin } from "./room.ts";

/** How wide a picture of a page is taken to be, in its own units: as wide as a sheet in points. */
const wide = 612;

/** Opens pictures as the pages of one paper, in the order given. */
export async function openPictures(files: readonly string[]): Promise<OpenPaper | Refusal> {
  const shapes = new Map<number, Shape>();
  const bitmapOf = async (page: number): Promise<ImageBitmap | null> => {
    const bytes = await enclosedBytes(files[page] ?? "");
    const bitmap = bytes === null ? null : await createImageBitmap(bytes).catch(() => null);
    if (bitmap) shapes.set(page, { width: wide, height: (wide * bitmap.height) / bitmap.width });
    return bitmap;
  };
  const [one] = files;
  const bytes = one === undefined ? null : await enclosedBytes(one);
  if (bytes === null) return "gone";
  (await bitmapOf(0))?.close();
  const first = shapes.get(0);
  if (!first) return "broken";
  return {
    kind: "pictures",
    count: files.length,
    first,
    labels: null,
    fileOf: (page) => files[page] ?? "",
    shapeOf: async (page) => {
      if (!shapes.has(page)) (await bitmapOf(page))?.close();
      return shapes.get(page) ?? first;
    },
    textOf: () => Promise.resolve(""),
    draw: (page, canvas, scale) => drawn(bitmapOf(page), canvas, scale),
    lay: () => Promise.resolve([]),
    close: () => undefined,
  };
}

function drawn(picture: Promise<ImageBitmap | null>, canvas: HTMLCanvasElement, scale: number): Work {
  let isLeft = false;
  const done = picture.then((bitmap) => {
    if (bitmap && !isLeft) {
      const shape = { width: wide, height: (wide * bitmap.height) / bitmap.width };
      const fine = scaleWithin(shape, scale);
      canvas.width = Math.max(1, Math.floor(shape.width * fine));
      canvas.height = Math.max(1, Math.floor(shape.height * fine));
      const pen = canvas.getContext("2d");
      if (pen) pen.imageSmoothingQuality = "high";
      pen?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    }
    bitmap?.close();
  });
  return {
    done,
    leave: () => {
      isLeft = true;
    },
  };
}
