import { useEffect, useId, useRef, useState } from "react";
import type { Panel } from "../../../write/figure/figure.ts";
import { numberWords } from "../../words/shown/numbers.ts";

const NARROWEST = 280;

/** One panel, drawn as wide as its place is and again when that changes; what draws is fetched when it is needed. */
export function Drawn({ title, panel }: { readonly title: string; readonly panel: Panel }) {
  const place = useRef<HTMLDivElement>(null);
  const id = useId();
  const [width, setWidth] = useState(0);
  // Numbers that arrive elsewhere bring the same panel anew: it is drawn again only when it says something else.
  const asked = JSON.stringify(panel);
  const [state, setState] = useState<"drawing" | "drawn" | "undrawn">("drawing");

  useEffect(() => {
    const seat = place.current;
    if (seat === null) return;
    const observer = new ResizeObserver(() => setWidth(Math.max(NARROWEST, Math.floor(seat.clientWidth))));
    observer.observe(seat);
    return () => observer.disconnect();
  }, []);
  useEffect(() => {
    const seat = place.current;
    if (seat === null || width === 0) return;
    let wanted = true;
    void Promise.all([import("../../../write/figure/draw.ts"), import("../../../write/pen/screen.ts")])
      .then(([{ draw }, { ofThePage }]) => {
        if (!wanted) return;
        const name = `figure${id.replace(/[^a-z0-9]/gi, "-")}`;
        seat.replaceChildren(
          draw(
            { title, panels: [JSON.parse(asked) as Panel] },
            { document, width, palette: ofThePage, id: name },
          ),
        );
        setState("drawn");
      })
      .catch(() => {
        if (wanted) setState("undrawn");
      });
    return () => {
      wanted = false;
    };
  }, [title, asked, width, id]);

  return (
    <>
      <div ref={place} className="seat" />
      {state !== "drawn" && (
        <p className="quiet">{state === "drawing" ? numberWords.drawing : numberWords.undrawn}</p>
      )}
    </>
  );
}
