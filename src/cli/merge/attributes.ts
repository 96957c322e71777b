/** The endings of the files that are merged by more than their lines. */
const endings = ["yaml", "yml", "csv", "bib", "ris", "json"];

/** The name by which attributes and settings of a repository speak of this way to merge. */
export const mergeName = "variorum";

/** The file in which a repository says how its files are merged. */
export const attributesFile = ".gitattributes";

/** What a corpus's attributes say; `before` is what they say already, which stays to the byte. */
export function attributesText(before = ""): string {
  const nl = before.includes("\r\n") ? "\r\n" : "\n";
  const missing = endings.filter(
    (ending) => !new RegExp(`^\\*\\.${ending}[ \\t].*\\bmerge\\b`, "mu").test(before),
  );
  if (missing.length === 0) return before;
  const head = "# Merged by record where `variorum merge-files --set-up` was run, and by lines elsewhere.";
  const gap = before === "" ? "" : before.endsWith("\n") ? nl : `${nl}${nl}`;
  return `${before}${gap}${[head, ...missing.map((ending) => `*.${ending} merge=${mergeName}`)].join(nl)}${nl}`;
}
