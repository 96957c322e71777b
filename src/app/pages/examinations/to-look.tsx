import { Link } from "wouter";
import type { Text } from "../../../base/text/said/said.ts";
import { underLens } from "../../address.ts";
import { dirOf } from "../../parts/link.tsx";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  readonly id: string;
  readonly text: Text;
  readonly asOf: number | null;
}

/** The path of the list of examinations, at one of them. */
export const lookPath = (id: string): string => `/examinations?at=${encodeURIComponent(id)}`;

/** The name of an examination, leading to its place in the list. */
export function ToLook({ id, text, asOf }: Props) {
  const name = inReadersWords(text);
  return (
    <Link href={underLens(lookPath(id), asOf)} dir={dirOf(name)} onClick={() => void toLook(id)}>
      {name}
    </Link>
  );
}

/** Takes the focus to an examination of the list, unfolding what it stands in; tells whether it is there. */
export function toLook(id: string): boolean {
  const head = lookHeads().find((one) => one.dataset["look"] === id);
  if (!head) return false;
  for (let fold = head.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  head.focus({ preventScroll: true });
  head.scrollIntoView({ block: "start" });
  return true;
}

/** Takes the focus to the next examination that is in sight, or to the one before. */
export function toNextLook(way: "next" | "before"): void {
  const from = document.activeElement ?? document.body;
  const heads = lookHeads().filter((head) => head.checkVisibility());
  const where = (head: HTMLElement): number => from.compareDocumentPosition(head);
  const head =
    way === "next"
      ? heads.find((one) => one !== from && where(one) & Node.DOCUMENT_POSITION_FOLLOWING)
      : heads.findLast((one) => one !== from && where(one) & Node.DOCUMENT_POSITION_PRECEDING);
  head?.focus({ preventScroll: true });
  head?.scrollIntoView({ block: "start" });
}

function lookHeads(): readonly HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>("main [data-look]")];
}
