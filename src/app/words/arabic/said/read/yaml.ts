import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is wrong with how a file is written. */
export const yamlSaid: ArabicCatalogue = {
  "expected quotes round the whole value": "والمتوقَّع: علامتا اقتباس حول القيمة كلها",
  "Unexpected # inside {0}, {1}": "غير متوقَّع: # داخل {0}؛ {1}",
  "Unexpected text after a closing quote in {0}, {1}": "غير متوقَّع: نص بعد علامة الاقتباس الأخيرة في {0}؛ {1}",
  "Unexpected `{0}` at the beginning of {1}, {2}": "غير متوقَّع: `{0}` في أول {1}؛ {2}",
  "Unexpected colon inside {0}, {1}": "غير متوقَّع: نقطتان داخل {0}؛ {1}",
  "Unexpected number of more than {0} values, expected the records divided among several files": {
    two: "غير متوقَّع: أكثر من قيمتين؛ والمتوقَّع: أن توزَّع السجلات على عدة ملفات",
    few: "غير متوقَّع: أكثر من {0} قيم؛ والمتوقَّع: أن توزَّع السجلات على عدة ملفات",
    many: "غير متوقَّع: أكثر من {0} قيمة؛ والمتوقَّع: أن توزَّع السجلات على عدة ملفات",
    other: "غير متوقَّع: أكثر من {0} قيمة؛ والمتوقَّع: أن توزَّع السجلات على عدة ملفات",
  },
  "Unexpected nesting of more than 64 levels, expected flatter records":
    "غير متوقَّع: تداخل يزيد على 64 طبقة؛ والمتوقَّع: سجلات أقل تداخلًا",
  "Unexpected control character {0}, expected printable text": "غير متوقَّع: علامة تحكّم {0}؛ والمتوقَّع: نص يُطبع",
  "Unexpected list or text, expected a map of lists of records":
    "غير متوقَّع: قائمة أو نص؛ والمتوقَّع: قوائم سجلات بأسمائها",
  "Unexpected tab as indentation, expected spaces": "غير متوقَّع: علامة جدولة في أول السطر؛ والمتوقَّع: مسافات",
  "Unexpected second document, expected one document in a file":
    "غير متوقَّع: وثيقة ثانية؛ والمتوقَّع: وثيقة واحدة في الملف",
  "Unexpected second colon in one line, expected quotes round a text that holds a colon":
    "غير متوقَّع: نقطتان مرة ثانية في سطر واحد؛ والمتوقَّع: علامتا اقتباس حول نص فيه نقطتان",
  "{0}, expected it before the end": "{0}؛ والمتوقَّع: قبل النهاية",
  "Unexpected indentation, expected one value": "غير متوقَّع: إزاحة في أول السطر؛ والمتوقَّع: قيمة واحدة",
  "Unexpected conflict marks in one place, expected one text: two versions of the file were not merged":
    "غير متوقَّع: علامات تعارض في موضع واحد؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
  "Unexpected conflict marks in {0} places, expected one text: two versions of the file were not merged": {
    zero: "غير متوقَّع: علامات تعارض؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
    two: "غير متوقَّع: علامات تعارض في موضعين؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
    few: "غير متوقَّع: علامات تعارض في {0} مواضع؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
    many: "غير متوقَّع: علامات تعارض في {0} موضعًا؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
    other: "غير متوقَّع: علامات تعارض في {0} موضع؛ والمتوقَّع: نص واحد: في الملف نسختان لم تُدمجا",
  },
  "Unexpected tag, expected a plain value": "غير متوقَّع: وسم؛ والمتوقَّع: قيمة مجرّدة",
  "Unexpected alias, expected at most 100 aliases in a file":
    "غير متوقَّع: إحالة أخرى إلى مرساة؛ والمتوقَّع: 100 في الملف على الأكثر",
  "Unexpected alias `{0}` of a value that comes to too much, expected it written where it stands":
    "غير متوقَّع: إحالة إلى المرساة `{0}`، وما تحيل إليه يربو على الحد؛ والمتوقَّع: القيمة مكتوبةً في موضعها",
  "Unknown alias `{0}`, expected an anchor above it": "مرساة غير معروفة: `{0}`؛ والمتوقَّع: مرساة قبلها",
  "Unexpected comment inside a value, expected quotes round a text that holds #":
    "غير متوقَّع: تعليق داخل قيمة؛ والمتوقَّع: علامتا اقتباس حول نص فيه #",
  "Unexpected list, map or alias as a key, expected a word":
    "غير متوقَّع: قائمة أو مجموعة أو إحالة في موضع المفتاح؛ والمتوقَّع: كلمة",
  "Unexpected merge key `<<`, expected the fields themselves":
    "غير متوقَّع: مفتاح الدمج `<<`؛ والمتوقَّع: الحقول نفسها",
  "Duplicate key `{0}`, expected it once; the first is kept":
    "مفتاح مكرّر: `{0}`؛ والمتوقَّع: مرة واحدة؛ ويُبقى الأول",
  "Unexpected `{0}` alone, expected a value": "غير متوقَّع: `{0}` وحده؛ والمتوقَّع: قيمة",
  "the point as the decimal sign: `{0}`": "النقطة علامة عشرية: `{0}`",
  "the value without one, or in quotes": "القيمة من غيرها، أو بين علامتي اقتباس",
  "quotes round a value that holds a comma": "علامتا اقتباس حول قيمة فيها فاصلة",
  "Unexpected comma inside `{0}`, expected {1}": "غير متوقَّع: فاصلة داخل `{0}`؛ والمتوقَّع: {1}",

  "Implicit keys need to be on a single line": "لا بد أن يكون المفتاح في سطر واحد",
  "Implicit keys of flow sequence pairs need to be on a single line":
    "لا بد أن يكون المفتاح داخل القائمة المعقوفة في سطر واحد",
  "Implicit map keys need to be followed by map values": "لا بد أن تلي المفتاح قيمته",
  "All mapping items must start at the same column": "لا بد أن تبدأ الحقول كلها عند إزاحة واحدة",
  "All sequence items must start at the same column": "لا بد أن تبدأ عناصر القائمة كلها عند إزاحة واحدة",
  "Sequence item without - indicator": "عنصر قائمة من غير علامة -",
  "Missing closing quote": "ناقص: علامة الاقتباس الأخيرة",
  "Missing closing 'quote": "ناقص: علامة الاقتباس الأخيرة '",
  "Missing , between flow map items": "ناقص: , بين الحقول داخل {}",
  "Missing , between flow sequence items": "ناقص: , بين العناصر داخل []",
  "Missing , or : between flow map items": "ناقص: , أو : بين الحقول داخل {}",
  "Missing space after : in flow map": "ناقص: مسافة بعد : داخل {}",
  "Flow map in block collection must be sufficiently indented and end with a }":
    "لا بد أن تُزاح الحقول داخل {} إزاحة كافية وأن تنتهي بـ}",
  "Flow sequence in block collection must be sufficiently indented and end with a ]":
    "لا بد أن تُزاح القائمة داخل [] إزاحة كافية وأن تنتهي بـ]",
  "Block collections are not allowed within flow collections": "لا تصح قوائم الأسطر وحقولها داخل {} أو []",
  "Unexpected scalar at node end": "غير متوقَّع: قيمة في آخر الموضع",
  "Unexpected , in flow map": "غير متوقَّع: , داخل {}",
  "Unexpected , in flow sequence": "غير متوقَّع: , داخل []",
};
