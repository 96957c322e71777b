import type { ReadingLine, Status } from "../../../../show/desk/literature/reading-list.ts";
import { statuses } from "../../../../show/desk/literature/reading-list.ts";
import { plainWords } from "../../../../show/search/fold.ts";
import { byText } from "../../../../base/order.ts";

/** Which sources are shown, and in which order. */
export interface Look {
  /** A status, `unlisted`, `odd`, or all. */
  readonly show: string;
  readonly words: string;
  readonly order: "year" | "author" | "status";
}

const isShown = ({ status, odd }: ReadingLine, show: string): boolean =>
  show === "all" || (show === "odd" ? odd !== null : (status ?? "unlisted") === show);

/** The sources that are looked at. */
export function chosenLines(lines: readonly ReadingLine[], look: Look): readonly ReadingLine[] {
  const wanted = plainWords(look.words).split(/\s+/u).filter(Boolean);
  const shown = lines.filter((line) => {
    const text = plainWords(`${line.label} ${line.title} ${line.key} ${line.note ?? ""}`);
    return isShown(line, look.show) && wanted.every((word) => text.includes(word));
  });
  if (look.order === "author")
    return shown.toSorted((a, b) => byText(plainWords(a.label), plainWords(b.label)));
  const rank = (status: Status | null): number => (status === null ? -1 : statuses.indexOf(status));
  return look.order === "status" ? shown.toSorted((a, b) => rank(a.status) - rank(b.status)) : shown;
}

/** How many sources there are of each way of being shown. */
export function countsOf(lines: readonly ReadingLine[]): readonly (readonly [show: string, count: number])[] {
  return ["all", "unlisted", ...statuses, "odd"].map(
    (show) => [show, lines.filter((line) => isShown(line, show)).length] as const,
  );
}

/** The present day as the reader's clock has it, `2026-11-26`. */
export function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
