import { hashOf } from "../../../../base/text/hash.ts";
import type { Written } from "../../../../read/edit/written.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import {
  passageForm,
  takenForm,
  takenLists,
  unlistedAuthors,
  writtenSelector,
} from "../../../../show/desk/papers/capture/captured.ts";
import type { TakenList } from "../../../../show/desk/papers/capture/captured.ts";
import type { PaperData, PassageLine } from "../../../../show/desk/papers/page.ts";
import type { Taken } from "../../../../show/desk/papers/taken.ts";
import { keepAtDesk, keptAtDesk } from "../../../desk/drafts.ts";

/** A record that is being taken from a passage. */
export interface Also {
  readonly list: TakenList;
  readonly entered: EnteredMap;
  /** Names that are to become scholars of the corpus, for a position that is theirs. */
  readonly scholars: readonly string[];
}

/** What is being taken from a paper: a new passage and what rests on it, or more from one that is recorded. */
export interface Begun {
  readonly source: string;
  /** The passage that is recorded already; null for a new one. */
  readonly passage: string | null;
  /** Where a new passage is found again, as it will be written. */
  readonly selector: Written;
  readonly entered: EnteredMap;
  /** Words of which it cannot be told how they are written. */
  readonly joined: readonly string[];
  readonly kept: readonly string[];
  readonly also: readonly Also[];
}

/** Begins with what was taken from the page. */
export function begunFrom(
  source: PaperData,
  taken: Taken,
  file: string,
  papers: readonly string[],
  printed: string | null,
): Begun {
  return {
    source: source.key,
    passage: null,
    selector: writtenSelector(taken, file, papers),
    entered: passageForm(source, taken, printed).entered,
    joined: taken.quote?.joined ?? [],
    kept: taken.quote?.kept ?? [],
    also: [],
  };
}

/** Begins to take more from a passage that is recorded. */
export function begunWith(source: PaperData, passage: PassageLine): Begun {
  const { id, at, quote, lang, paraphrase, of } = passage;
  return {
    source: source.key,
    passage: id,
    selector: "",
    entered: {
      at,
      ...(lang === null ? {} : { lang }),
      ...(quote === null ? {} : { quote }),
      ...(paraphrase === null ? {} : { paraphrase }),
      ...(of === null ? {} : { via: source.key }),
    },
    joined: [],
    kept: [],
    also: [],
  };
}

/** One more record from the passage, with what the passage says of it. */
export function withAlso(begun: Begun, list: TakenList, source: PaperData): Begun {
  const { entered } = takenForm(list, begun.entered, source);
  const scholars = list === "positions" ? unlistedAuthors(begun.entered, source) : [];
  return { ...begun, also: [...begun.also, { list, entered, scholars }] };
}

const prefix = "paper-";

/** The name under which the desk keeps what was begun at a place. */
export function draftNameOf({ source, passage, selector }: Begun): string {
  return `${prefix}${hashOf(JSON.stringify([source, passage, selector])).slice(0, 16)}`;
}

/** Keeps what was begun at the desk; null once it is saved or thrown away. */
export function keepBegun(name: string, begun: Begun | null): void {
  keepAtDesk(name, begun);
}

/** What was begun from a source and not saved. */
export async function keptBegun(source: string): Promise<readonly Begun[]> {
  const all = await keptAtDesk(prefix);
  return all.flatMap(({ value }) => (isBegun(value) && value.source === source ? [value] : []));
}

/** Whether something that the desk kept is what a sheet can go on with: its folder is not only ours. */
function isBegun(value: unknown): value is Begun {
  if (typeof value !== "object" || value === null) return false;
  const { source, passage, selector, entered, joined, kept, also } = value as Readonly<
    Record<string, unknown>
  >;
  return (
    typeof source === "string" &&
    (passage === null || typeof passage === "string") &&
    isFilled(selector) &&
    isFilled(entered) &&
    typeof entered === "object" &&
    isTexts(joined) &&
    isTexts(kept) &&
    Array.isArray(also) &&
    also.every(isAlso)
  );
}

function isAlso(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { list, entered, scholars } = value as Readonly<Record<string, unknown>>;
  return (
    takenLists.some((one) => one === list) &&
    typeof entered === "object" &&
    isFilled(entered) &&
    isTexts(scholars)
  );
}

function isTexts(value: unknown): boolean {
  return Array.isArray(value) && value.every((one) => typeof one === "string");
}

/** Whether a value is made of texts, lists and maps alone. */
function isFilled(value: unknown): boolean {
  if (typeof value === "string") return true;
  return typeof value === "object" && value !== null && Object.values(value).every(isFilled);
}
