import type { Id } from "../../../../base/finding.ts";
import { madeBefore } from "../../../../link/edit/action.ts";
import type { Action, RecordAction } from "../../../../link/edit/action.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { FormAsked } from "../../forms/filled/asked.ts";
import { enteredAt } from "../../forms/filled/entered.ts";
import type { Entered, EnteredMap } from "../../forms/filled/entered.ts";
import type { PaperData } from "../page.ts";
import { locatorOf, pagesOn } from "./locator.ts";
import { inPaper } from "../selector.ts";
import type { PlaceSelector, SpecificResource } from "../selector.ts";
import type { Taken } from "../taken.ts";
import { languageOf } from "./language.ts";

/** Kinds of record that are taken from a passage. */
export const takenLists = ["claims", "observations", "measurements", "positions"] as const;
/** One of them. */
export type TakenList = (typeof takenLists)[number];

/** As much of a source as a passage begins with. */
type Source = Pick<PaperData, "key" | "language" | "authors">;

/** A new record's form with what is known of it. */
export function newForm(list: ListName, entered: EnteredMap): FormAsked {
  return { list, id: null, seen: null, entered };
}

/** A new passage as its sheet is opened: its place as printed, its words, and their language as far as it is told. */
export function passageForm(source: Source, taken: Taken, printed: string | null): FormAsked {
  const quote = taken.quote?.text ?? "";
  const [first = "", last = null] = (printed ?? "").split(/[–-]/u);
  const until = last ?? pagesOn(first, taken.lastIndex - taken.pageIndex);
  const lang = quote === "" ? source.language : languageOf(quote, source.language);
  return newForm("passages", {
    from: [source.key],
    at: locatorOf(first, until),
    quote,
    ...(lang === null ? {} : { lang }),
  });
}

/** A passage as it is written: a bare number in the place of its place, `12` or `12-13`, is that of the page. */
export function writtenPassage(entered: EnteredMap): FormAsked {
  const at = enteredAt(entered, "at");
  const [, first, last = null] =
    /^\s*(\d{1,6})(?:\s*[-–—]\s*(\d{1,6}))?\s*$/u.exec(typeof at === "string" ? at : "") ?? [];
  return newForm("passages", first === undefined ? entered : { ...entered, at: locatorOf(first, last) });
}

/** The selector as a record has it: of a source with several papers, with the file. */
export function writtenSelector(
  taken: Taken,
  file: string,
  papers: readonly string[],
): PlaceSelector | SpecificResource {
  return inPaper(taken.selector, file, papers);
}

/** A record that is taken from a passage, with what the passage says of it. */
export function takenForm(list: TakenList, passage: EnteredMap, { authors }: Source): FormAsked {
  const said = (name: string): string => {
    const value = enteredAt(passage, name);
    return typeof value === "string" ? value : "";
  };
  switch (list) {
    case "claims":
      return newForm(list, { text: "" });
    case "observations":
      return newForm(list, { text: said("paraphrase") || said("quote") });
    case "measurements":
      return newForm(list, {});
    case "positions":
      return newForm(list, {
        who: isSecondHand(passage) ? [] : authors.flatMap(({ id }) => id ?? []),
        words: said("quote"),
      });
  }
}

/** Authors whose position it would be and who are no scholars of the corpus yet. */
export function unlistedAuthors(passage: EnteredMap, { authors }: Source): readonly string[] {
  if (isSecondHand(passage)) return [];
  return authors.flatMap(({ id, name }) => (id === null && typeof name === "string" ? [name] : []));
}

function isSecondHand(passage: EnteredMap): boolean {
  return (enteredAt(passage, "via") ?? "") !== "";
}

/** A passage that quotes another source: from that one, by way of the one that was read. */
export function secondHand(passage: EnteredMap, source: Id, quoted: Id | null): EnteredMap {
  const { via: _, ...others } = passage;
  return quoted === null || quoted === source
    ? { ...others, from: [source] }
    : { ...others, from: [quoted], via: source };
}

/** A record to be made, in the terms of files. */
export interface ToMake {
  readonly list: TakenList;
  readonly values: WrittenMap;
  /** Names that become scholars of the corpus, for a position that is theirs. */
  readonly scholars?: readonly string[];
}

/** The passage of a step: a new one, or one that is recorded already. */
export type OfPassage = { readonly values: WrittenMap; readonly selector: Written } | { readonly id: Id };

/**
 * The step that records a passage and what is taken from it. A position without a claim is about the claim that is taken with
 * it; ids are given where the step is made.
 */
export function capturing(passage: OfPassage, taken: readonly ToMake[]): Action {
  const adds: Extract<RecordAction, { do: "add" }>[] = [];
  const add = (list: ListName, record: WrittenMap): number =>
    adds.push({ do: "add", list, records: [record] }) - 1;
  const from =
    "id" in passage
      ? passage.id
      : madeBefore(add("passages", { ...passage.values, selector: passage.selector }));
  const claims = taken.filter(({ list }) => list === "claims");
  const [claim] = claims.map(({ list, values }) => madeBefore(add(list, { ...values, from })));
  const scholars = new Map<string, string>();
  for (const { list, values, scholars: names = [] } of taken) {
    if (list === "claims") continue;
    for (const name of names)
      if (!scholars.has(name)) scholars.set(name, madeBefore(add("scholars", { name })));
    const who = [...listOf(values["who"]), ...names.map((name) => scholars.get(name) ?? "")];
    add(list, {
      ...values,
      ...(who.length === 0 ? {} : { who }),
      ...(list === "positions" && values["claim"] === undefined && claim !== undefined ? { claim } : {}),
      from,
    });
  }
  const [only] = adds;
  return only && adds.length === 1 ? only : { do: "together", actions: adds };
}

/** Fields that a step fills by itself, so that their absence is no trouble. */
export function filledByStep(
  { list }: FormAsked,
  taken: readonly FormAsked[],
  scholars: number,
): readonly string[] {
  if (list !== "positions") return [];
  const claimed = taken.some((one) => one.list === "claims");
  return [...(claimed ? ["claim"] : []), ...(scholars > 0 ? ["who"] : [])];
}

/** What is to be written of a form, without an id that was only proposed. */
export function valuesToWrite({ entered }: FormAsked, values: WrittenMap): WrittenMap {
  if (enteredAt(entered, "id") !== null && enteredAt(entered, "id") !== "") return values;
  const { id: _, ...others } = values;
  return others;
}

function listOf(value: Written | undefined): readonly Written[] {
  return value === undefined ? [] : typeof value !== "string" && isList(value) ? value : [value];
}

/** Whether a form holds something else than when it was opened. */
export function isChanged(now: EnteredMap, opened: EnteredMap): boolean {
  const plain = (entered: Entered): string => JSON.stringify(entered);
  const names = new Set([...Object.keys(now), ...Object.keys(opened)]);
  return [...names].some(
    (name) => plain(enteredAt(now, name) ?? "") !== plain(enteredAt(opened, name) ?? ""),
  );
}
