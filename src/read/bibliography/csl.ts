import type { Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import { coded, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { fielded } from "../decode/fielded.ts";
import { plainMet, wordMet } from "../decode/met.ts";
import { dateOfEdtf, dateOfYear } from "./date.ts";
import type { CslDate } from "./date.ts";

/** A name as CSL-JSON 1.0.2 has it; `ORCID` is kept apart, since the schema has no place for it. */
export type CslName = {
  readonly family?: string;
  readonly given?: string;
  readonly literal?: string;
  readonly suffix?: string;
  readonly "non-dropping-particle"?: string;
  readonly "dropping-particle"?: string;
};

/** An item of CSL-JSON 1.0.2; a key that CSL does not know is kept as it was read. */
export type CslItem = { readonly id: Id; readonly type: string } & CslFields & {
    readonly [key: string]: Json | undefined;
  };

type CslFields = {
  readonly title?: string;
  readonly "title-short"?: string;
  readonly author?: readonly CslName[];
  readonly editor?: readonly CslName[];
  readonly issued?: CslDate;
  readonly "original-date"?: CslDate;
  readonly "container-title"?: string;
  readonly publisher?: string;
  readonly "publisher-place"?: string;
  readonly page?: string;
  readonly volume?: string;
  readonly issue?: string;
  readonly DOI?: string;
  readonly URL?: string;
  readonly language?: string;
};

/** What was amiss in one field of an item. */
export interface Problem {
  readonly field: string;
  readonly message: Text;
  readonly level: "error" | "note";
}

/** The item types of CSL 1.0.2. */
export const cslTypes: ReadonlySet<string> = new Set(
  (
    "article article-journal article-magazine article-newspaper bill book broadcast chapter classic collection " +
    "dataset document entry entry-dictionary entry-encyclopedia event figure graphic hearing interview legal_case " +
    "legislation manuscript map motion_picture musical_score pamphlet paper-conference patent performance " +
    "periodical personal_communication post post-weblog regulation report review review-book software song speech " +
    "standard thesis treaty webpage"
  ).split(" "),
);

const nameFields: ReadonlySet<string> = new Set(
  (
    "author chair collection-editor compiler composer container-author contributor curator director editor " +
    "editorial-director executive-producer guest host illustrator interviewer narrator organizer original-author " +
    "performer producer recipient reviewed-author script-writer series-creator translator"
  ).split(" "),
);

const dateFields: ReadonlySet<string> = new Set(
  "accessed available-date event-date issued original-date submitted".split(" "),
);

/** Keys whose value is data of another shape than text; every other key that CSL knows is text. */
const dataFields: ReadonlySet<string> = new Set(["categories", "custom"]);

const nameParts = ["family", "given", "literal", "suffix", "non-dropping-particle", "dropping-particle"];

type Raw = { readonly [key: string]: unknown };

/** Whether a value is an object with keys. */
export function isObject(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** An item of clean CSL-JSON from data of any shape, with what had to be left out of it. */
export function cslItem(raw: Raw, id: Id): { readonly csl: CslItem; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const [names, values]: [string[], Json[]] = [[], []];
  for (const [name, value] of Object.entries(raw)) {
    if (name.startsWith("_") || name === "id" || name === "type" || name === "citation-key") continue;
    if (value === undefined || value === null || value === "") continue;
    const field = name === "event" ? "event-title" : name;
    const read = fieldValue(field, value);
    if (read === null) {
      const message = say`Unreadable value of \`${name}\`, expected ${wanted(field)}`;
      problems.push({ field: name, level: "error", message });
      continue;
    }
    names.push(field);
    values.push(read);
  }
  const said = typeof raw["type"] === "string" ? raw["type"] : "";
  if (!cslTypes.has(said))
    problems.push({
      field: "type",
      level: "note",
      message: say`Unknown type \`${said}\`, read as a document`,
    });
  const type = cslTypes.has(said) ? wordMet(said) : "document";
  const csl = fielded([...names, "id", "type"], [...values, wordMet(id), type]) as CslItem;
  return { csl, problems };
}

/** The text without the markup that CSL allows in titles. */
export function plainText(text: string): string {
  return text.replace(/<\/?(?:i|b|sup|sub|sc|span)(?:\s[^<>]{0,200})?>/g, "");
}

function wanted(field: string): Said {
  if (nameFields.has(field)) return say`a list of names`;
  return dateFields.has(field) ? say`a date with ${coded("date-parts")}` : say`a text`;
}

function fieldValue(field: string, value: unknown): Json {
  if (nameFields.has(field)) return metWhere(nameList(value));
  if (dateFields.has(field)) return metWhere(cslDate(value));
  if (dataFields.has(field)) return jsonOf(value);
  if (typeof value === "string") return wordMet(value);
  if (typeof value === "number") return `${value}`;
  if (Array.isArray(value) && value.every((one) => typeof one === "string" || typeof one === "number"))
    return value.join(", ");
  return knownText.has(field) ? null : jsonOf(value);
}

const knownText: ReadonlySet<string> = new Set(
  "title title-short container-title publisher publisher-place page volume issue DOI URL language".split(" "),
);

/** Dates, and who wrote or edited something, are mostly those of another work, too. */
const metWhere = <T extends Json>(read: T | null): T | null => (read === null ? null : plainMet(read));

function nameList(value: unknown): readonly CslName[] | null {
  if (!Array.isArray(value)) return null;
  const names = value.map(cslName);
  return names.every((name) => Object.keys(name).length > 0) ? names : null;
}

function cslName(value: unknown): CslName {
  if (typeof value === "string") return value.trim() === "" ? {} : { literal: value.trim() };
  if (!isObject(value)) return {};
  const said = (part: string): string => {
    const written = value[part];
    return typeof written === "string" ? written.trim() : "";
  };
  const parts = nameParts.filter((part) => said(part) !== "");
  const name: CslName = fielded(
    parts,
    parts.map((part) => wordMet(said(part))),
  );
  return (name.family ?? name.given ?? name.literal) ? name : {};
}

function cslDate(value: unknown): CslDate | null {
  if (typeof value === "string") return dateOfEdtf(value) ?? dateOfYear(value);
  if (!isObject(value)) return null;
  const about =
    value["circa"] === true || value["circa"] === "true" || value["circa"] === 1 ? { circa: true } : {};
  const season = Number(value["season"]) || 0;
  const parts = value["date-parts"];
  if (Array.isArray(parts) && parts.length > 0) {
    const read = parts.map((part) => (Array.isArray(part) ? part.map(Number) : []));
    const whole = read.every((part) => part.length > 0 && part.every((number) => Number.isInteger(number)));
    return whole && read.length < 3
      ? { "date-parts": read, ...about, ...(season > 0 ? { season } : {}) }
      : null;
  }
  const text = value["raw"] ?? value["literal"] ?? value["edtf"];
  if (typeof text !== "string" || text.trim() === "") return null;
  return { ...(dateOfEdtf(text) ?? dateOfYear(text)), ...about };
}

/** The value as JSON; what JSON cannot hold is null. */
export function jsonOf(value: unknown): Json {
  if (value === null || typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return Number.isFinite(value) ? value : null;
  if (Array.isArray(value)) return value.map(jsonOf);
  return isObject(value)
    ? Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, jsonOf(inner)]))
    : null;
}
