/** A date as CSL-JSON has it; years of BC count historically (−1 is 1 BC), and there is no year 0. */
export type CslDate = {
  readonly "date-parts"?: readonly (readonly number[])[];
  readonly season?: number;
  readonly circa?: boolean;
  readonly literal?: string;
};

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const edtf = /^Y?([-−]?\d{1,9})(X{0,2})(?:-(\d\d|XX))?(?:-(\d\d|XX))?(?:T[^/]*)?([?~%]?)$/;
const circa = /^[[(\s]*(?:circa|ca\b\.?|c\.|about|around|approx\.|um|vers|~|≈)\s*/i;
const beforeChrist = /\b(?:B\.?\s?C\.?(?:\s?E\.?)?|v\.\s?Chr|av\.\s?J|a\.\s?C\.)/i;

/** A date or range in EDTF (ISO 8601-2), as biblatex writes dates, in CSL; its years are astronomical. */
export function dateOfEdtf(text: string): CslDate | null {
  const ends = text.trim().split("/");
  if (ends.length > 2) return null;
  const dates = ends.filter((end) => end !== "" && end !== "..").map((end) => edtf.exec(end));
  const parts: (readonly number[])[] = [];
  let about = false;
  let season = 0;
  for (const date of dates) {
    if (date === null) return null;
    const [, digits = "", open = "", month = "", day = "", sign = ""] = date;
    const scale = 10 ** open.length;
    const year = Number(digits.replace("−", "-")) * scale;
    const monthNumber = Number(month) || 0;
    if (monthNumber > 20 && monthNumber < 25) season = monthNumber - 20;
    const known = [historical(year), ...(monthNumber > 0 && monthNumber < 13 ? [monthNumber] : [])];
    parts.push(known.length === 2 && Number(day) > 0 ? [...known, Number(day)] : known);
    if (open !== "") parts.push([historical(year + scale - 1)]);
    about ||= sign !== "" || open !== "";
  }
  const first = parts[0];
  const last = parts.at(-1);
  if (first === undefined || last === undefined) return null;
  const shown = parts.length > 1 ? [first, last] : [first];
  return {
    "date-parts": shown,
    ...(about ? { circa: true } : {}),
    ...(season > 0 && dates.length === 1 ? { season } : {}),
  };
}

/** A date from a year as people type it (`1896`, `c. 1896`, `1896–97`, `480 BC`, `forthcoming`), in CSL. */
export function dateOfYear(text: string, month = "", day = ""): CslDate {
  const said = text.trim();
  const about = circa.test(said) || /[~?%]\s*$/.test(said) ? { circa: true } : {};
  const bare = said.replace(circa, "").replace(/^[[(]\s*|\s*[\])]?[?~%]?[\])]?$/g, "");
  const sign = beforeChrist.test(bare) || /^[-−]\d/.test(bare) ? -1 : 1;
  const found = /^[-−]?(\d{1,4})(?:\s{0,3}(?:-{1,3}|[–—/])\s{0,3}(\d{1,4}))?(?![\d.])/.exec(bare);
  const year = Number(found?.[1] ?? 0);
  if (year === 0 || (sign === 1 && year < 100)) return { literal: said };
  const end = found?.[2];
  if (end !== undefined && end !== "") {
    const whole = Number(
      sign === 1 ? `${year}`.slice(0, Math.max(0, `${year}`.length - end.length)) + end : end,
    );
    return { "date-parts": [[sign * year], [sign * whole]], ...about };
  }
  const monthNumber = monthOf(month);
  const dayNumber = Number.parseInt(day, 10) || 0;
  const parts = [sign * year, ...(monthNumber > 0 ? [monthNumber] : [])];
  return {
    "date-parts": [parts.length === 2 && dayNumber > 0 && dayNumber < 32 ? [...parts, dayNumber] : parts],
    ...about,
  };
}

/** The number of a month from its number or its English name, 0 when it is neither. */
export function monthOf(text: string): number {
  const word = text.trim().toLowerCase();
  const number = /^\d{1,2}/.test(word) ? Number.parseInt(word, 10) : months.indexOf(word.slice(0, 3)) + 1;
  return number >= 1 && number <= 12 ? number : 0;
}

/** The year since which a work was wholly in print: the end of a closed range; astronomical, null when unknown. */
export function yearOf(date: CslDate | undefined): number | null {
  const parts =
    date?.["date-parts"] ??
    (date?.literal === undefined ? [] : (dateOfYear(date.literal)["date-parts"] ?? []));
  const year = parts.at(-1)?.[0];
  return year === undefined ? null : year < 0 ? year + 1 : year;
}

/** The years of a date in words, as a label shows them (`c. 1896`, `1999–2001`, `300 BC`); empty when unknown. */
export function yearText(date: CslDate | undefined): string {
  const years = (date?.["date-parts"] ?? []).flatMap((part) => part.slice(0, 1));
  const [first, last] = [years[0], years.at(-1)];
  if (first === undefined || last === undefined) return date?.literal ?? "";
  const shown =
    first === last ? spoken(first) : `${first < 0 && last < 0 ? -first : spoken(first)}–${spoken(last)}`;
  return date?.circa === true ? `c. ${shown}` : shown;
}

function spoken(year: number): string {
  return year < 0 ? `${-year} BC` : `${year}`;
}

function historical(year: number): number {
  return year <= 0 ? year - 1 : year;
}
