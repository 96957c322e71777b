import { Link } from "wouter";
import { pathOf, underLens } from "../../address.ts";
import { numberWords } from "../../words/shown/numbers.ts";

/** From the sheet of a derivation to the page of its number. */
export function ToNumber({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <Link href={underLens(pathOf("number", id), asOf)}>{numberWords.wholeNumber}</Link>
    </p>
  );
}
