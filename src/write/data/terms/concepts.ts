/**
 * The concepts that no published vocabulary has, by the scheme they stand in: a name, what it is called, and what it means. Each
 * is published as a SKOS concept that is also a `crm:E55_Type`.
 */
export const concepts = {
  kinds: {
    title: "Kinds of record",
    has: {
      question: ["question", "What is contested, and the answers given to it."],
      examination: ["examination", "A look that could be taken at a thing, and what it might show."],
      "possible-outcome": ["possible outcome", "What may come of an examination."],
      "literature-search": ["search of the literature", "A search, as it was made and logged."],
      "reading-of-a-source": ["reading of a source", "How far a source was read."],
      position: ["position", "What a scholar makes of a claim."],
      "unit-hypothesis": [
        "supposed unit",
        "A unit of measure that somebody holds was used; its size is a claim.",
      ],
      "computed-number": ["computed number", "A number that a method gave, not one that was measured."],
      "number-in-a-register": ["number in a register", "What a thing is called in an inventory or report."],
    },
  },
  certainty: {
    title: "What a belief is held to be",
    has: {
      "held-true": ["held to be true", "TRUE"],
      "held-probable": ["held to be probable", "PROBABLE"],
      "held-possible": ["held to be possible", "POSSIBLE"],
      "held-unlikely": ["held to be unlikely", "UNLIKELY"],
      "held-false": ["held to be false", "FALSE"],
      "held-unknown": ["left open, or not known", "UNKNOWN"],
    },
  },
  stance: {
    title: "Stances",
    has: {
      holds: ["holds", "The scholar holds the claim."],
      rejects: ["rejects", "The scholar rejects the claim."],
      doubts: ["doubts", "The scholar doubts the claim without rejecting it."],
      "leaves-open": ["leaves open", "The scholar knows the claim and decides nothing."],
      "said-certain": ["certain", "The author's own word for how certain it is: certain."],
      "said-probable": ["probable", "The author's own word for how certain it is: probable."],
      "said-possible": ["possible", "The author's own word for how certain it is: possible."],
      "said-unlikely": ["unlikely", "The author's own word for how certain it is: unlikely."],
    },
  },
  presence: {
    title: "What was seen of a feature",
    has: {
      seen: ["seen", "It was looked for or met with, and is there."],
      "observed-absence": ["looked for and not there", "It was looked for and is not there."],
      "cannot-be-told": ["cannot be told", "It was looked for, and whether it is there cannot be told."],
      "not-reported": ["not reported", "The source describes the thing and says nothing of it: no absence."],
    },
  },
  basis: {
    title: "What was really looked at",
    has: {
      autopsy: ["the thing itself", "The observer had the thing before them."],
      cast: ["a cast", "A cast of the thing."],
      replica: ["a replica", "A replica of the thing."],
      scan: ["a scan", "A scan or model of the thing."],
      photograph: ["a photograph", "A photograph of the thing."],
      drawing: ["a drawing", "A drawing of the thing."],
      report: ["a report", "What somebody else wrote of the thing."],
      "basis-not-stated": ["not stated", "The record does not say what was looked at."],
    },
  },
  dimension: {
    title: "How a dimension is to be taken",
    has: {
      complete: ["complete", "The dimension of the thing as it was made."],
      preserved: ["preserved", "What is left; a lower bound of what there was, never the original size."],
      reconstructed: ["reconstructed", "An estimate of the original; nothing of that size was measured."],
      "one-value": ["one value", "Stated as one value with its uncertainty."],
      approximate: ["approximate", "Stated as about so much."],
      range: ["range", "Stated as lying between two values; there is no central value."],
      "at-least": ["at least", "A lower bound and no value."],
      "at-most": ["at most", "An upper bound and no value."],
      spread: ["spread", "The smallest to the largest of several things, never an error of one."],
    },
  },
  event: {
    title: "What happened to a thing",
    has: {
      excavation: ["excavation", "It was dug out or laid open."],
      conservation: ["conservation", "It was treated so that it lasts."],
      restoration: ["restoration", "It was put together or made good."],
      move: ["move", "It was brought elsewhere."],
      sampling: ["sampling", "Something was taken from it."],
      loss: ["loss", "It is gone, or cannot be found."],
    },
  },
  scheme: {
    title: "Sorts of step from premises to a conclusion",
    has: {
      "from-trace": ["from traces", "From traces of use, making or decay."],
      "from-parallel": ["from parallels", "From things of like form elsewhere."],
      "from-analogy": ["from analogy", "From how the like is done or used where that is known."],
      "from-function": ["from function", "From what the thing could or could not do."],
      "from-experiment": ["from experiment", "From trying it out: it shows what can be, not what was."],
      "from-silence": ["from silence", "From what nobody reports."],
      "from-authority": ["from authority", "From the word of one who is held to know."],
      "from-metrology": ["from metrology", "From measures and the units they may be in."],
      "from-stratigraphy": ["from stratigraphy", "From the order of layers and cuts."],
      "from-context": ["from context", "From what it was found with, and where."],
      "from-chronology": ["from chronology", "From dates and their order."],
      "from-text-or-image": ["from text or image", "From what is written or shown."],
      "from-provenance": ["from provenance", "From where it came from, and through whose hands."],
      "from-something-else": ["from something else", "By a step of another sort."],
    },
  },
  strength: {
    title: "How much an argument weighs against a rival",
    has: {
      weak: ["weak", "It gives way to a rival that is not weak."],
      ordinary: ["ordinary", "It weighs as much as most."],
      strong: ["strong", "It gives way to strong rivals alone."],
    },
  },
  standing: {
    title: "Standings: what follows from the record, computed and not held by anybody",
    has: {
      stands: ["stands", "It follows from what was recorded."],
      open: ["open", "A live contradiction decides it."],
      falls: ["falls", "It would follow if nothing spoke against what it leans on."],
      unsupported: ["unsupported", "Nothing was put under it, or only what is itself unsupported."],
      "footing-observed": ["observed", "A chain of arguments for it reaches something seen or measured."],
      "footing-silent": ["silent", "The chains of arguments for it reach silences alone."],
      "footing-attested": ["attested", "Somebody holds it, and no evidence is reached."],
      "footing-bare": ["bare", "Nothing is under it and nobody holds it."],
      "not-computed": ["not computed", "The computation gave no number, for the reason noted."],
    },
  },
  relation: {
    title: "Properties that a single proposition may state",
    has: {
      "bears-feature-of-type": ["bears a feature of the type", "The thing bears a feature of that type."],
      "has-dimension": ["has the dimension", "The thing has that dimension."],
      "ends-before": ["ends before", "The first came before the second."],
      "at-one-time": ["at one time", "The two came about at one time."],
      "dated-to": ["dated to", "The event lies in that time-span."],
    },
  },
  reading: {
    title: "How far a source was read",
    has: {
      "to-read": ["to be read", "It is known of and not yet read."],
      read: ["read", "It was read."],
      "nothing-in-it": ["nothing in it", "It was read and says nothing to the question."],
      "not-found": ["not found", "It was looked for and not found."],
    },
  },
} as const satisfies Readonly<Record<string, ConceptScheme>>;

/** Concepts that belong together. */
export interface ConceptScheme {
  readonly title: string;
  readonly has: Readonly<Record<string, readonly [label: string, meaning: string]>>;
}

type In<S> = S extends { readonly has: infer H } ? keyof H & string : never;

/** The name of a concept of ours. */
export type ConceptName = In<(typeof concepts)[keyof typeof concepts]>;

/** The value of the scale of beliefs, as `crminf:J5_holds_to_be` has it. */
export type HeldToBe = "TRUE" | "PROBABLE" | "POSSIBLE" | "UNLIKELY" | "FALSE" | "UNKNOWN";
