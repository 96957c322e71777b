import { Link } from "wouter";
import { pathOf, underLens } from "../../address.ts";
import { artefactWords as words } from "../../words/shown/artefacts.ts";

/** From the sheet of an artefact to its page. */
export function ToArtefact({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <Link href={underLens(pathOf("artefact", id), asOf)}>{words.itsPage}</Link>
    </p>
  );
}
