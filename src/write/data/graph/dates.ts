import { edtfYear, parseEdtf } from "../../../base/date/edtf.ts";
import { typed } from "./sheet.ts";
import type { Node, Sheet, Words } from "./sheet.ts";

/**
 * Puts a date on a node as a time-span: as EDTF always, and between two `xsd:dateTime` where its limits are sharp. Years are
 * astronomical in both: 300 BC is `-0299`.
 */
export function putTime(sheet: Sheet, span: Node, edtf: string): void {
  sheet.is(span, "crm:E52_Time-Span");
  sheet.has(span, "crm:P82_at_some_time_within", edtfWords(edtf));
  const limits = limitsOf(edtf);
  if (limits?.begin) sheet.has(span, "crm:P82a_begin_of_the_begin", typed(limits.begin, "xsd:dateTime"));
  if (limits?.end) sheet.has(span, "crm:P82b_end_of_the_end", typed(limits.end, "xsd:dateTime"));
}

/** A date as a literal of EDTF. */
export function edtfWords(edtf: string): Words {
  return typed(edtf.trim(), "edtf:EDTF");
}

/** A year as EDTF, from its astronomical number. */
export const yearInEdtf = edtfYear;

/** The sharp limits of a date, first and last second; null where it is only about so, or no date. */
export function limitsOf(
  edtf: string,
): { readonly begin: string | null; readonly end: string | null } | null {
  const read = parseEdtf(edtf);
  if (!("ok" in read) || read.ok.approximate || read.ok.uncertain) return null;
  const { low, high } = read.ok;
  const ends = edtf.trim().split("/");
  const [first, last] = [pointOf(ends[0] ?? ""), pointOf(ends.at(-1) ?? "")];
  return {
    begin: low === null ? null : `${first ? dayText(first, 1, 1) : `${xsdYear(low)}-01-01`}T00:00:00`,
    end: high === null ? null : `${last ? dayText(last, 12, null) : `${xsdYear(high)}-12-31`}T23:59:59`,
  };
}

interface Point {
  readonly year: number;
  readonly month: number | null;
  readonly day: number | null;
}

/** A date of EDTF that is a day, a month or a year and nothing else. */
function pointOf(text: string): Point | null {
  const found = /^(-?\d{4})(?:-(0[1-9]|1[0-2])(?:-(\d\d))?)?$/.exec(text);
  if (!found) return null;
  const [, year = "", month, day] = found;
  return {
    year: Number(year),
    month: month === undefined ? null : Number(month),
    day: day === undefined ? null : Number(day),
  };
}

function dayText(point: Point, month: number, day: number | null): string {
  const inMonth = point.month ?? month;
  const onDay = point.day ?? day ?? daysIn(point.year, inMonth);
  return `${xsdYear(point.year)}-${two(inMonth)}-${two(onDay)}`;
}

function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 31;
}

const two = (number: number): string => String(number).padStart(2, "0");

/** A year of XSD 1.1, in which 0000 is 1 BC. */
function xsdYear(year: number): string {
  return (year < 0 ? "-" : "") + String(Math.abs(year)).padStart(4, "0");
}
