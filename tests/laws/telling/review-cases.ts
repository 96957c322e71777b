import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build, compute } from "../../../src/build.ts";
import type { Checked, Lens, Memo, Model, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Block, Inline, Inlines, Manuscript } from "../../../src/show/telling/blocks/block.ts";
import { reviewOf } from "../../../src/show/telling/review/review.ts";
import type { ReviewAsked } from "../../../src/show/telling/review/review.ts";
import { usualSections } from "../../../src/show/telling/review/sections.ts";

/** A corpus worked out, ready to be reviewed. */
export interface Worked {
  readonly model: Model;
  readonly findings: Checked<Model>["findings"];
  readonly memo: Memo;
}

/**
 * Works a corpus out with its plan and its history. The numbers of the record as it is are computed unless `numbers` is
 * false; those of other years and of outcomes that nobody has seen are taken as far as they are the same.
 */
export function worked(
  files: readonly SourceFile[],
  {
    lens = {},
    numbers = true,
    plan = true,
    memo = emptyMemo(),
  }: { lens?: Lens; numbers?: boolean; plan?: boolean; memo?: Memo } = {},
): Worked {
  if (numbers) computeOwn(files, lens, memo);
  const checked = build(files, plugins, memo, lens, { plan, history: true });
  if (!checked.model) throw new Error("the corpus has no model");
  return { model: checked.model, findings: checked.findings, memo };
}

/** Computes the numbers that the record has as it is, and none that only a trial asks for. */
function computeOwn(files: readonly SourceFile[], lens: Lens, memo: Memo): void {
  for (;;) {
    const missing = build(files, plugins, memo, lens).model?.derivations.missing ?? [];
    if (missing.length === 0) return;
    for (const run of missing)
      memo.compute.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
  }
}

/** Its review, with all sections unless others are asked for. */
export function reviewed(
  { model, findings, memo }: Worked,
  { question = null, sections = usualSections([]), prose = new Map() }: Partial<ReviewAsked> = {},
): Manuscript {
  return reviewOf({ model, findings, plugins, memo: memo.compute }, { question, sections, prose });
}

/** Every inline of some blocks at any depth. */
export function inlinesIn(blocks: readonly Block[]): Inlines {
  return blocks.flatMap((block) => linesOf(block).flat().flatMap(within));
}

function within(one: Inline): Inlines {
  const inner = typeof one !== "string" && "is" in one && "of" in one ? one.of.flatMap(within) : [];
  return [one, ...inner];
}

/** The lines of one block. */
export function linesOf(block: Block): readonly Inlines[] {
  switch (block.is) {
    case "list":
      return block.items;
    case "table":
      return [block.caption, ...block.head, ...block.rows.flat()];
    case "plate":
      return [block.caption, [block.alt]];
    case "terms":
      return block.rows.flat();
    case "heading":
    case "paragraph":
    case "quotation":
    case "caution":
      return [block.of];
    default:
      return [];
  }
}

/** What a line says, in English; a source by its key. */
export function plain(of: Inlines): string {
  return of.map(plainOne).join("");
}

function plainOne(one: Inline): string {
  if (typeof one === "string" || "say" in one) return inEnglish(one);
  switch (one.is) {
    case "words":
      return one.quoted ? `“${one.text}”` : one.text;
    case "printed":
      return inEnglish(one.text);
    case "standing":
      return one.standing;
    case "citing":
      return `[${one.cites.map(({ id, at }) => (at === undefined ? id : `${id}, ${at}`)).join("; ")}]`;
    case "note":
      return "";
    default:
      return plain(one.of);
  }
}

/** The text of a manuscript, a line for each of its blocks' lines, with the notes at the end. */
export function textOf(manuscript: Pick<Manuscript, "blocks">): string {
  const notes = inlinesIn(manuscript.blocks).flatMap((one) =>
    typeof one !== "string" && "is" in one && one.is === "note" ? [plain(one.of)] : [],
  );
  return [...manuscript.blocks.flatMap(linesOf).map(plain), ...notes].join("\n");
}

/** The blocks of one section, by the anchor of its heading; nothing where it is left out. */
export function sectionOf({ blocks }: Manuscript, name: string): readonly Block[] {
  const from = blocks.findIndex((one) => one.is === "heading" && one.anchor === `section-${name}`);
  if (from < 0) return [];
  const after = blocks.slice(from + 1);
  const end = after.findIndex((one) => one.is === "heading" && one.level === 1);
  return end < 0 ? after : after.slice(0, end);
}
