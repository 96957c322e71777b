import type { ArabicCatalogue } from "../../../../base/text/said/arabic.ts";

/** What is done at the desk, and why it cannot be done. */
export const deskSaid: ArabicCatalogue = {
  "New {0}: {1}": "إضافة {0}: {1}",
  "{0} new records of one kind: {1}": {
    two: "إضافة سجلين من نوع واحد: {1}",
    few: "إضافة {0} سجلات من نوع واحد: {1}",
    many: "إضافة {0} سجلًا من نوع واحد: {1}",
    other: "إضافة {0} سجل من نوع واحد: {1}",
  },
  Nothing: "لا شيء",
  "{0}, and another change": "{0}، مع تغيير آخر",
  "{0}, and {1} more changes": {
    two: "{0}، مع تغييرين آخرين",
    few: "{0}، مع {1} تغييرات أخرى",
    many: "{0}، مع {1} تغييرًا آخر",
    other: "{0}، مع {1} تغيير آخر",
  },
  "Change to {0}": "تغيير {0}",
  "Take out {0}": "إخراج {0}",
  "Take out {0} records": {
    two: "إخراج سجلين",
    few: "إخراج {0} سجلات",
    many: "إخراج {0} سجلًا",
    other: "إخراج {0} سجل",
  },
  "Rename {0} to {1}": "تسمية {0} باسم {1}",
  "Change of the setting {0}": "تغيير الإعداد {0}",
  "without words": "بلا نص",
  "Unknown id `{0}`, expected that of a record": "معرّف غير معروف: `{0}`؛ والمتوقَّع: معرّف سجل",
  "Unexpected id `{0}`, expected a-z, 0-9 and - in parts joined by /":
    "غير متوقَّع: المعرّف `{0}`؛ والمتوقَّع: أجزاء من a-z و0-9 و- تصل بينها /",
  "Duplicate id `{0}`, expected a name of its own": "معرّف مكرّر: `{0}`؛ والمتوقَّع: اسم خاص به",
  "Unexpected way of writing `{0}` in `{1}`, expected it in plain letters":
    "غير متوقَّع: كتابة `{0}` هكذا في `{1}`؛ والمتوقَّع: أن يُكتب بحروفه",
  "Unexpected file `{0}` that cannot be read, expected it mended first":
    "غير متوقَّع: الملف `{0}` لا يُقرأ؛ والمتوقَّع: أن يُصلَح أولًا",
  "Unexpected file `{0}` with aliases that cannot be read, expected it mended first":
    "غير متوقَّع: في الملف `{0}` إحالات إلى مراسٍ لا تُقرأ؛ والمتوقَّع: أن يُصلَح أولًا",
  "Missing column {0} in `{1}`, expected it in the head line":
    "ناقص: العمود {0} في `{1}`؛ والمتوقَّع: أن يرد في سطر الرأس",
  "Missing columns {0} in `{1}`, expected them in the head line":
    "ناقص: الأعمدة {0} في `{1}`؛ والمتوقَّع: أن ترد في سطر الرأس",
  "Unexpected list or map of `{0}` for `{1}`, expected a single value: a table has one in a cell":
    "غير متوقَّع: قائمة أو مجموعة مسمّاة للحقل `{0}` في `{1}`؛ والمتوقَّع: قيمة واحدة: ففي خانة الجدول قيمة واحدة",
  "Unexpected row without any text, expected it taken out of `{0}`":
    "غير متوقَّع: صف لا نص فيه؛ والمتوقَّع: أن يُخرَج من `{0}`",
  "Missing head line in `{0}`, expected the names of the columns":
    "ناقص: سطر الرأس في `{0}`؛ والمتوقَّع: أسماء الأعمدة",
  "Unexpected row without any text, expected a value for a column of `{0}`":
    "غير متوقَّع: صف لا نص فيه؛ والمتوقَّع: قيمة لعمود من أعمدة `{0}`",
  "Unexpected anchor {0} on a value that stands in 1 other place as {1}, expected it written out there first":
    "غير متوقَّع: المرساة {0} على قيمة ترد في موضع آخر بصورة {1}؛ والمتوقَّع: أن تُكتب هناك كاملة أولًا",
  "Unexpected anchor {0} on a value that stands in {1} other places as {2}, expected it written out there first":
    {
      two: "غير متوقَّع: المرساة {0} على قيمة ترد في موضعين آخرين بصورة {2}؛ والمتوقَّع: أن تُكتب هناك كاملة أولًا",
      few: "غير متوقَّع: المرساة {0} على قيمة ترد في {1} مواضع أخرى بصورة {2}؛ والمتوقَّع: أن تُكتب هناك كاملة أولًا",
      many: "غير متوقَّع: المرساة {0} على قيمة ترد في {1} موضعًا آخر بصورة {2}؛ والمتوقَّع: أن تُكتب هناك كاملة أولًا",
      other:
        "غير متوقَّع: المرساة {0} على قيمة ترد في {1} موضع آخر بصورة {2}؛ والمتوقَّع: أن تُكتب هناك كاملة أولًا",
    },
};
