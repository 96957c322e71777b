import { Fragment } from "react";
import type { Piece } from "../../show/pages/pieces.ts";
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
  return pieces.map((piece, place) => (
    <Fragment key={place}>
      {place > 0 && between}
      {piece.to === null ? (
        <>
          {/^\s/.test(piece.text) && " "}
          <span dir="auto" lang={piece.lang ?? undefined}>
            {piece.text.trim()}
          </span>
          {/\s$/.test(piece.text) && " "}
        </>
      ) : (
        <RecordLink id={piece.to} text={piece.text} asOf={asOf} />
      )}
    </Fragment>
  ));
}
