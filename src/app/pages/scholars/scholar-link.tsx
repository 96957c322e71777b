import { Link } from "wouter";
import { pathOf, withYear } from "../../address.ts";

/** The name of a scholar, leading to the page of their positions. */
export function ScholarLink({
  id,
  text,
  asOf,
}: {
  readonly id: string;
  readonly text: string;
  readonly asOf: number | null;
}) {
  return (
    <Link href={withYear(pathOf("scholar", id), asOf)} dir="auto">
      {text}
    </Link>
  );
}
