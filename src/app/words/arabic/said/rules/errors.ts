import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the errors of reading and linking mean, and what to do about them. */
export const errorRulesSaid: ArabicCatalogue = {
  "A record refers to an id that does not exist, or that is of another kind.":
    "سجل يحيل إلى معرّف غير موجود، أو إلى معرّف من نوع آخر.",
  "Check the spelling: the nearest names are given, and where only one of them can be meant the change is offered. A record that cannot do without the reference is not loaded; what refers to it is not reported again. An id that several records get wrong is told once, with all of them.":
    "تحقّق من الرسم: تُذكر أقرب الأسماء، وحيث لا يمكن أن يُراد إلا واحد منها يُعرض التغيير. والسجل الذي لا يستغني عن الإحالة لا يُحمَّل؛ وما يحيل إليه لا يُنبَّه عليه ثانية. والمعرّف الذي تخطئ فيه عدة سجلات يُذكر مرة واحدة معها كلها.",
  "Two records, or a record and a bibliography entry, have one name.":
    "سجلان لهما اسم واحد، أو سجل ومدخل في المراجع.",
  "Records and bibliography keys share one space of names. The first is kept; give the other a name of its own.":
    "السجلات ومفاتيح المراجع تشترك في مجال واحد من الأسماء. يبقى الأول؛ فأعط الآخر اسمًا خاصًّا به.",
  "A field stands twice in one record.": "حقل ورد مرتين في سجل واحد.",
  "The first is kept. Put several values into one list, or take one of them out.":
    "يبقى الأول. اجعل القيم المتعددة في قائمة واحدة، أو احذف واحدة منها.",
  "A file, or what the settings name as one, cannot be read.":
    "ملف، أو ما تسمّيه الإعدادات ملفًا، تعذّرت قراءته.",
  "The message says where reading stopped: mend the text there, or take the name of a file that is not there out of the settings. Nothing of the file is loaded; everything else is evaluated.":
    "تذكر الرسالة أين توقفت القراءة: أصلح النص هناك، أو احذف من الإعدادات اسم الملف غير الموجود. ولا يُحمَّل شيء من الملف؛ وكل ما سواه يُقوَّم.",
  "A file holds the marks of two versions that were not merged.": "ملف فيه علامات نسختين لم تُدمجا.",
  "Version control writes both sides between lines of <, = and > where it cannot tell which one is meant. Open the file's merge view in the app: what only one side changed is put together by itself, the rest is asked for, record by record and field by field. Or choose in an editor, and take the marks out. Until then nothing of the file is loaded; everything else is evaluated.":
    "تكتب إدارة الإصدارات الجانبين كليهما بين سطور من < و= و> حيث لا تستطيع أن تعرف أيهما المراد. افتح عرض الدمج لهذا الملف في التطبيق: ما غيّره جانب واحد فحسب يُضم من تلقاء نفسه، وما سواه يُسأل عنه سجلًا سجلًا وحقلًا حقلًا. أو اختر في محرّر نصوص واحذف العلامات. وإلى ذلك الحين لا يُحمَّل شيء من الملف؛ وكل ما سواه يُقوَّم.",
  "A record has a field, or a file a list or column, that the format does not know.":
    "سجل فيه حقل، أو ملف فيه قائمة أو عمود، لا تعرفه الصيغة.",
  "Check the spelling: the nearest names are given, and where only one of them can be meant the change is offered. Fields of your own begin with x-.":
    "تحقّق من الرسم: تُذكر أقرب الأسماء، وحيث لا يمكن أن يُراد إلا واحد منها يُعرض التغيير. والحقول الخاصة بك تبدأ بـx-.",
  "A value is not what its field takes.": "قيمة ليست مما يقبله حقلها.",
  "The message says what is there and what was expected: another type, a quantity that cannot be read, an unknown unit, an argument without premises, a circle of parts. A decimal comma is mended where it can be read in one way only; where it may also part thousands, write the number out. A bad optional field costs that field, a bad required one the record.":
    "تذكر الرسالة ما هو مكتوب وما كان متوقَّعًا: نوع آخر، أو مقدار تعذّرت قراءته، أو وحدة غير معروفة، أو حجة بلا مقدمات، أو أجزاء في دائرة. والفاصلة العشرية تُصلح حيث لا تُقرأ إلا على وجه واحد؛ وحيث قد تفصل بين الألوف أيضًا فاكتب العدد كاملًا. والحقل الاختياري المعيب يُفقد وحده، والحقل اللازم المعيب يُفقد معه السجل.",
  "YAML took a value apart.": "فصلت YAML أجزاء قيمة بعضها عن بعض.",
  "A comma inside braces or brackets ends a value, and so does a # after a space; a colon with a space behind it, a > or a - at the beginning, and a closing quote with text behind it have meanings of their own. Put the whole text in quotes: the change is offered. Until then the record is left out, so that nothing is read by half; the rest of the file is read.":
    "الفاصلة داخل الأقواس المعقوفة أو المربعة تُنهي القيمة، وكذلك # بعد مسافة؛ والنقطتان تليهما مسافة، و> أو - في الأول، وعلامة الاقتباس الأخيرة يليها نص، لكل منها معنى خاص. ضع النص كله بين علامتي اقتباس: والتغيير معروض. وإلى ذلك الحين يُستبعد السجل حتى لا يُقرأ شيء بنصفه؛ ويُقرأ سائر الملف.",
};
