import { edtfYear } from "../../../../base/date/edtf.ts";
import type { CslDate } from "../../../../read/bibliography/date.ts";

/** A date of CSL as EDTF: its years are historical (−300 is 300 BC), those of EDTF astronomical (`-0299`); null where it is in words. */
export function edtfOfCsl(date: CslDate | undefined): string | null {
  const parts = date?.["date-parts"] ?? [];
  const points = parts.flatMap((part) => pointOf(part, date?.circa === true) ?? []);
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  return first === last ? first : `${first}/${last}`;
}

function pointOf(part: readonly number[], circa: boolean): string | null {
  const [year, month, day] = part;
  if (year === undefined || year === 0) return null;
  const months = month !== undefined && month >= 1 && month <= 12 ? `-${two(month)}` : "";
  const days = months !== "" && day !== undefined && day >= 1 && day <= 31 ? `-${two(day)}` : "";
  const long = Math.abs(year) > 9999;
  return edtfYear(year < 0 ? year + 1 : year) + (long ? "" : months + days) + (circa ? "~" : "");
}

const two = (number: number): string => String(number).padStart(2, "0");
