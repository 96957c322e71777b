import type { Format } from "../input.ts";

const yaml =
  '\n|\r\n|\r| |  |    |- |-|\n- |\n  - |: |:|#| # | #a|"|\'|\'\'|\\|\\"|[|]|{|}|, |,|&a |*a|>|>-|\t|!|!x |?|? |@|%|`|~|<<: |---\n|...\n|=|[]|{}|""|null|true|id: |text: |source: k\n|claims:\n|note: x\n|x-a: |'
    .split("|")
    .concat("|", "|+", ">2\n", ": |\n  ");
const bibtex =
  '@|@book{|@string{a = |@comment{|@xdata{|@preamble{|{|}|"|,| = |#| # |%|\n|\\|\\"{o}|{\\\'e}|$|_|and | and |, |crossref = |xdata = |year = |date = |1990/..|~|--|others|}\n\n@|title = {'.split(
    "|",
  );
const ris =
  "TY  - |TY  - BOOK\n|ER  - \n|ID  - |AU  - |TI  - |PY  - |DA  - |  - |\n|\r|\r\n|UR  - |KW  - |SP  - |ZZ  - x\n|/|,".split(
    "|",
  );
const json =
  '{|}|[|]|"|,|:|null|true|1e999|-|\\|\\u0000|\\ud800|"id"|"id":"a",|"type":"book",|"issued":{"date-parts":[[]]},|"author":[{}],|[[],|"__proto__":{},|\n'.split(
    "|",
  );
const table = ',|;|\t|"|""|\n|\r|\r\n|,,|","|of|dimension|value|unit|uncertainty|id|name|cm|±|,\n,|"\n'.split(
  "|",
);
const xml =
  '<|>|/>|</|"|\'|&|&amp;|&#0;|&#x110000;|<!--|-->|<![CDATA[|]]>|<?xml?>|<!DOCTYPE a [<!ENTITY b "c">]>|<group>|</group>|<text macro="x"/>|<text variable="title"/>|<choose>|<if>|<names variable="author"/>|<date variable="issued"/>|<number variable="volume"/>| prefix="("| delimiter=""| et-al-min="1"| xmlns=""| disambiguate="true"| near-note="true"'.split(
    "|",
  );
const pdf =
  "<<|>>|[|]|(|)|<|>|/|obj|endobj|stream\n|\nendstream|xref\n|trailer|startxref|%%EOF|0 R|1 0 R|/Length 99999999|/Kids [1 0 R]|/Parent 1 0 R|/Count -1|/Filter /FlateDecode|/Filter [/ASCIIHexDecode /LZWDecode]|/Type /Pages|/Prev 0|BT |ET|Tj|q |/Encrypt 1 0 R|1e38|-1|99999999999".split(
    "|",
  );
const prose =
  "*|_|**|[|]|(|)|`|```|> |# |## |- |1. |[^1]|[^1]: |![|](|<|>|\n\n|    |\\|[@|{|}|@|---\n|| a | b |\n|&lt;|http://".split(
    "|",
  );

/** Pieces of text that mean something in a format, or look as if they did. */
export const signsOf: Readonly<Record<Format, readonly string[]>> = {
  settings: yaml,
  records: yaml,
  bibtex,
  ris,
  "csl-json": json,
  table,
  style: xml,
  paper: pdf,
  prose,
};

/** Letters and signs of Unicode that programs stumble over; the last two are halves of a pair. */
export const oddSigns = [
  "\u0000",
  "\u0007",
  "\u001b[2J",
  "\u007f",
  "\u0085",
  "\u00a0",
  "\u00ad",
  "\u0130",
  "ß",
  "ﬁ",
  "e\u0301",
  "\u0301".repeat(600),
  "\u200b",
  "\u200d",
  "\u200f",
  "\u202e",
  "\u2028",
  "\u2066",
  "\ufeff",
  "\ufffd",
  "\ufffe",
  "😀",
  "👩‍👩‍👧",
  "\u{10ffff}",
  "٣٫٥",
  "१२",
  "½",
  "⅐",
  "−",
  "´",
  "″",
  "ن",
  "\ud83e",
  "\udd37",
];

/** Numbers, dates and quantities that are at an edge or over it. */
export const oddNumbers = [
  "0",
  "-0",
  "-1",
  "1e999",
  "-1e999",
  "1e-999",
  "1e308 m",
  "5e-324",
  "NaN",
  "Infinity",
  "9007199254740993",
  "9".repeat(400),
  `0.${"0".repeat(400)}1`,
  `${"1".repeat(60)} m`,
  "1_000",
  "0x1F",
  "1,5",
  "1,200",
  "1.2.3",
  "1/0",
  "1/3 m",
  "1 1/0 ft",
  "18 ± -2 cm",
  "18 ± 1e400 cm",
  "42–41 cm",
  "-5 to -9 cm",
  "≥ ≤ 3 m",
  "about about 6 foot",
  "5 ft 4 in 3 ft",
  "0 ± 0 m",
  "0 m",
  "1000000 %",
  "12° 61′",
  "999999 BC",
  "0000",
  "-9999",
  "Y-17E7",
  "19XX",
  "1990-13-45",
  "1990/..",
  "[1990..]",
  "~1990?",
];

/** Paths that lead somewhere else, or nowhere, or are no path. */
export const oddPaths = [
  "../../../etc/passwd",
  "/etc/passwd",
  "..",
  ".",
  "",
  "./a.bib",
  "a/../b.bib",
  "a//b.csv",
  "C:\\a.bib",
  "\\\\host\\share\\a.bib",
  "con.bib",
  "a\u0000.bib",
  "a\n.bib",
  "file:///etc/passwd",
  "https://example.org/a.bib",
  "~/a.bib",
  "%2e%2e/a.bib",
  "..%2fa.csl",
  "\u202ebib.a",
  "é.bib",
  "e\u0301.bib",
  `${"a/".repeat(600)}b.bib`,
  `${"a".repeat(5000)}.bib`,
  "__proto__",
  "constructor",
  "corpus.yaml",
  ".variorum/desk.json",
  "node_modules/a.yaml",
  "bibliography.bib/",
  "plugins/a.js",
];

/** Names that an object has without being given them, and some that a file system or a page takes amiss. */
export const oddNames = [
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "a/b/c/d/e",
  "a//b",
  "/",
  "a/",
  "-",
  "a>b",
  "a:b@c",
  "a#2",
  "<script>alert(1)</script>",
  "=1+1",
  "${a}",
  "A",
  "x".repeat(3000),
];
