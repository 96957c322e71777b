import { Link } from "wouter";
import { pathOf, underLens } from "../../../address.ts";
import { imageWords as words } from "../../../words/recording/images.ts";

/** From the sheet of a picture to the picture itself, and to measuring on it. */
export function ToImage({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  const path = pathOf("image", id);
  return (
    <p className="crossing to-forms">
      <Link href={underLens(path, asOf)}>{words.look}</Link>
      <Link href={underLens(`${path}?measure`, asOf)}>{words.measure}</Link>
    </p>
  );
}
