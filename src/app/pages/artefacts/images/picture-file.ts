import { useEffect, useState } from "react";
import { pictureFile } from "../../../../show/artefacts/picture/file.ts";
import type { PictureFile } from "../../../../show/artefacts/picture/file.ts";
import { enclosedBytes, useEnclosed } from "../../../model/enclosed.ts";

/** A picture's file as it is shown: an address of this window, and what the file says of itself. */
export interface PictureShown {
  readonly url: string;
  readonly said: PictureFile;
}

/** Files that are shown as pictures, by their ending. */
export const pictureEnding = /\.(?:jpe?g|png|webp|gif|svg)$/i;

/** The picture in a file of the corpus's folder; `missing` where it is not there, null while it is fetched. */
export function usePicture(file: string): PictureShown | "missing" | null {
  const enclosed = useEnclosed();
  // A file that comes in while the page is open is fetched then.
  const bytes = enclosed?.find((one) => one.file === file)?.bytes ?? null;
  const [found, setFound] = useState<{
    readonly file: string;
    readonly shown: PictureShown | "missing";
  } | null>(null);
  const isKnown = enclosed !== null;
  useEffect(() => {
    if (!isKnown) return;
    let url: string | null = null;
    let isOver = false;
    void shownOf(bytes === null ? null : file).then((shown) => {
      if (shown !== "missing") url = shown.url;
      if (isOver && url !== null) URL.revokeObjectURL(url);
      if (!isOver) setFound({ file, shown });
    });
    return () => {
      isOver = true;
      if (url !== null) URL.revokeObjectURL(url);
    };
  }, [file, bytes, isKnown]);
  return found?.file === file ? found.shown : null;
}

async function shownOf(file: string | null): Promise<PictureShown | "missing"> {
  const blob = file === null ? null : await enclosedBytes(file);
  if (!blob) return "missing";
  const said = pictureFile(new Uint8Array(await blob.arrayBuffer()));
  return { url: URL.createObjectURL(blob), said };
}
