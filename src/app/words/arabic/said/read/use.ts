import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is said of other corpora whose artefacts and bibliographies are used. */
export const useSaid: ArabicCatalogue = {
  "Other corpora whose artefacts and bibliographies are used.": "مدوّنات أخرى تُستعمل آثارها ومراجعها.",
  "The name before their ids here, a slash between.": "الاسم الذي يسبق معرّفاتها هنا، وبينهما شرطة مائلة.",
  "The folder of the corpus: inside this one, or beside it as {0}.":
    "مجلد المدوّنة: داخل هذه المدوّنة، أو بجانبها مثل {0}.",
  "Unexpected name `{0}`, expected {1}, {2} and - without /":
    "غير متوقَّع: الاسم `{0}`؛ والمتوقَّع: {1} و{2} و- بلا /",
  "Duplicate name `{0}`, expected another for each corpus that is used":
    "اسم مكرّر: `{0}`؛ والمتوقَّع: اسم آخر لكل مدوّنة تُستعمل",
  "Unexpected folder `{0}`, expected one inside this corpus, or directly beside it such as `{1}`":
    "غير متوقَّع: المجلد `{0}`؛ والمتوقَّع: مجلد داخل هذه المدوّنة أو بجانبها مباشرة مثل `{1}`",
  "Duplicate folder `{0}`, expected it once": "مجلد مكرّر: `{0}`؛ والمتوقَّع: مرة واحدة",
  "Unexpected id `{0}`, expected another name: what begins with `{1}` is of a corpus that is used":
    "غير متوقَّع: المعرّف `{0}`؛ والمتوقَّع: اسم آخر، فما يبدأ بـ`{1}` من مدوّنة تُستعمل",
  "Missing corpus in `{0}`, expected a folder with a `{1}`": "مدوّنة ناقصة في `{0}`؛ والمتوقَّع: مجلد فيه `{1}`",
  "Records in `{0}` name what that corpus uses from another, which is not followed from here":
    "سجلات في `{0}` تسمّي ما تستعمله تلك المدوّنة من مدوّنة أخرى، ولا يُتبع ذلك من هنا",
  "Unexpected folder `{0}` of this corpus itself, expected that of another":
    "غير متوقَّع: المجلد `{0}` وهو مجلد هذه المدوّنة نفسها؛ والمتوقَّع: مجلد مدوّنة أخرى",
  "This belongs to the corpus in `{0}`, expected a record of this one: open that folder to change it":
    "هذا من المدوّنة التي في `{0}`؛ والمتوقَّع: سجل من هذه المدوّنة؛ افتح ذلك المجلد لتغييره",
};
