import { useMemo } from "react";
import type { Picture } from "../../../../show/telling/blocks/picture.ts";
import { ofThePage } from "../../../../write/pen/screen.ts";
import { drawnOn } from "../../../../write/telling/slides/drawn.ts";
import { isSameFile, useEnclosed, useEnclosedUrl } from "../../../model/enclosed.ts";
import { artefactWords } from "../../../words/shown/artefacts.ts";
import { mirrored } from "../../../words/reader/language.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { talkWords as words } from "../../../words/telling/talk.ts";

interface Props {
  readonly picture: Picture;
  readonly alt: string;
  /** The room of the picture on the slide, in points. */
  readonly width: number;
  readonly height: number;
  /** Begins every id in it. */
  readonly name: string;
}

/** A picture on a slide, drawn for its room in the colours of the page. */
export function SlidePicture(props: Props) {
  return props.picture.is === "image" ? (
    <Photograph file={props.picture.file} alt={props.alt} />
  ) : (
    <Drawn {...props} />
  );
}

function Photograph({ file, alt }: { readonly file: string; readonly alt: string }) {
  const enclosed = useEnclosed();
  const isThere = enclosed?.some((one) => isSameFile(one.file, file)) === true;
  const url = useEnclosedUrl(isThere ? file : null);
  if (enclosed !== null && !isThere) return <p className="quiet">{words.noPicture}</p>;
  return url === null ? null : <img src={url} alt={alt} />;
}

function Drawn({ picture, alt, width, height, name }: Props) {
  const drawn = useMemo(
    () =>
      drawnOn(
        picture,
        { width, height },
        {
          document,
          palette: ofThePage,
          told: inReadersWords,
          words: artefactWords,
          prefix: `${name}-`,
          mirrored: mirrored && picture.is === "map",
        },
      ),
    [picture, width, height, name],
  );
  if (drawn === null) return null;
  const { box, letters } = drawn;
  return (
    <svg
      viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
      role="img"
      aria-label={alt}
      fontFamily={letters["font-family"]}
      fontSize={letters["font-size"]}
      textAnchor={letters["text-anchor"] === "middle" ? "middle" : undefined}
      fill={letters["fill"]}
      dangerouslySetInnerHTML={{ __html: drawn.inner }}
    />
  );
}
