import type { Id } from "../../../base/finding.ts";
import { fileNameOf, freePaper, inReadingOrder, papersFolder } from "../../../show/desk/papers/papers.ts";
import { useDesk } from "../../desk/desk.tsx";
import { enclose } from "../../model/enclosed.ts";
import { DropFiles } from "../../parts/leaves/drop-files.tsx";
import { paperWords as words } from "../../words/reading/papers.ts";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  /** The source whose paper it is. */
  readonly source: Id;
  /** All files that are in the corpus's folder. */
  readonly files: readonly string[];
  readonly onBrought: (file: string) => void;
  /** Is told what became of each file, in words. */
  readonly onSaid: (said: readonly string[]) => void;
}

/** Where a paper of a source is dropped or chosen; it is put into the corpus's folder under the source's key. */
export function BringPaper({ source, files, onBrought, onSaid }: Props) {
  if (useDesk().state.readOnly !== null) return null;
  const bring = async (given: readonly File[]): Promise<void> => {
    if (given.length === 0) return;
    onSaid([words.bringing]);
    const told: string[] = [];
    const brought: string[] = [];
    for (const { content, file } of placesFor(source, files, given)) {
      const why = file === null ? words.noPaper : await enclose(file, content);
      if (why !== null) told.push(words.notBrought(content.name, inReadersWords(why)));
      else if (file !== null) {
        told.push(words.brought(file));
        brought.push(file);
      }
    }
    onSaid(told);
    const [first] = brought;
    if (first !== undefined) onBrought(first);
  };
  return (
    <DropFiles
      look="paper-bring"
      words={{ drop: words.drop, choose: words.choose, label: words.bring }}
      accept=".pdf,.png,.jpg,.jpeg,.webp,.gif"
      several
      onFiles={(given) => void bring(given)}
    />
  );
}

/** Where each file is to lie: a PDF by the source's key, pictures as the next pages in a folder of it, in the order of their names; null for what is no paper. */
function placesFor(
  source: Id,
  files: readonly string[],
  given: readonly File[],
): readonly { readonly content: File; readonly file: string | null }[] {
  const taken = [...files];
  return given
    .toSorted((a, b) => inReadingOrder(a.name, b.name))
    .map((content) => {
      const ending = /\.(pdf|png|jpe?g|webp|gif)$/i.exec(content.name)?.[1]?.toLowerCase();
      if (ending === undefined) return { content, file: null };
      const file = ending === "pdf" ? freePaper(source, ending, taken) : nextPage(source, ending, taken);
      taken.push(file);
      return { content, file };
    });
}

function nextPage(source: Id, ending: string, taken: readonly string[]): string {
  const folder = `${papersFolder}${fileNameOf(source)}/`;
  const numbers = taken.flatMap((file) =>
    file.startsWith(folder) ? Number(/^(\d{1,6})\./.exec(file.slice(folder.length))?.[1] ?? 0) : [],
  );
  const next = Math.max(0, ...numbers) + 1;
  return `${folder}${String(next).padStart(4, "0")}.${ending}`;
}
