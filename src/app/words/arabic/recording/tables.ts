import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

const listed = (names: readonly string[]): string => names.map(apart).join("، ");

const measurements = (n: number): string =>
  arabicCount(n, { one: "قياس واحد", two: "قياسين", few: "# قياسات", many: "# قياسًا", other: "# قياس" });

const artefacts = (n: number): string =>
  arabicCount(n, { one: "أثر واحد", two: "أثرين", few: "# آثار", many: "# أثرًا", other: "# أثر" });

/** Words of a table that comes in: what its columns are, and what becomes of its rows. */
export const arabicTables = {
  rowsAre: "الصفوف",
  lists: { measurements: "قياسات", artefacts: "آثار" },
  sign: "علامة الكسر العشري في الأرقام",
  signs: { point: "نقطة (18.2)", comma: "فاصلة (18,2)" },
  commas: (n: number) =>
    arabicCount(n, {
      one: "رقم واحد فيه فاصلة.",
      two: "رقمان فيهما فاصلة.",
      few: "# أرقام فيها فاصلة.",
      many: "# رقمًا فيها فاصلة.",
      other: "# رقم فيها فاصلة.",
    }),
  all: "لكل صف لا يذكره",
  columns: "الأعمدة",
  columnsWhy: "العمود الذي يُبقى حقلًا خاصًّا بك يبدأ بـ x-. اختر معنى العمود حيث فُهم على غير وجهه.",
  column: "العمود",
  isA: "معناه",
  first: "أول الصفوف",
  meaningOf: (head: string) => `معنى العمود ${apart(head)}`,
  unitOf: (head: string) => `وحدة أرقام ${apart(head)} التي لا وحدة لها`,
  unit: "بوحدة",
  unsure: "غير مؤكد",
  noHead: "(بلا رأس)",
  meanings: {
    fields: "حقول",
    dimensions: "أرقام بُعد",
    uncertainties: "ما هو ± لأرقام",
    registers: "أرقام سجل",
    own: "حقل خاص بك",
    nothing: "يُترك",
    unit: "وحدة القيمة",
    uncertainty: "± للقيمة",
    uncertaintyOf: (dimension: string) => `± لـ${apart(dimension)}`,
    number: (register: string) => `رقم: ${apart(register)}`,
    ofBy: (register: string) => `الأثر برقمه: ${apart(register)}`,
  },
  wide: "لكل بُعد عمود: يصير كل رقم قياسًا قائمًا بذاته.",
  counts: (added: number, merged: number, left: number, failed: number, without: number) =>
    [
      `ما يُضاف: ${arabicFigure(added)}`,
      ...(merged > 0 ? [`ما يُدمج: ${arabicFigure(merged)}`] : []),
      ...(left > 0 ? [`موجود فيُترك: ${arabicFigure(left)}`] : []),
      ...(failed > 0 ? [`ما لا يدخل: ${arabicFigure(failed)}`] : []),
      ...(without > 0 ? [`خلايا بلا رقم: ${arabicFigure(without)}`] : []),
    ].join("، "),
  failed: "لا يدخل",
  failedWhy: "اختر للعمود معنى آخر، أو أصلحها في ملفها؛ ويمكن إدخال غيرها من دونها.",
  line: (n: number) => `السطر ${arabicFigure(n)}`,
  inColumn: (head: string) => `، العمود ${apart(head)}`,
  fresh: "يُضاف",
  twins: "موجود",
  twinsWhy: "تُترك ما لم تختر غير ذلك.",
  like: "يشبه",
  why: { id: "له المعرّف نفسه", number: "له الرقم نفسه", name: "له الاسم نفسه" },
  hidden: (n: number) =>
    arabicCount(n, {
      one: "صف واحد يشبه شيئًا تحجبه المدوّنة، ويُترك.",
      two: "صفان يشبهان شيئًا تحجبه المدوّنة، ويُتركان.",
      few: "# صفوف تشبه شيئًا تحجبه المدوّنة، وتُترك.",
      many: "# صفًّا تشبه شيئًا تحجبه المدوّنة، وتُترك.",
      other: "# صف تشبه شيئًا تحجبه المدوّنة، وتُترك.",
    }),
  waysOf: (name: string) => `ما يصير إليه ${apart(name)}`,
  leave: "اترك ما هو موجود",
  merge: (missing: readonly string[]) =>
    missing.length === 0 ? "ادمج حقلًا حقلًا" : `ادمج: أضف ${listed(missing)}`,
  add: "أضفه أثرًا آخر",
  nothingToMerge: "لا يذكر شيئًا غير موجود.",
  keep: (field: string) => `${apart(field)}: أبقِ ما هو موجود`,
  take: (field: string) => `${apart(field)}: خذ ما يُدخَل`,
  here: "الموجود",
  theirs: "ما يُدخَل",
  missing: "يُضاف",
  more: (n: number) => `اعرض المزيد (غير المعروض: ${arabicFigure(n)})`,
  as: "احفظها",
  ways: {
    records: "سجلات بين غيرها",
    table: "جدولًا من جداول المدوّنة يسمّيه corpus.yaml",
  },
  goes: (file: string, isNew: boolean, n: number) =>
    `${arabicCount(n, { one: "سجل واحد يدخل", two: "سجلان يدخلان", few: "# سجلات تدخل", many: "# سجلًا تدخل", other: "# سجل تدخل" })} في ${apart(file)}${isNew ? "، وهو ملف جديد" : ""}.`,
  nothing: "لا شيء يُضاف أو يُدمج.",
  save: (list: "measurements" | "artefacts", added: number, merged: number) =>
    [
      ...(added > 0 ? [`أضف ${list === "measurements" ? measurements(added) : artefacts(added)}`] : []),
      ...(merged > 0 ? [`ادمج ${artefacts(merged)}`] : []),
    ].join("، "),
  saving: "يُحفظ …",
  step: (file: string) => `إدخال جدول من ${apart(file)}`,
  done: (file: string, added: number, merged: number) =>
    `من ${apart(file)}: ${arabicCount(added, { zero: "لم يُضف سجل", one: "أُضيف سجل واحد", two: "أُضيف سجلان", few: "أُضيفت # سجلات", many: "أُضيف # سجلًا", other: "أُضيف # سجل" })}${merged > 0 ? `، ودُمجت آثار عددها ${arabicFigure(merged)}` : ""}. وهي خطوة واحدة يمكن التراجع عنها.`,
};
