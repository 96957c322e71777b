import { Fragment } from "react";
import type { Piece } from "../../show/pages/pieces.ts";
import { inReadersWords } from "../words/reader/said.ts";
import { RecordLink } from "./link.tsx";

/** Words in a row, names of records among them leading to their sheets; where asked, with words between the pieces. */
export function Pieces({
  pieces,
  asOf,
  between = "",
}: {
  readonly pieces: readonly Piece[];
  readonly asOf: number | null;
  readonly between?: string;
}) {
  return pieces.map((piece, place) => {
    const text = inReadersWords(piece.said ?? piece.text);
    return (
      <Fragment key={place}>
        {place > 0 && between}
        {piece.to === null ? (
          <>
            {/^\s/.test(text) && " "}
            <span dir="auto" lang={piece.lang ?? undefined}>
              {text.trim()}
            </span>
            {/\s$/.test(text) && " "}
          </>
        ) : (
          <RecordLink id={piece.to} text={text} asOf={asOf} />
        )}
      </Fragment>
    );
  });
}
