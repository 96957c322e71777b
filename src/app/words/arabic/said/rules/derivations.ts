import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the rules say of computed numbers. */
export const derivationRulesSaid: ArabicCatalogue = {
  "A derivation could not be computed.": "اشتقاق تعذّر حسابه.",
  "The message says what is wrong with its plug-in, inputs or parameters, or which derivations lean on one another in a circle. It then supports and disputes nothing.":
    "تذكر الرسالة ما الخلل في إضافته أو مدخلاته أو معاملاته، أو أي اشتقاقات يستند بعضها إلى بعض في دائرة. وهو حينئذ لا يؤيد شيئًا ولا يعارضه.",
  "{0} leans on itself, expected derivations that do not lean on themselves.":
    "{0} يستند إلى نفسه؛ والمتوقَّع: اشتقاقات لا تستند إلى نفسها.",
  "{0} lean on one another, expected derivations that do not lean on themselves.":
    "{0}: يستند بعضها إلى بعض؛ والمتوقَّع: اشتقاقات لا تستند إلى نفسها.",
  "{0} could not be computed. {1}": "تعذّر حساب {0}. {1}",
  "What {0} bears on cannot be read. {1}": "تعذّرت قراءة ما لـ{0} أثر فيه. {1}",
  "A derivation used a measurement that does not hold.": "اشتقاق استعمل قياسًا لا يثبت.",
  "An argument against the measurement works, so the number does not hold either. Leave the measurement out with `without` to go on without it (the change is offered, with the number it gives), or answer the argument: the choice is yours.":
    "على القياس حجة قائمة، فالعدد لا يثبت كذلك. اترك القياس بـ`without` لتمضي من دونه (والتغيير معروض مع العدد الذي يعطيه)، أو أجب عن الحجة: فالاختيار لك.",
  "{0} used {1}, which does not hold, expected evidence that does":
    "استُعمل في {0} ما لا يثبت، وهو {1}؛ والمتوقَّع: دليل ثابت",
  "{0} used {1}, which do not hold, expected evidence that does":
    "استُعمل في {0} ما لا يثبت، وهي {1}؛ والمتوقَّع: أدلة ثابتة",
  "in {0} {1}": "في {0}: {1}",
  "Leave it out": "اتركه",
  "Leave them out": "اتركها",
  "without it, {0}": "ومن دونه {0}",
  "without them, {0}": "ومن دونها {0}",
  "it would be refused": "يمتنع الحساب",
  "{0} would be {1} instead of {2}": "تصير قيمة {0} {1} بدلًا من {2}",
  "its numbers stay": "تبقى أعداده كما هي",
  "What a number says of a claim changes with the readings that are used.":
    "ما يقوله عدد في دعوى يتغيّر بالقراءات المستعملة.",
  "The derivation was run again with each source's readings throughout, and with each single reading, where several sources measured the same dimension; and with each other size that goes by the name of its unit, or of a unit that measurements are written in. The readings that turn the verdict are worth a second look at the thing before anything else.":
    "أُعيد حساب الاشتقاق بقراءات كل مصدر في كل موضع، وبكل قراءة مفردة حيث قاس عدة مصادر البُعد نفسه؛ وبكل مقدار آخر يحمل اسم وحدته أو اسم وحدة كُتبت بها القياسات. والقراءات التي تقلب الحكم جديرة بنظرة ثانية إلى الشيء قبل كل أمر.",
  "{0} {1}, but {2}.": "{0} {1}، غير أنه {2}.",
  "with the {0} of {1} it {2}": "{2} إذا كان مقدار {0} هو {1}",
  "with each {0} of the measurements read as {1} it {2}": "{2} إذا قُرئ كل {0} في القياسات على أنه {1}",
  "with {0} it {1}": "{1} بقراءة {0}",
  "with the readings of {0} it {1}": "{1} بقراءات {0}",
  "What a number says of a claim changes when one artefact, source or survey is left out.":
    "ما يقوله عدد في دعوى يتغيّر إذا تُرك أثر واحد أو مصدر واحد أو مسح واحد.",
  "The derivation was run again without each artefact, each source, and each survey or instrument whose readings share an error; searches then draw a thousand sets, and all of theirs where p comes near a limit. What turns the verdict carries it: say so, and look at that one again first. Where too little would be left to compute on there is no other verdict, and nothing is said.":
    "أُعيد حساب الاشتقاق من دون كل أثر، ومن دون كل مصدر، ومن دون كل مسح أو أداة تشترك قراءاته في خطأ؛ وتسحب طرائق البحث عن الوحدات عندئذ ألف مجموعة، وتسحب مجموعاتها كلها حيث يقارب p حدًّا. وما يقلب الحكم هو ما يحمله: اذكر ذلك، وانظر في ذلك الواحد أولًا. وحيث لا يبقى ما يكفي للحساب فلا حكم آخر، ولا يُذكر شيء.",
  "without any one of {0} it {1}": "{1} من دون أي واحد من {0}",
  "without {0} it {1}": "{1} من دون {0}",
  "without {0} or without {1} it {2}": "{2} من دون {0} أو من دون {1}",
  "without {0} or without {1} or without {2} it {3}": "{3} من دون {0} أو من دون {1} أو من دون {2}",
  "the readings that share the error of {0}": "القراءات التي تشترك في الخطأ مع {0}",
  supports: "يؤيد",
  disputes: "يعارض",
  "is inconclusive": "لا يحسم",
  "says nothing": "لا يقول شيئًا",
  "supports {0}": "يؤيد {0}",
  "disputes {0}": "يعارض {0}",
  "is inconclusive about {0}": "لا يحسم في {0}",
  "says nothing of {0}": "لا يقول شيئًا في {0}",
  "A number says nothing about a claim that it bears on.": "عدد لا يقول شيئًا في دعوى له أثر فيها.",
  "It meets neither what would support the claim nor what would dispute it, or both. That is a result: print it as one. More measurements may decide it.":
    "لم يتحقق فيه ما يؤيد الدعوى ولا ما يعارضها، أو تحققا معًا. وهذه نتيجة: فانشرها نتيجةً. وقد تحسمها قياسات أكثر.",
  "{0} neither supports nor disputes {1}.": "{0} لا يؤيد {1} ولا يعارض.",
  "The method refused to compute on these data.": "امتنعت الطريقة عن الحساب على هذه البيانات.",
  "A method refuses where its number would mislead: too few values, bounds only, mixed kinds. Give it more or better measurements, or use another method; a refused derivation bears on nothing.":
    "تمتنع الطريقة حيث يكون عددها مضلِّلًا: قيم قليلة جدًّا، أو حدود فحسب، أو أنواع مختلطة. أعطها قياسات أكثر أو أجود، أو استعمل طريقة أخرى؛ والاشتقاق الممتنع لا أثر له في شيء.",
  "{0} was refused. {1}": "امتنع حساب {0}. {1}",
  "A derivation needs a plug-in of the corpus that has not been allowed.":
    "اشتقاق يحتاج إلى إضافة من المدوّنة لم يؤذن بها.",
  "A plug-in in `plugins/` is code by whoever wrote the corpus. It never runs before you allow that very file, and then only in a sandbox without network, files or clock. Read it, then allow it with `variorum compute --allow-plugin NAME`; after any change of the file it is asked for again. Until then the derivation has no number and bears on nothing.":
    "الإضافة في `plugins/` شيفرة ممن كتب المدوّنة. ولا تعمل أبدًا قبل أن تأذن بذلك الملف بعينه، ثم لا تعمل إلا في حيّز معزول بلا شبكة ولا ملفات ولا ساعة. اقرأها ثم ائذن بها بـ`variorum compute --allow-plugin NAME`؛ ويُسأل عن الإذن ثانية بعد كل تغيير في الملف. وإلى ذلك الحين لا عدد للاشتقاق ولا أثر له في شيء.",
  "{0} was not computed. {1}": "لم يُحسب {0}. {1}",
  "A large p is asked to support a claim.": "كبر p مطلوب تأييدًا لدعوى.",
  "A large p may only mean that the data could not show a difference. Add an upper bound on `detectable` to the same condition, so that a difference that matters would hardly have been missed.":
    "كبر p قد لا يعني إلا أن البيانات لم تستطع أن تُظهر فرقًا. أضف إلى الشرط نفسه حدًّا أعلى لـ`detectable`، حتى لا يكاد يفوت فرق ذو شأن.",
  "{0} is to support {1} by a large p, expected a bound on what would have been missed.":
    "المراد أن يؤيد {0} الدعوى {1} بكبر p؛ والمتوقَّع: حدٌّ لما كان سيفوت.",
  "A unit is tested on the data it was found in.": "وحدة تُختبر على البيانات التي وُجدت فيها.",
  "Such a test would always succeed. Test the unit on other things, or search these data for a unit instead and take the number of that search.":
    "مثل هذا الاختبار ينجح دائمًا. اختبر الوحدة على أشياء أخرى، أو ابحث في هذه البيانات عن وحدة وخذ عدد ذلك البحث.",
  "Several readings of one dimension entered a computation as one mean.":
    "عدة قراءات لبُعد واحد دخلت حسابًا متوسطًا واحدًا.",
  "One dimension of one thing enters once. The mean is weighted by the uncertainties and keeps at least half the difference as its own. Name the better source in `prefer` to take its reading instead.":
    "البُعد الواحد من الشيء الواحد يدخل مرة واحدة. والمتوسط موزون بعدم اليقين، ويُبقي نصف الفرق على الأقل عدمَ يقين له. سمِّ المصدر الأجود في `prefer` لتؤخذ قراءته بدلًا من ذلك.",
  "{0} takes the mean of several readings: {1}.": "المأخوذ في {0} متوسط عدة قراءات: {1}.",
  "{0} take the mean of several readings: {1}.": "المأخوذ في {0} متوسط عدة قراءات: {1}.",
  "{0} of {1} ({2})": "{0} في {1} ({2})",
};
