import { Link } from "wouter";
import { underLens } from "../../address.ts";

interface Props {
  readonly label: string;
  /** Path, name, and whether it is the one looked at. */
  readonly looks: readonly (readonly [path: string, name: string, here: boolean])[];
  readonly asOf: number | null;
}

/** The ways in which one room can be looked at. */
export function Looks({ label, looks, asOf }: Props) {
  return (
    <nav className="looks" aria-label={label}>
      {looks.map(([path, name, here]) => (
        <Link key={path} href={underLens(path, asOf)} aria-current={here ? "page" : undefined}>
          {name}
        </Link>
      ))}
    </nav>
  );
}
