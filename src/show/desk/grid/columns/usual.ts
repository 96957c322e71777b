import { headKey } from "./number.ts";

/**
 * Headings of columns as they are usual in finds registers and measurement lists, in English, German, French, Italian and
 * Arabic, by what they mean (common practice; abbreviations as they are met in catalogues).
 */
type Usual = Readonly<Record<string, readonly string[]>>;

/** Fields of a measurement. */
export const usualOfMeasurement: Usual = keyed({
  of: [
    "artefact, artifact, object, thing, find, item, piece, specimen, feature, sherd, object id, find id, artefact id",
    "Objekt, Fund, Gegenstand, Stück, Befund",
    "objet, pièce, artéfact, structure",
    "oggetto, reperto, pezzo, manufatto",
    "الأثر, القطعة, اللقية, المعثورة, الأثر المقيس",
  ],
  dimension: [
    "measurement, measure, what was measured, variable, attribute",
    "Maß, Abmessung, Messgröße, Messstrecke",
    "mesure, grandeur",
    "misura, grandezza, dimensione",
    "البعد, المقاس, ما قيس",
  ],
  value: [
    "figure, reading, result, measured value",
    "Wert, Messwert, Betrag",
    "valeur, valeur mesurée",
    "valore, valore misurato",
    "القيمة, القراءة",
  ],
  unit: [
    "units, unit of measure",
    "Einheit, Maßeinheit",
    "unité",
    "unità, unità di misura",
    "الوحدة, وحدة القياس",
  ],
  uncertainty: [
    "error, standard error, standard uncertainty, plus minus, plus or minus, u, sd, s d, std, standard deviation",
    "Unsicherheit, Fehler, Messunsicherheit, Abweichung, Standardabweichung",
    "incertitude, erreur, écart type",
    "incertezza, errore, deviazione standard",
    "الارتياب, الخطأ, الانحراف المعياري",
  ],
  state: ["preservation, completeness", "Zustand, Erhaltung", "état de conservation", "stato", "الحال"],
  basis: ["measured on, measured from", "gemessen an, Grundlage", "mesuré sur", "misurato su", "قيس على"],
  between: ["landmarks, from to", "zwischen, Messpunkte", "entre, repères", "tra, punti", "بين"],
  instrument: [
    "tool, device, measured with",
    "Gerät, Messgerät, Instrument",
    "appareil, outil",
    "strumento",
    "الأداة, أداة القياس",
  ],
  n: ["number of readings, count, N readings", "Anzahl", "nombre, effectif", "numero di letture", "العدد"],
  condition: ["state of the thing", "Beschaffenheit", "condition de l'objet", "condizione", "الحالة"],
  by: [
    "measured by, measurer, observer, recorder",
    "gemessen von, Bearbeiter",
    "mesuré par, auteur",
    "misurato da",
    "قاسه, القائس",
  ],
  year: [
    "date measured, measured in, year measured",
    "Jahr, gemessen am",
    "année, an",
    "anno",
    "السنة, سنة القياس",
  ],
  from: [
    "source, reference, citation, published in, bibliography",
    "Quelle, Literatur, Nachweis, Beleg",
    "référence, bibliographie, provenance de la mesure",
    "fonte, bibliografia, riferimento",
    "المصدر, المرجع",
  ],
  note: [
    "notes, remark, remarks, comment, comments",
    "Bemerkung, Bemerkungen, Anmerkung",
    "remarque, remarques, observations",
    "nota, osservazioni",
    "ملاحظة, ملاحظات",
  ],
});

/** Fields of an artefact. */
export const usualOfArtefact: Usual = keyed({
  id: [
    "identifier, key, artefact id, object id, find id",
    "Kennung",
    "identifiant",
    "identificativo",
    "المعرف",
  ],
  name: [
    "object, artefact, artifact, title, designation, object name",
    "Name, Bezeichnung, Objekt",
    "nom, désignation, objet",
    "nome, denominazione, oggetto",
    "الاسم, اسم الأثر, القطعة",
  ],
  "part-of": ["belongs to, whole, parent", "Teil von, gehört zu", "partie de", "parte di", "جزء من"],
  kind: [
    "type, class, category, object type",
    "Art, Typ, Gattung",
    "type, catégorie, nature",
    "tipo, classe",
    "النوع, الصنف",
  ],
  material: [
    "fabric, raw material",
    "Material, Werkstoff",
    "matière, matériau",
    "materiale, materia",
    "المادة, الخامة",
  ],
  date: [
    "dating, period, age",
    "Datierung, Zeitstellung",
    "datation, période",
    "datazione, cronologia",
    "التأريخ, التاريخ",
  ],
  "found-at": [
    "findspot, find spot, provenance, provenience, site, find place, context",
    "Fundort, Fundstelle",
    "lieu de découverte, provenance, site",
    "luogo di rinvenimento, provenienza, sito",
    "مكان العثور, الموقع",
  ],
  "held-at": [
    "museum, collection, repository, location, kept at",
    "Museum, Aufbewahrungsort, Standort, Sammlung",
    "musée, lieu de conservation",
    "museo, luogo di conservazione",
    "مكان الحفظ, المتحف",
  ],
  note: [
    "notes, remark, remarks, comment, comments, description",
    "Bemerkung, Anmerkung, Beschreibung",
    "remarque, remarques, description",
    "nota, descrizione, osservazioni",
    "ملاحظة, ملاحظات, الوصف",
  ],
});

/** Registers in which artefacts have numbers. */
export const usualRegisters: Usual = keyed({
  inventory: [
    "inventory, inventory number, inventory no, inv, inv no, inv nr, inventory id, museum no, museum number, accession no, accession number, acc no, registration no, reg no",
    "Inventarnummer, Inventar Nr, Inv Nr, Inventarnr, Inv Nummer, InvNr",
    "numéro d'inventaire, n d'inventaire, n inv, no inv, n° inv, num inv",
    "numero d'inventario, numero di inventario, n inventario, inv n, nr inv",
    "رقم الجرد, رقم السجل, رقم التسجيل",
  ],
  excavation: [
    "excavation, excavation number, excavation no, exc no, find no, find number, finds no, field no, field number, small find, small find no, sf, sf no, context no",
    "Grabungsnummer, Grabungs Nr, Fundnummer, Fund Nr, Fundnr, Fnr",
    "numéro de fouille, n de fouille, n° de fouille, numéro de découverte",
    "numero di scavo, n scavo, n di scavo",
    "رقم الحفر, رقم الحفرية, رقم التنقيب, رقم اللقية",
  ],
  publication: [
    "publication, publication number, publication no, pub no, cat, cat no, catalogue no, catalogue number, catalog no, catalog number, published as",
    "Katalognummer, Katalog Nr, Kat Nr, Katnr",
    "numéro de catalogue, n cat, n° cat, no cat",
    "numero di catalogo, n catalogo, n cat",
    "رقم الكتالوج, رقم الفهرس, رقم النشر",
  ],
});

/** Dimensions, by the names that a corpus is likely to have for them. */
export const usualDimensions: readonly (readonly string[])[] = [
  "diameter, diam, dm, d, ø, ⌀, dia, Durchmesser, Dm, diamètre, diametro, القطر",
  "height, h, ht, Höhe, hauteur, haut, altezza, alt, الارتفاع",
  "width, breadth, w, b, br, wd, Breite, largeur, larg, larghezza, largh, العرض",
  "length, l, lg, len, Länge, longueur, long, lunghezza, lungh, الطول",
  "depth, dp, Tiefe, T, profondeur, prof, profondità, العمق",
  "thickness, th, t, thick, Dicke, Stärke, Wandstärke, épaisseur, ép, spessore, spess, sp, السمك, السماكة",
  "weight, mass, wt, wgt, Gewicht, Gew, Masse, poids, masse, peso, massa, الوزن, الكتلة",
  "circumference, circ, Umfang, circonférence, circonferenza, المحيط",
  "spacing, distance, Abstand, distance, distanza, التباعد, المسافة",
].map((all) => all.split(",").map(headKey));

function keyed(all: Usual): Usual {
  return Object.fromEntries(
    Object.entries(all).map(([name, lines]) => [
      name,
      [name, ...lines.flatMap((line) => line.split(","))].map(headKey).filter((key) => key !== ""),
    ]),
  );
}
