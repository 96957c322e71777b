/** A place in a source as the processor of styles takes it; what no style has a word for is a suffix, as it was written. */
export interface Locator {
  readonly label?: string;
  readonly locator?: string;
  readonly suffix?: string;
}

/** The locators of CSL 1.0.2 by the words scholars put before them, without point and plural. */
const labels: ReadonlyMap<string, string> = new Map(
  Object.entries({
    p: "page",
    page: "page",
    // How pages are cited in German and the Nordic languages, Greek, Arabic, Russian, and the Romance languages (common practice).
    s: "page",
    seite: "page",
    σ: "page",
    σελ: "page",
    ص: "page",
    с: "page",
    стр: "page",
    pág: "page",
    pag: "page",
    ch: "chapter",
    chap: "chapter",
    chapter: "chapter",
    fig: "figure",
    figure: "figure",
    f: "folio",
    fol: "folio",
    folio: "folio",
    col: "column",
    column: "column",
    n: "note",
    note: "note",
    no: "issue",
    l: "line",
    line: "line",
    v: "verse",
    verse: "verse",
    bk: "book",
    book: "book",
    pt: "part",
    part: "part",
    para: "paragraph",
    paragraph: "paragraph",
    sec: "section",
    section: "section",
    table: "table",
    app: "appendix",
    appendix: "appendix",
    vol: "volume",
    volume: "volume",
    sv: "sub-verbo",
  }),
);

/**
 * The locator of a citation, `p. 12, fig. 3`: the word before it names what is counted, and what counts pages needs
 * none (`47`). A volume that is the source's own (`vol. 2, p. 33` or `2:33` in volume 2) is left out, since styles
 * print it themselves.
 */
export function locatorOf(written: string, volume?: string): Locator {
  const said = withoutVolume(written.trim(), volume);
  if (said === "") return {};
  const section = /^§+\s*(.+)$/u.exec(said)?.[1];
  if (section !== undefined) return { label: "section", locator: section };
  if (/^(?:\d|[ivxlcdm]+(?:$|[\s,;–-]))/iu.test(said)) return { label: "page", locator: said };
  const [, word = "", rest = ""] = /^(\p{L}+(?:\.\p{L}+)*)\.?\s*(\S.*)$/u.exec(said) ?? [];
  const label = labelOf(word.replaceAll(".", "").toLowerCase());
  return label === undefined || rest === "" ? { suffix: `, ${said}` } : { label, locator: rest };
}

/** Plurals are the word with an s (`figs.`), or its first letter twice (`pp.`, `nn.`). */
function labelOf(word: string): string | undefined {
  const single = /^(\p{L})\1$/u.exec(word)?.[1] ?? word.replace(/s$/, "");
  return labels.get(word) ?? labels.get(single);
}

function withoutVolume(written: string, volume: string | undefined): string {
  if (volume === undefined || volume === "") return written;
  const [, said = "", rest = ""] = /^(?:vols?\.?\s*)?([\p{L}\d]+)\s*[:,]\s*(\S.*)$/iu.exec(written) ?? [];
  const named = /^vol/i.test(written) || /^[\p{L}\d]+\s*:/u.test(written);
  return named && said === volume.trim() ? rest : written;
}
