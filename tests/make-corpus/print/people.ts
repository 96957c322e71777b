import type { Chance } from "../chance.ts";
import type { Sheets } from "../records.ts";
import { family, given, otherScripts } from "../words.ts";

/** A scholar, and the years of the first and last thing that may be in print from the same hand. */
export interface Scholar {
  readonly id: string;
  readonly family: string;
  readonly given: string;
  readonly lang: string;
  readonly from: number;
  readonly to: number;
}

const languages = ["en", "en", "en", "de", "pt"] as const;

/** Scholars in the order in which they come to the matter, every sixth with a name in another script. */
export function scholarsOf(count: number, chance: Chance, sheets: Sheets): readonly Scholar[] {
  const scholars = Array.from({ length: count }, (_, place): Scholar => {
    const from = 1888 + Math.round((118 * place) / Math.max(1, count - 1)) + chance.between(-4, 4);
    const years = { from, to: from + chance.between(14, 42) };
    const other = place % 6 === 4 ? otherScripts[Math.floor(place / 6)] : undefined;
    return other ? { ...other, ...years } : { ...latin(place), lang: chance.pick(languages), ...years };
  });
  for (const [place, one] of scholars.entries()) {
    const name = `${one.given} ${one.family}`;
    const initials = `${one.family}, ${one.given.charAt(0)}.`;
    sheets.add("scholars.yaml", "scholars", {
      id: one.id,
      name,
      "known-as": place % 3 === 0 ? [initials] : undefined,
      orcid: place % 5 === 3 ? orcid(place) : undefined,
    });
  }
  return scholars;
}

/** Each family name once, then double names, so that no two are alike. */
function latin(place: number): { readonly id: string; readonly family: string; readonly given: string } {
  const at = (list: readonly string[], n: number): string => list[n % list.length] ?? "";
  const round = Math.floor(place / family.length);
  const first = at(family, place);
  const name = round === 0 ? first : `${first}-${at(family, place + 1 + (round % (family.length - 1)))}`;
  const more = Math.floor(round / (family.length - 1));
  const id = `${name.toLowerCase()}${more > 0 ? `-${more}` : ""}`;
  const second = more > 0 ? ` ${at(given, place + 3 + more)}` : "";
  return { id, family: name, given: at(given, place * 7 + round) + second };
}

/** An identifier of the right form with its check character (ISO 7064 11,2), out of the range that is given out. */
function orcid(place: number): string {
  const digits = `0009${String(990_000_000_00 + place)}`;
  const total = [...digits].reduce((sum, digit) => (sum + Number(digit)) * 2, 0);
  const check = (12 - (total % 11)) % 11;
  const all = `${digits}${check === 10 ? "X" : check}`;
  return (all.match(/.{4}/g) ?? []).join("-");
}
