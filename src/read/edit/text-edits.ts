import type { Edit } from "../../base/finding.ts";
import { edited, inPlace } from "../../base/text/edit.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Changing } from "../../base/text/texts.ts";
import { listNames } from "../grammar/kinds.ts";
import { settingsFields } from "../grammar/settings.ts";
import type { ListName } from "../grammar/field.ts";
import type { SourceFile } from "../source-file.ts";
import { alone, large, piecesOf, readPiece } from "../yaml/pieces.ts";
import { masked } from "../yaml/split.ts";
import { readYaml, withLineFeeds } from "../yaml/text.ts";
import type { YamlText } from "../yaml/text.ts";
import type { Desk, Manner } from "./change/desk.ts";
import { setAt } from "./change/set.ts";
import { handOf, quotesIn } from "./hand/hand.ts";
import type { Hand } from "./hand/hand.ts";
import { columnOf } from "./hand/lines.ts";
import { withAt } from "./hand/order.ts";
import { overLines } from "./hand/typed.ts";
import { addRecords } from "./records/add.ts";
import { atEnd } from "./records/lists.ts";
import { tableOf } from "./records/table.ts";
import { takeRecord } from "./records/take.ts";
import { isEndless } from "./site/endless.ts";
import { isFlow, saidAt } from "./site/site.ts";
import type { Part, Site } from "./site/site.ts";
import { sitesIn } from "./site/sites.ts";
import type { Sites } from "./site/sites.ts";
import { tableEdits } from "./table/table-edits.ts";
import type { CannotChange, TextChange } from "./text-change.ts";
import { isList, saysSame, writtenOf } from "./written.ts";
import type { Written, WrittenMap } from "./written.ts";

/** From the least intrusive on; the first that reads as the change was meant is taken. */
const manners: readonly Manner[] = [
  { explicit: false, piecewise: true },
  { explicit: true, piecewise: true },
  { explicit: false, piecewise: false },
  { explicit: true, piecewise: false },
];

/**
 * The edits that make one change in a file, as a person would make it: everything else stays byte for byte, and the
 * file then reads as before but for the change. A value that other places name through an anchor is not changed: it
 * would say another thing there too, or their lines would have to change.
 */
export function textEdits(file: SourceFile, change: TextChange): readonly Edit[] | CannotChange {
  if (file.path.endsWith(".csv")) return tableEdits(file, change);
  const read = { ...file, text: withLineFeeds(file.text) };
  const inItem = read.text.length >= large && change.is === "field" ? editsInItem(read, change) : null;
  return inItem ?? editsIn(read, change);
}

/** So many records of a large file tell how its writer writes. */
const enough = 50;

/** The edits of a change to a record of a large file, worked out on that record alone; null where they cannot be. */
function editsInItem(
  { path, text }: SourceFile,
  change: Extract<TextChange, { readonly is: "field" }>,
): readonly Edit[] | null {
  const pieces = piecesOf(text)?.pieces ?? [];
  const piece = pieces.find(({ start, end }) => start <= change.record && change.record < end);
  if (!piece || !readPiece(path, text, piece)) return null;
  const { lead, text: own } = alone(text, piece);
  const by = piece.start - lead;
  const sample = text.slice(0, pieces[Math.min(enough, pieces.length) - 1]?.end);
  const hand = handOf(sample, sitesIn(sample).root);
  const made = editsIn({ path, text: own }, { ...change, record: change.record - by }, hand);
  if ("problem" in made) return null;
  const after = edited(own, made);
  if (after.endsWith("\n") !== own.endsWith("\n") || piecesOf(after)?.pieces.length !== 1) return null;
  return made.map((one) => ({ ...one, start: one.start + by, end: one.end + by }));
}

function editsIn(
  file: SourceFile,
  change: TextChange,
  known: Hand | null = null,
): readonly Edit[] | CannotChange {
  const { path, text } = file;
  const before = readYaml(path, text);
  if (!before.root)
    return { problem: say`Unexpected file \`${path}\` that cannot be read, expected it mended first` };
  const sites = sitesIn(masked(text, before.split));
  if (sites.root && isEndless(sites.root))
    return {
      problem: say`Unexpected file \`${path}\` with aliases that cannot be read, expected it mended first`,
    };
  const start = "record" in change ? change.record : change.is === "add" ? change.after : undefined;
  const place = start === undefined ? null : recordAt(sites, start);
  if (start !== undefined && !place)
    throw new Error(`unexpected place ${start}, expected a record of ${path}`);
  const wanted = intended(before, change, place);
  const hand = known ?? handOf(text, sites.root);
  for (const manner of manners) {
    const made = written(file, { sites, hand }, change, place, manner);
    if ("problem" in made || readsAs(file, made, wanted, before)) return made;
  }
  throw new Error(`unexpected reading of ${path} after a change, expected what was meant`);
}

/** The edits of a change written in one manner, in the order of their places. */
function written(
  { path, text }: SourceFile,
  { sites, hand }: { readonly sites: Sites; readonly hand: Hand },
  change: TextChange,
  place: RecordSite | null,
  manner: Manner,
): readonly Edit[] | CannotChange {
  const edits: Edit[] = [];
  const problems: Text[] = [];
  const desk: Desk = {
    text,
    hand,
    quotes: place ? quotesIn(place.item.value) : null,
    manner,
    put: (start, end, put) => {
      if (start !== end || put !== "") edits.push({ file: path, start, end, text: put });
    },
    refuse: (problem) => problems.push(problem),
  };
  write(desk, sites, change, place);
  const [problem] = problems;
  return problem === undefined ? edits.toSorted(inPlace) : { problem };
}

/** A record where it stands: its list, and the item of that list. */
interface RecordSite {
  readonly list: Part;
  readonly name: ListName;
  readonly item: Part;
  readonly index: number;
}

function recordAt({ root }: Sites, start: number): RecordSite | null {
  for (const list of root?.parts ?? []) {
    const name = listNames.find((one) => one === list.key);
    if (!name) continue;
    const index = list.value.parts.findIndex(({ value }) => bearerOf(value).start === start);
    const item = list.value.parts[index];
    if (item) return { list, name, item, index };
  }
  return null;
}

function bearerOf(site: Site): Site {
  return site.target ?? site;
}

function intended({ root }: YamlText, change: TextChange, place: RecordSite | null): Written {
  const whole = (root ? writtenOf(root) : {}) as WrittenMap;
  if (change.is === "setting") return withAt(whole, change.path, change.value) ?? {};
  if (change.is === "add") {
    const said = whole[change.list] ?? [];
    const items = isList(said) ? said : [];
    const at = place ? place.index + 1 : items.length;
    return withAt(whole, [change.list], [...items.slice(0, at), ...change.records, ...items.slice(at)]) ?? {};
  }
  if (!place) return whole;
  const path = [place.name, place.index];
  if (change.is === "take") return withAt(whole, path, null) ?? {};
  return withAt(whole, [...path, ...change.path], change.value) ?? {};
}

function write(desk: Desk, sites: Sites, change: TextChange, place: RecordSite | null): void {
  const { text } = desk;
  switch (change.is) {
    case "add":
      return addRecords(desk, sites, change.list, change.records, place?.item ?? null);
    case "take":
      return place ? takeRecord(desk, place.list, place.item) : undefined;
    case "field": {
      if (!place) return;
      const { list, item, name } = place;
      const column = columnOf(text, item.from);
      const slot = {
        flow: isFlow(list.value),
        item: true,
        column,
        taken: 2,
        at: item.at,
        table: tableOf(name, list.value),
        top: true,
      } as const;
      return setAt(desk, item.value, withAt(saidAt(item.value), change.path, change.value) ?? {}, slot);
    }
    case "setting": {
      const table = { fields: settingsFields };
      const value = withAt(sites.root ? saidAt(sites.root) : {}, change.path, change.value) ?? {};
      const slot = { flow: false, item: false, column: 0, taken: 0, at: 0, table, top: true } as const;
      if (sites.root) return setAt(desk, sites.root, value, slot);
      const place = { hand: desk.hand, quotes: null, explicit: desk.manner.explicit, was: null, ...slot };
      if (typeof value !== "string") return atEnd(desk, sites, overLines(value, 0, place), true);
    }
  }
}

function readsAs(
  { path, text }: SourceFile,
  edits: readonly Edit[],
  wanted: Written,
  before: YamlText,
): boolean {
  if (edits.some(({ start }, place) => start < (edits[place - 1]?.end ?? 0))) return false;
  const after = edits.length === 0 ? before : readYaml(path, edited(text, edits));
  if (!after.root || after.findings.length > before.findings.length) return false;
  return saysSame(withoutEmptyLists(writtenOf(after.root)), withoutEmptyLists(wanted));
}

/** A list of records that has none says the same as no list. */
function withoutEmptyLists(file: Written): Written {
  if (typeof file === "string" || isList(file)) return file;
  const lists = Object.entries(file).filter(([, value]) => !(isList(value) && value.length === 0));
  return Object.assign(Object.create(null), Object.fromEntries(lists)) as WrittenMap;
}

/** Makes a change in one of some texts, a new one of which begins with `head`; why it cannot be made, or null. */
export function changeText(
  texts: Changing,
  file: string,
  change: TextChange,
  head = "",
): { readonly problem: Text } | null {
  const text = texts.get(file) ?? "";
  const edits = textEdits({ path: file, text }, change);
  if ("problem" in edits) return edits;
  texts.set(file, `${texts.has(file) ? "" : head}${edited(text, edits)}`);
  return null;
}
