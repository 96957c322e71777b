import { Link } from "wouter";
import type { Id } from "../../../../base/finding.ts";
import { papersOf } from "../../../../show/desk/papers/papers.ts";
import type { PaperLink } from "../../../../show/desk/papers/records/links.ts";
import { pathOf, underLens } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useEnclosed } from "../../../model/enclosed.ts";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { literatureWords } from "../../../words/reading/literature.ts";

interface Props {
  readonly links: readonly PaperLink[];
  /** The source whose own sheet it is; null on that of another record. */
  readonly source: Id | null;
  readonly asOf: number | null;
}

/** From the sheet of a record into the papers that it is from; where a source has none yet, to where one is brought in. */
export function ToPaper({ links, source, asOf }: Props) {
  const enclosed = useEnclosed();
  const canSave = useDesk().state.readOnly === null;
  if (enclosed === null) return null;
  const files = enclosed.map((one) => one.file);
  const there = links.filter(({ key, keys }) => papersOf(keys, files).has(key));
  if (there.length === 0)
    return canSave && source !== null ? (
      <p className="crossing">
        <Link href={underLens(pathOf("paper", source), asOf)}>{literatureWords.bringPaper}</Link>
      </p>
    ) : null;
  return (
    <p className="crossing">
      {there.map((link) => (
        <Link key={pathTo(link)} href={underLens(pathTo(link), asOf)}>
          {wordsFor(link)}
        </Link>
      ))}
    </p>
  );
}

function pathTo({ key, passage, printed }: PaperLink): string {
  const paper = pathOf("paper", key);
  if (passage !== null) return `${paper}?passage=${encodeURIComponent(passage)}`;
  return printed === null ? paper : `${paper}?printed=${printed}`;
}

function wordsFor({ label, passage, printed }: PaperLink): string {
  if (passage !== null) return words.openIn(label);
  return printed === null ? words.open(label) : words.openAt(label, printed);
}
