import type { Id } from "../../../base/finding.ts";
import { edited, inPlace } from "../../../base/text/edit.ts";
import type { FileChange } from "../../../base/text/edit.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { byText } from "../../../base/order.ts";
import { hashOf } from "../../../base/text/hash.ts";
import { textEdits } from "../../edit/text-edits.ts";
import { abbreviationsIn } from "./abbreviations.ts";
import { extentIn } from "./arrived.ts";
import type { Arrived } from "./arrived.ts";
import { fieldEdits } from "./fields/apply.ts";
import type { Splice } from "./fields/apply.ts";
import type { Format } from "./formats.ts";
import { appended } from "./placed/appended.ts";
import type { Placed } from "./placed/appended.ts";
import type { Put } from "./placed/own-text.ts";
import { troubleWith } from "./placed/reread.ts";
import type { Outcome, Plan } from "./plan.ts";
import { sameLender, sameSource } from "./relatives.ts";
import { closedFor, goalFor, holdingOf } from "./shelf.ts";
import type { Holding } from "./shelf.ts";

/** The changes of files that an import comes to, where entries go by their format, and abbreviations that came along; or why it cannot be. */
export type Changes =
  | {
      readonly changes: readonly FileChange[];
      /** The bibliographies that get entries, and whether each is new. */
      readonly goals: ReadonlyMap<Format, { readonly path: string; readonly isNew: boolean }>;
      readonly abbreviations: readonly string[];
    }
  /** With the place of the entry that is the cause, where it is one: the others can come in without it. */
  | { readonly problem: Text; readonly at: number | null };

const formats: readonly Format[] = ["bib", "ris", "json"];

/** What an import does to the files of a corpus. Every bibliography is read again as it would be, and must say what was meant. */
export function importChanges(plan: Plan): Changes {
  const { shelf } = plan;
  const splices = new Map<Holding, Splice[]>();
  for (const { choice, merge, place } of plan.outcomes) {
    if (choice.do !== "merge" || !merge) continue;
    const { holding, source } = merge.held;
    const taken = merge.differing.filter((one) => choice.take.includes(one.name));
    const wanted = [...merge.missing, ...taken];
    if (wanted.length === 0) continue;
    const extent = extentIn(holding.text, holding.format, source.span);
    const edits = fieldEdits(holding.format, holding.text, extent, wanted);
    if ("problem" in edits) return { ...edits, at: place };
    splices.set(holding, [...(splices.get(holding) ?? []), ...edits]);
  }
  const goals = new Map<Format, { readonly path: string; readonly isNew: boolean }>();
  const abbreviations: string[] = [];
  const fresh: { readonly path: string; readonly text: string }[] = [];
  for (const format of formats) {
    const { path, holding } = goalFor(shelf, format);
    const placed = withOwnKeys(format, holding, placedIn(plan, format));
    if (placed.length === 0) continue;
    const closed = closedFor(shelf, format);
    if (closed !== null)
      return {
        problem: say`Unexpected file \`${closed}\` that cannot be read, expected it mended before entries come in`,
        at: null,
      };
    const force =
      holding && format === "bib"
        ? abbreviationsIn(
            holding,
            holding.lexed.map((one) => one.span),
          )
        : [];
    const more = appended(format, holding?.text ?? null, force, placed);
    if (!more)
      return {
        problem: say`Unexpected text in \`${path}\`, expected it mended before entries come in`,
        at: null,
      };
    goals.set(format, { path, isNew: holding === null });
    abbreviations.push(...more.abbreviations);
    if (holding) splices.set(holding, [...(splices.get(holding) ?? []), more.splice]);
    else fresh.push({ path, text: more.splice.text });
  }
  return finished(plan, splices, fresh, { goals, abbreviations });
}

function finished(
  plan: Plan,
  splices: ReadonlyMap<Holding, readonly Splice[]>,
  fresh: readonly { readonly path: string; readonly text: string }[],
  told: Pick<Extract<Changes, { readonly changes: unknown }>, "goals" | "abbreviations">,
): Changes {
  const { shelf } = plan;
  const changes: FileChange[] = [];
  for (const [holding, all] of splices) {
    const { path: file, text } = holding;
    const edits = all.map((one) => ({ file, ...one })).toSorted(inPlace);
    if (edits.some((one, place) => one.start < (edits[place - 1]?.end ?? 0)))
      return {
        problem: say`Unexpected changes of one entry in \`${file}\` at the same time, expected them one by one`,
        at: null,
      };
    const trouble = troubleWith(plan, holding, holdingOf(file, holding.format, edited(text, edits)));
    if (trouble !== null) return trouble;
    changes.push({ file, madeFor: hashOf(text), edits });
  }
  for (const { path, text } of fresh) {
    const format = formats.find((one) => path.endsWith(`.${one}`)) ?? "bib";
    const trouble = troubleWith(plan, null, holdingOf(path, format, text));
    if (trouble !== null) return trouble;
    changes.push({ file: path, madeFor: null, edits: [{ file: path, start: 0, end: 0, text }] });
  }
  if (fresh.length > 0) {
    const { path, text } = shelf.settings;
    const value = [...shelf.named, ...fresh.map((one) => one.path)];
    const edits = textEdits({ path, text }, { is: "setting", path: ["bibliography"], value });
    if ("problem" in edits) return { ...edits, at: null };
    changes.push({ file: path, madeFor: hashOf(text), edits });
  }
  return { ...told, changes: changes.toSorted((a, b) => byText(a.file, b.file)) };
}

/** A record of RIS has its key made where it is read: one that would get another there than it is to have is given it to keep. */
function withOwnKeys(format: Format, holding: Holding | null, placed: readonly Placed[]): readonly Placed[] {
  if (format !== "ris" || placed.length === 0) return placed;
  const more = appended(format, holding?.text ?? null, [], placed);
  if (!more) return placed;
  const read = holdingOf("", format, edited(holding?.text ?? "", [{ file: "", ...more.splice }])).sources;
  const there = holding?.sources.length ?? 0;
  return placed.map((one, place) =>
    read[there + place]?.key === one.put.key ? one : { ...one, put: { ...one.put, from: "" } },
  );
}

/** The entries that are added to a bibliography of a format, in the order in which they came, lenders in their places. */
function placedIn(plan: Plan, format: Format): readonly Placed[] {
  const { holding } = goalFor(plan.shelf, format);
  return plan.arrived
    .filter((one) => one.format === format)
    .flatMap((arrived) => {
      const added = plan.outcomes.filter((one) => one.arrived === arrived && one.key !== null);
      const keys = keysIn(plan, arrived, holding);
      const sources = added.map((one) => putOf(one, keys));
      const lenders = plan.along
        .filter((one) => one.arrived === arrived)
        .map(({ bib, key }): Put => {
          const { start, end } = bib.span;
          const text = arrived.file.text.slice(start, end);
          return { text, start, from: bib.key, key, keyAt: bib.keySpan, bib, keys };
        });
      return [...sources, ...lenders]
        .toSorted((a, b) => a.start - b.start)
        .map((put): Placed => ({ put, abbreviations: arrived.abbreviations }));
    });
}

function putOf({ entry, key }: Outcome, keys: ReadonlyMap<Id, Id>): Put {
  const { text, start, source, bib } = entry;
  return { text, start, from: source.key, key: key ?? source.key, keyAt: source.keySpan, bib, keys };
}

/** Keys of a file that came in which are others in the corpus: of what is added under another, and of what is there already. */
function keysIn(plan: Plan, arrived: Arrived, holding: Holding | null): ReadonlyMap<Id, Id> {
  const keys = new Map<Id, Id>();
  for (const { entry, key, arrived: from } of plan.outcomes) {
    if (from !== arrived || entry.bib === null || keys.has(entry.source.key)) continue;
    const there = key ?? sameSource(holding, entry);
    if (there !== undefined) keys.set(entry.source.key, there);
  }
  for (const { bib, key, arrived: from } of plan.along) if (from === arrived) keys.set(bib.key, key);
  for (const lender of arrived.lenders) {
    if (keys.has(lender.key)) continue;
    const there = sameLender(holding, lender);
    if (there !== undefined) keys.set(lender.key, there);
  }
  return keys;
}
