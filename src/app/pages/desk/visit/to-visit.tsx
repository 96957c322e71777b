import { Link } from "wouter";
import { underLens, visitPath } from "../../../address.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";

/** From the sheet of an examination to that of the visit on which it is made. */
export function ToVisit({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <Link href={underLens(visitPath({ examination: id, keeper: null, also: [] }), asOf)}>
        {words.title}
      </Link>
    </p>
  );
}
