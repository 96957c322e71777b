import { useEffect, useState } from "react";
import type { Endless } from "../../../../show/artefacts/picture/endless/endless.ts";
import { pictureFile } from "../../../../show/artefacts/picture/file.ts";
import type { PictureFile } from "../../../../show/artefacts/picture/file.ts";
import { enclosedFile, isSameFile, useEnclosed } from "../../../model/enclosed.ts";

/** A picture's file as it is shown: an address of this window, and what the file says of itself. */
export interface PictureShown {
  readonly url: string;
  readonly said: PictureFile;
}

/** Files that are shown as pictures, by their ending. */
export const pictureEnding = /\.(?:jpe?g|png|webp|gif|svg)$/i;

/** Why a picture is not shown: it is not there, or it is a drawing that would never be done. */
export type Unshown = "missing" | Endless;

/** The picture in a file of the corpus's folder, or why it is not shown; null while it is fetched. */
export function usePicture(file: string): PictureShown | Unshown | null {
  const enclosed = useEnclosed();
  // A file that comes in while the page is open is fetched then.
  const bytes = enclosed?.find((one) => isSameFile(one.file, file))?.bytes ?? null;
  const [found, setFound] = useState<{
    readonly file: string;
    readonly shown: PictureShown | Unshown;
  } | null>(null);
  const isKnown = enclosed !== null;
  useEffect(() => {
    if (!isKnown) return;
    let url: string | null = null;
    let isOver = false;
    void shownOf(bytes === null ? null : file).then((shown) => {
      if (typeof shown !== "string") url = shown.url;
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

async function shownOf(file: string | null): Promise<PictureShown | Unshown> {
  const blob = file === null ? null : await enclosedFile(file);
  if (blob === null || typeof blob === "string") return blob ?? "missing";
  const said = pictureFile(new Uint8Array(await blob.arrayBuffer()));
  return { url: URL.createObjectURL(blob), said };
}
