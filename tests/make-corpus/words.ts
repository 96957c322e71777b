/** Word lists for invented disputes. The places and the people are ours; anybody alike is so by chance. */
export const places = [
  "Ostrelmoor",
  "Vennick Rise",
  "Thrummel Bank",
  "Yarrowis Down",
  "Corvath Furlong",
  "Dunnisk Carr",
  "Hallowmer Leaze",
  "Skerrath Common",
  "Wimbrel Field",
  "Tamsel Warren",
  "Quillisk Bottom",
  "Ombrin Heath",
  "Fenwithy",
  "Gorrel Head",
  "Lathemoor",
  "Merrisk Slade",
  "Nethrow Piece",
  "Pellisk Knoll",
  "Urrendale",
  "Zennibeck",
] as const;

/** What can lie in a place, what it was cut in, what its parts are called, and what it may have been. */
export const sites = [
  {
    kind: "post-ring",
    material: "cut in chalk",
    part: "post-hole",
    uses: ["a roofed hall", "an open ring", "a stock pound", "a windbreak"],
  },
  {
    kind: "enclosure",
    material: "earth and turf",
    part: "terminal",
    uses: ["a fold for cattle", "a fort", "a market place", "a burial ground"],
  },
  {
    kind: "kiln",
    material: "fired clay",
    part: "flue",
    uses: ["a pottery kiln", "a corn drier", "a lime kiln", "a malting floor"],
  },
  {
    kind: "causeway",
    material: "oak and brushwood",
    part: "sleeper",
    uses: ["a road", "a fish weir", "a boundary", "a landing stage"],
  },
  {
    kind: "barrow",
    material: "turf and gravel",
    part: "cist",
    uses: ["a grave", "a beacon mound", "a mill mound", "a cenotaph"],
  },
  {
    kind: "pit alignment",
    material: "cut in gravel",
    part: "pit",
    uses: ["a boundary", "a row of posts", "a quarry line", "a calendar"],
  },
  {
    kind: "weir",
    material: "hazel and stone",
    part: "sluice",
    uses: ["an eel trap", "a mill leat", "a ford", "a quay"],
  },
  {
    kind: "stone row",
    material: "sandstone",
    part: "stone",
    uses: ["a sighting line", "a field wall", "an avenue", "a deer drive"],
  },
] as const;

/** Names of scholars in three scripts, with the id each is filed under where the script is not Latin. */
export const given = [
  "Ansel",
  "Bertrade",
  "Corin",
  "Dagny",
  "Emeric",
  "Fenella",
  "Gisela",
  "Hartmut",
  "Ilona",
  "Jorunn",
  "Kester",
  "Lavinia",
  "Maurus",
  "Norah",
  "Odile",
  "Piers",
  "Ragna",
  "Sabin",
  "Tiberio",
  "Ursula",
] as const;

/** Family names of our own making. */
export const family = [
  "Thrupwick",
  "Osterhalde",
  "Vandermoos",
  "Quennisk",
  "Belvarden",
  "Sarrowgill",
  "Tindrake",
  "Mossgrieve",
  "Lindorne",
  "Falkenrood",
  "Harrowsmere",
  "Castelverde",
  "Pomfrith",
  "Ravensholt",
  "Iverslade",
  "Durrenmatten",
  "Egglescar",
  "Wintercott",
  "Zuidervliet",
  "Abernock",
  "Nordhagge",
  "Kessington",
  "Montefosco",
  "Ulverskjold",
] as const;

/** Scholars whose names are not in Latin script. */
export const otherScripts = [
  { id: "petromani", name: "Δάφνη Πετρομάνη", family: "Πετρομάνη", given: "Δάφνη", lang: "el" },
  { id: "al-rammali", name: "ليلى الرمّالي", family: "الرمّالي", given: "ليلى", lang: "ar" },
  { id: "alonaris", name: "Θωμάς Αλωνάρης", family: "Αλωνάρης", given: "Θωμάς", lang: "el" },
  { id: "al-tallal", name: "نادر التلّال", family: "التلّال", given: "نادر", lang: "ar" },
] as const;

/** What can be seen or missed in the ground, as a feature and as a sentence about a part. */
export const features = [
  ["charcoal", "a smear of charcoal lies on the floor"],
  ["packing stones", "packing stones stand on edge along the side"],
  ["daub", "lumps of daub with the print of hurdles lie in the fill"],
  ["tool marks", "tool marks run slantwise down the wall"],
  ["standing water silt", "laminated silt shows that water stood here"],
  ["trampled surface", "the surface is trampled hard and polished in patches"],
  ["burnt clay", "the clay is burnt red to the depth of a thumb"],
  ["snail shells", "snail shells of open grassland lie throughout"],
  ["re-cut", "a second cut runs through the first"],
  ["animal bone", "split long bones of sheep lie on the bottom"],
  ["wattle stubs", "stubs of wattle stand where they were driven"],
  ["lime mortar", "a skin of lime clings to the stones"],
  ["λάκκος", "a small pit, a λάκκος, was cut beside it before it was filled"],
  ["حفرة", "a hollow, حفرة, holds dark greasy soil"],
] as const;

/** Claims near the evidence, whole and short; `PART` and `SITE` are filled in. */
export const lowClaims = [
  ["PART was dug out again before it silted up.", "PART dug out again"],
  ["The fill of PART is of one season.", "PART filled in one season"],
  ["PART never carried any weight.", "PART bore nothing"],
  ["PART was cut with iron tools.", "PART cut with iron"],
  ["The burning in PART is later than its use.", "PART burnt later"],
  ["PART stood open for at least one winter.", "PART open for a winter"],
  ["What was called a floor in PART is the bottom of an older trench.", "no floor in PART"],
  [
    "The stones of PART were brought from a distance, for none like them lie within a day's walk of SITE, and two of them carry lichen that grows on the coast alone.",
    "stones of PART from the coast",
  ],
  ["PART belongs to the first plan and not to the repair.", "PART is of the first plan"],
  ["The dark soil of PART, the حفرة of the survey, is stable litter.", "litter in PART"],
] as const;

/** Claims that lean on other claims. */
export const highClaims = [
  ["SITE was laid out in one go by people who knew its final size.", "laid out in one go"],
  ["SITE was rebuilt at least twice on the same lines.", "rebuilt at least twice"],
  ["The entrance of SITE faced the track and not the sunrise.", "entrance towards the track"],
  ["SITE was in use for no longer than one generation.", "in use for one generation"],
  ["Animals were kept within SITE through the winter.", "animals kept within"],
  ["The outer parts of SITE are older than the inner ones.", "outer parts older"],
  ["SITE was given up after a flood.", "given up after a flood"],
  ["The builders of SITE used a measure of their own.", "a measure of their own"],
  [
    "SITE was cleared and sealed on purpose, as the turf laid face down over the whole of its περίβολος shows, and it was not visited again until the plough reached it.",
    "sealed on purpose",
  ],
  ["Only half of SITE was ever finished.", "half finished"],
  ["SITE and its neighbour were one work under two names.", "one work, two names"],
  ["Water was led through SITE before anything was built in it.", "water led through first"],
] as const;

/** Steps of reasoning in words. */
export const steps = [
  "What lies below is older than what lies above.",
  "Nobody would do this twice without a need.",
  "Such marks come from work and not from weather.",
  "The same is found wherever stock was kept.",
  "Without it the rest could not have stood.",
  "It is too regular to be chance.",
  "The drawing shows what the text leaves out.",
  "A trial with like tools gave the same.",
] as const;

/** Steps against something. */
export const objections = [
  "The section was drawn from memory, two winters later.",
  "The trench did not reach the bottom.",
  "Roots make the same marks.",
  "The sample came from the spoil heap.",
  "It holds for one part and was said of all.",
  "The comparison is with a place that was itself restored.",
  "The plough had been there first.",
] as const;

/** Words quoted from sources, by language. */
export const quotes: Readonly<Record<string, readonly string[]>> = {
  en: [
    "We saw it in the last light of October and did not see it again.",
    "It is what it looks like.",
    "I leave this to those who have the patience for it.",
    "The men were certain. I was not, and I am not now, though I have drawn it as they said and have had the drawing before me for eleven years.",
  ],
  de: ["Mehr läßt sich nicht sagen.", "Die Grube war leer, und das ist auch ein Befund."],
  pt: ["Não há outra explicação que me convença.", "Vi-o com os meus olhos."],
  el: ["Ο λάκκος ήταν άδειος.", "Δεν μπορούμε να πούμε περισσότερα."],
  ar: ["كانت الحفرة فارغة.", "لا يمكن أن نقول أكثر من ذلك."],
};

/** Journals and presses that print nothing, since they are invented. */
export const journals = [
  "Proceedings of the Urren Field Society",
  "Ostrelmoor Archaeological Notes",
  "Blätter für Grabung und Feld",
  "Cadernos de Terra Velha",
  "Χρονικά του Χώματος",
  "Annals of the Zenni Museum",
] as const;
