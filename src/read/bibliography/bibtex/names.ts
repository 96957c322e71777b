/** The fields of biblatex and BibTeX that reach CSL; dates and `and others` are read by us. */
export const usedFields: ReadonlySet<string> = new Set(
  (
    "abstract address addendum annotation annote archiveprefix author bookauthor bookpagination booksubtitle booktitle " +
    "booktitleaddon chapter doi edition editor eid entrysubtype eprint eprinttype eventtitle eventtitleaddon " +
    "howpublished institution isan isbn ismn isrn issn issue issuesubtitle issuetitle issuetitleaddon iswc journal " +
    "journalsubtitle journaltitle journaltitleaddon keywords langid language library location mainsubtitle maintitle " +
    "maintitleaddon note number numpages organization origlocation origpublisher origtitle pages pagetotal part pmcid " +
    "pmid publisher pubstate school series shortjournal shortseries shorttitle subtitle title titleaddon translator " +
    "type url venue version volume volumes"
  ).split(" "),
);

/** The kinds of entry of BibTeX and biblatex (its manual, section 2.1), and two that are often met. */
export const knownKinds: ReadonlySet<string> = new Set(
  (
    "article artwork audio bibnote book bookinbook booklet collection commentary conference dataset electronic image " +
    "inbook incollection inproceedings inreference jurisdiction legal legislation letter manual mastersthesis misc " +
    "movie music mvbook mvcollection mvproceedings mvreference online patent performance periodical phdthesis " +
    "proceedings reference report review set software standard suppbook suppcollection suppperiodical techreport " +
    "thesis unpublished video www xdata bachelorsthesis newspaper"
  ).split(" "),
);

/** The fields that hold names joined by `and`. */
export const nameFields: ReadonlySet<string> = new Set(["author", "bookauthor", "editor", "translator"]);

/** Kinds of entry that citation-js does not know, and those it reads alike. */
export const kindAlias: ReadonlyMap<string, string> = new Map([
  ["suppbook", "inbook"],
  ["suppcollection", "incollection"],
  ["suppperiodical", "article"],
  ["bachelorsthesis", "thesis"],
  ["newspaper", "article"],
]);

/** What a parent does not hand down: identity and sorting (biblatex manual, appendix B), and long texts about itself. */
export const notInherited: ReadonlySet<string> = new Set(
  (
    "ids crossref xref xdata entryset entrysubtype execute label options presort related relatedoptions relatedstring " +
    "relatedtype shorthand shorthandintro sortkey abstract annotation annote keywords file doi url urldate isbn"
  ).split(" "),
);

const inBook = ["inbook", "bookinbook", "suppbook"];
const inCollection = ["incollection", "inreference", "suppcollection"];

/** What a parent's title is called in a child: parent kind to the prefix of the field and the kinds of children. */
export const titleInheritance: ReadonlyMap<
  string,
  { readonly prefix: string; readonly children: ReadonlySet<string> }
> = new Map([
  ["mvbook", { prefix: "main", children: new Set(["book", ...inBook]) }],
  ["mvcollection", { prefix: "main", children: new Set(["collection", "reference", ...inCollection]) }],
  ["mvreference", { prefix: "main", children: new Set(["collection", "reference", ...inCollection]) }],
  ["mvproceedings", { prefix: "main", children: new Set(["proceedings", "inproceedings"]) }],
  ["book", { prefix: "book", children: new Set(inBook) }],
  ["collection", { prefix: "book", children: new Set(inCollection) }],
  ["reference", { prefix: "book", children: new Set(inCollection) }],
  ["proceedings", { prefix: "book", children: new Set(["inproceedings", "conference"]) }],
  ["periodical", { prefix: "journal", children: new Set(["article", "suppperiodical"]) }],
]);

/** Language names of babel and biblatex as BCP 47 tags, which CSL asks for (common practice). */
export const languageTags: ReadonlyMap<string, string> = new Map(
  (
    "english=en american=en-US usenglish=en-US british=en-GB ukenglish=en-GB canadian=en-CA australian=en-AU german=de " +
    "ngerman=de austrian=de-AT naustrian=de-AT nswissgerman=de-CH swissgerman=de-CH french=fr francais=fr canadien=fr-CA " +
    "italian=it spanish=es catalan=ca portuguese=pt portuges=pt brazilian=pt-BR brazil=pt-BR dutch=nl danish=da " +
    "swedish=sv norwegian=no norsk=nb nynorsk=nn finnish=fi icelandic=is estonian=et latvian=lv lithuanian=lt polish=pl " +
    "czech=cs slovak=sk slovene=sl slovenian=sl croatian=hr serbian=sr bosnian=bs hungarian=hu magyar=hu romanian=ro " +
    "bulgarian=bg russian=ru ukrainian=uk greek=el polutonikogreek=grc ancientgreek=grc latin=la turkish=tr hebrew=he " +
    "arabic=ar persian=fa farsi=fa irish=ga welsh=cy scottish=gd basque=eu galician=gl chinese=zh japanese=ja korean=ko"
  )
    .split(" ")
    .map((pair): [string, string] => {
      const [name = "", tag = ""] = pair.split("=");
      return [name, tag];
    }),
);
