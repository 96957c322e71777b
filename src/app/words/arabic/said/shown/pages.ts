import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What sheets, pages of things and forms say of records. */
export const pagesSaid: ArabicCatalogue = {
  January: "يناير",
  February: "فبراير",
  March: "مارس",
  April: "أبريل",
  May: "مايو",
  June: "يونيو",
  July: "يوليو",
  August: "أغسطس",
  September: "سبتمبر",
  October: "أكتوبر",
  November: "نوفمبر",
  December: "ديسمبر",
  "about {0}": "نحو {0}",
  "{0}, uncertain": "{0}، بلا يقين",
  "at some time": "في زمن غير محدد",
  "until {0}": "حتى {0}",
  "from {0}": "من {0}",

  yes: "نعم",
  no: "لا",
  seen: "شوهد",
  "looked for and not there": "بُحث عنه فلم يوجد",
  "looked for, cannot be told": "بُحث عنه ولا يُتبيَّن",
  "passed over in silence": "سُكت عنه",
  "by answer": "بحسب الجواب",
  "supposed {0}": "{0} (افتراضًا)",
  "{0} ({1} to {2})": "{0} (من {1} إلى {2})",
  another: "قياس آخر",

  "{0}, {1}: {2}.": "{0}، {1}: {2}.",
  "{0} {1}, broken there": "{0} {1}، مكسور هناك",
  "{0} {1}, supplied": "{0} {1}، مستكمَل",

  "{0}; {1}; {2}": "{0}؛ {1}؛ {2}",
  "a pure number": "عدد مجرد",
  "a lower bound, never taken as a value": "حد أدنى لا يُؤخذ قيمةً",
  "an upper bound, never taken as a value": "حد أعلى لا يُؤخذ قيمةً",
  "a range, anywhere in it equally likely": "مدى تتساوى فيه المواضع احتمالًا",
  "about, so widened": "تقريبي، فهو موسَّع",
  "± is one standard uncertainty here": "± هنا انحراف معياري واحد",
  exact: "مضبوط",
  "read to the last digit, half a unit of it either way":
    "مقروء إلى الخانة الأخيرة، بنصف وحدة منها زيادةً ونقصًا",
};
