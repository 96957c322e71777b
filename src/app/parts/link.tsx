import { Link } from "wouter";
import { recordPath, withYear } from "../address.ts";

/** The name of a record, leading to its sheet. */
export function RecordLink({
  id,
  text,
  asOf,
}: {
  readonly id: string;
  readonly text: string;
  readonly asOf: number | null;
}) {
  return (
    <Link href={withYear(recordPath(id), asOf)} dir="auto">
      {text}
    </Link>
  );
}
