import { useEffect, useRef, useState } from "react";
import type { Picture } from "../../../../show/telling/blocks/picture.ts";
import type { SetPlate } from "../../../../write/telling/set/set-text.ts";
import { useEnclosedUrl } from "../../../model/enclosed.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { numberWords } from "../../../words/shown/numbers.ts";
import { tellingWords as words } from "../../../words/telling/telling.ts";
import { Line } from "./line.tsx";
import type { Leading } from "./line.tsx";

/** The breadth of a text on A4, and that of a narrow column, in mm. */
const [breadth, narrowest] = [160, 76];

/** How broad a figure is drawn for a place on the screen: as on paper, and no broader than there is room for. */
function breadthIn(place: HTMLElement | null): number {
  const room = ((place?.parentElement?.clientWidth ?? 0) / 96) * 25.4;
  return Math.max(narrowest, Math.min(breadth, Math.floor(room)));
}

/** A figure as it is printed, with its number and caption. */
export function Plate({ plate, leading }: { readonly plate: SetPlate; readonly leading: Leading }) {
  const { number, anchor, picture, caption, alt } = plate;
  const shows = inReadersWords(alt);
  return (
    <figure id={anchor} tabIndex={-1} className="printed-plate">
      {picture.is === "image" ? (
        <Image file={picture.file} alt={shows} />
      ) : (
        <Lines picture={picture} alt={shows} name={anchor} />
      )}
      <figcaption>
        <b>{words.figure(number)}</b> <Line of={caption} leading={leading} />
      </figcaption>
    </figure>
  );
}

function Image({ file, alt }: { readonly file: string; readonly alt: string }) {
  const url = useEnclosedUrl(file);
  return url === null ? <p className="quiet">{alt}</p> : <img src={url} alt={alt} />;
}

interface Drawing {
  readonly picture: Exclude<Picture, { readonly is: "image" }>;
  readonly alt: string;
  readonly name: string;
}

/** What is drawn in lines, as it is drawn for paper; what draws is fetched when it is needed. */
function Lines({ picture, alt, name }: Drawing) {
  const place = useRef<HTMLDivElement>(null);
  const [state, setState] = useState<"drawing" | "drawn" | "undrawn">("drawing");
  // The same picture comes anew whenever something else changes: it is drawn again only when it is another.
  const asked = JSON.stringify(picture);
  useEffect(() => {
    let wanted = true;
    void import("../../../../write/pictures/picture.ts")
      .then(({ pictureSvg }) => {
        if (!wanted) return;
        const { svg } = pictureSvg(JSON.parse(asked) as Drawing["picture"], {
          width: breadthIn(place.current),
          document,
          name,
        });
        const drawn = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
        drawn.setAttribute("role", "img");
        drawn.setAttribute("aria-label", alt);
        place.current?.replaceChildren(document.importNode(drawn, true));
        setState("drawn");
      })
      .catch(() => {
        if (wanted) setState("undrawn");
      });
    return () => {
      wanted = false;
    };
  }, [asked, name, alt]);
  return (
    <>
      <div ref={place} className="printed" />
      {state !== "drawn" && (
        <p className="quiet">{state === "drawing" ? numberWords.drawing : numberWords.undrawn}</p>
      )}
    </>
  );
}
