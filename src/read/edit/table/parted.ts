/** A quantity parted as the columns of a table part it; a part without a column, or that it has not, is null. */
export interface Parted {
  readonly value: string;
  readonly uncertainty: string | null;
  readonly unit: string | null;
}

/**
 * A quantity's text parted among the columns `value`, `uncertainty` and `unit`, so that they read together as it
 * stands; where they would not (`12° 30′`), all of it in `value`.
 */
export function parted(
  quantity: string,
  columns: { readonly uncertainty: boolean; readonly unit: boolean },
): Parted {
  const text = quantity.trim().replace(/ ?(?:±|\+\/-) ?/u, " ± ");
  const [measured = "", error = null] = columns.uncertainty ? splitOnce(text, " ± ") : [text];
  // A value with a unit of its own has an uncertainty with one: `18.20 m ± 5 mm`.
  const own = !columns.unit || (error !== null && !/\d$/u.test(measured));
  const [number = "", unit = null] = own ? [error ?? measured] : withoutUnit(error ?? measured);
  const apart: Parted =
    error === null
      ? { value: number, uncertainty: null, unit }
      : { value: measured, uncertainty: number, unit };
  return joined(apart) === text ? apart : { value: quantity.trim(), uncertainty: null, unit: null };
}

/** The text that the columns of a quantity read as. */
export function joined({ value, uncertainty, unit }: Parted): string {
  return `${value}${uncertainty ? ` ± ${uncertainty}` : ""}${unit ? ` ${unit}` : ""}`;
}

/** A number and the unit behind it, which holds no figure. */
function withoutUnit(text: string): readonly string[] {
  const found = /^(.*\d) (\D+)$/u.exec(text);
  return found ? found.slice(1) : [text];
}

function splitOnce(text: string, mark: string): readonly string[] {
  const at = text.indexOf(mark);
  return at < 0 ? [text] : [text.slice(0, at), text.slice(at + mark.length)];
}
