import { coded, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Fields, ListName } from "./field.ts";

/** One kind of record: the list it stands in, its fields, and which of them must be there. */
export interface Kind {
  readonly singular: string;
  readonly doc: Text;
  readonly fields: Fields;
  /** Sets of fields of which one must be given; with `exactly`, only one. Fields joined by `+` go together. */
  readonly needs?: { readonly oneOf: readonly string[]; readonly exactly: boolean };
}

const evidence = ["observations", "measurements", "relations", "derivations"] as const;
const premises = ["claims", ...evidence, "positions"] as const;
const attackable = ["claims", ...evidence, "positions", "arguments"] as const;
const bases = ["autopsy", "cast", "replica", "scan", "photograph", "drawing", "report"] as const;
const strengths = ["weak", "ordinary", "strong"] as const;

const id = { type: "id", required: true, doc: say`Its name: a-z, 0-9 and -, parts joined by /.` } as const;
const ownId = { type: "id", doc: say`Its name, where others refer to it.` } as const;
const from = { type: "citations", doc: say`Where it is said: keys with locators, or passages.` } as const;
const via = { type: "citation", doc: say`The source it was really read in, when second-hand.` } as const;
const by = {
  type: "refs",
  to: ["scholars"],
  doc: say`Whose it is; without it, the authors of ${coded("from")}.`,
} as const;
const year = { type: "year", doc: say`When it was seen, measured or said.` } as const;
const basis = { type: "choice", of: bases, doc: say`What was really looked at.` } as const;
const strength = {
  type: "choice",
  of: strengths,
  doc: say`How much it weighs against a rival; default ordinary.`,
} as const;

const present = {
  type: "choice",
  of: ["true", "false", "unclear", "not-reported"],
  doc: say`Seen, looked for and not there, cannot be told, or passed over in silence; default true.`,
} as const;

/** The table of record kinds: types, checks, edges, forms and the manual come from it. */
export const kinds = {
  scholars: {
    singular: "scholar",
    doc: say`Somebody who holds, measures or argues.`,
    fields: {
      id,
      name: { type: "text", required: true, doc: say`The name as it is to be printed.` },
      "known-as": { type: "texts", doc: say`Other spellings met in bibliographies.` },
      orcid: { type: "text", doc: say`The scholar's ${"ORCID"}.` },
    },
  },
  questions: {
    singular: "question",
    doc: say`What is contested, and the answers given to it.`,
    fields: {
      id,
      text: { type: "text", required: true, doc: say`The question as a sentence.` },
      answers: { type: "refs", to: ["claims"], required: true, doc: say`The claims that answer it.` },
      exclusive: { type: "flag", doc: say`No two answers can both be right; default true.` },
      prior: { type: "numberMap", doc: say`How probable each answer is before the next look.` },
    },
  },
  claims: {
    singular: "claim",
    doc: say`Something that may be held or rejected.`,
    fields: {
      id,
      text: { type: "text", required: true, doc: say`The claim as a sentence.` },
      from,
      "incompatible-with": {
        type: "refs",
        to: ["claims"],
        doc: say`Claims that cannot be right together with it.`,
      },
      about: { type: "refs", to: ["artefacts"], doc: say`The things it speaks of.` },
      dates: {
        type: "items",
        doc: say`What it says of dates.`,
        fields: {
          event: { type: "text", required: true, doc: say`What happened.` },
          is: { type: "text", doc: say`When: ${"EDTF"}, or another claim or artefact.` },
          after: { type: "text", doc: say`It came after this.` },
          before: { type: "text", doc: say`It came before this.` },
        },
      },
    },
  },
  passages: {
    singular: "passage",
    doc: say`A place in a source, with its words.`,
    fields: {
      id,
      at: { type: "text", required: true, doc: say`The place: ${"p. 12, fig. 3"}.` },
      from,
      quote: { type: "text", doc: say`The words, as printed.` },
      lang: { type: "text", doc: say`Their language (${"BCP 47"}).` },
      translation: { type: "text", doc: say`The words in the corpus's language.` },
      paraphrase: { type: "text", doc: say`What they say, in other words.` },
      via,
      selector: { type: "json", doc: say`A ${"W3C Web Annotation"} selector that finds the place again.` },
    },
  },
  positions: {
    singular: "position",
    doc: say`What a scholar makes of a claim.`,
    fields: {
      id: ownId,
      who: { type: "refs", to: ["scholars"], required: true, doc: say`The scholar, or several.` },
      claim: { type: "ref", to: ["claims"], required: true, doc: say`The claim.` },
      stance: {
        type: "choice",
        of: ["holds", "rejects", "doubts", "leaves-open"],
        required: true,
        doc: say`What the scholar makes of it.`,
      },
      from,
      year,
      words: { type: "text", doc: say`The scholar's own words.` },
      certainty: {
        type: "choice",
        of: ["certain", "probable", "possible", "unlikely"],
        doc: say`How certain, as the author puts it.`,
      },
      via,
    },
  },
  artefacts: {
    singular: "artefact",
    doc: say`A thing, or a part of one.`,
    needs: { oneOf: ["name", "numbers"], exactly: false },
    fields: {
      id,
      name: { type: "text", doc: say`What it is called.` },
      "part-of": { type: "ref", to: ["artefacts"], doc: say`The whole it is part of.` },
      kind: { type: "text", doc: say`What sort of thing it is.` },
      material: { type: "text", doc: say`What it is made of.` },
      numbers: { type: "textMap", doc: say`Its numbers by register: inventory, excavation, publication.` },
      date: {
        type: "items",
        short: "is",
        doc: say`When it was made: ${"EDTF"}, or a list of dates with who gives them.`,
        fields: { is: { type: "date", required: true, doc: say`${"EDTF"}.` }, from, by },
      },
      "found-at": { type: "text", doc: say`Where it was found.` },
      coordinates: { type: "text", doc: say`Where exactly; kept out of every output.` },
      "held-at": { type: "text", doc: say`Where it is now.` },
      access: {
        type: "group",
        doc: say`Who lets you see it.`,
        fields: {
          keeper: { type: "text", doc: say`Who keeps it.` },
          permit: { type: "text", doc: say`What permission it takes.` },
          "lead-time": { type: "text", doc: say`How long beforehand to ask.` },
          note: { type: "text", doc: say`Anything else.` },
        },
      },
      history: {
        type: "items",
        doc: say`What happened to it since.`,
        fields: {
          when: { type: "date", required: true, doc: say`${"EDTF"}.` },
          what: { type: "text", required: true, doc: say`What was done.` },
          kind: {
            type: "choice",
            of: ["excavation", "conservation", "restoration", "move", "sampling", "loss"],
            required: true,
            doc: say`What sort of event.`,
          },
          from,
        },
      },
      shape: {
        type: "group",
        doc: say`Its outline for scale drawings: one of them, with the dimensions of its sides.`,
        fields: {
          rectangle: { type: "texts", doc: say`Two dimensions.` },
          circle: { type: "texts", doc: say`One dimension.` },
          profile: { type: "texts", doc: say`Dimensions from rim to base.` },
        },
      },
      "withhold-location": {
        type: "flag",
        inDoubt: true,
        doc: say`Keep where it was found out of every output.`,
      },
    },
  },
  images: {
    singular: "image",
    doc: say`A picture of a thing.`,
    fields: {
      id,
      of: { type: "refs", to: ["artefacts"], required: true, doc: say`What it shows.` },
      file: { type: "text", required: true, doc: say`The file, below the corpus's folder.` },
      kind: {
        type: "choice",
        of: ["photograph", "drawing", "scan", "plate"],
        doc: say`What sort of picture.`,
      },
      scale: { type: "text", doc: say`Its scale, as printed or measured.` },
      "made-by": { type: "text", doc: say`Who made it.` },
      when: { type: "date", doc: say`When.` },
      credit: { type: "text", doc: say`The credit line.` },
      licence: { type: "text", doc: say`What may be done with it.` },
      from,
      publish: { type: "flag", doc: say`It may appear in outputs; default false.` },
    },
  },
  observations: {
    singular: "observation",
    doc: say`Something seen, looked for, or passed over in silence.`,
    fields: {
      id,
      of: { type: "refs", to: ["artefacts"], required: true, doc: say`The thing, or things in relation.` },
      text: { type: "text", required: true, doc: say`What was seen, as a sentence.` },
      feature: { type: "text", doc: say`The kind of trace.` },
      present,
      basis,
      by,
      year,
      from,
      via,
    },
  },
  measurements: {
    singular: "measurement",
    doc: say`One dimension of one thing, measured once.`,
    fields: {
      id: ownId,
      of: { type: "ref", to: ["artefacts"], required: true, doc: say`The thing measured.` },
      dimension: { type: "text", required: true, doc: say`What was measured.` },
      value: { type: "quantity", required: true, doc: say`The figure as printed.` },
      state: {
        type: "choice",
        of: ["complete", "preserved", "reconstructed"],
        doc: say`Of the dimension; default complete.`,
      },
      basis,
      between: { type: "text", doc: say`The landmarks.` },
      instrument: { type: "text", doc: say`What it was measured with.` },
      "to-nearest": { type: "quantity", doc: say`What it was rounded to.` },
      readings: { type: "quantities", doc: say`The single readings.` },
      n: { type: "whole", doc: say`How many things or readings it sums up.` },
      spread: {
        type: "flag",
        doc: say`It spans smallest to largest of several things; never an error of one.`,
      },
      coverage: { type: "number", doc: say`What ± means here: 1 or 2 standard uncertainties.` },
      "shares-error": {
        type: "group",
        doc: say`An error common to all measurements that name it.`,
        fields: {
          with: { type: "text", required: true, doc: say`Its name.` },
          of: { type: "quantity", required: true, doc: say`Its relative size: 1 %.` },
        },
      },
      repeats: {
        type: "ref",
        to: ["measurements", "sources"],
        doc: say`The source or measurement it copies.`,
      },
      condition: { type: "text", doc: say`The thing's condition when measured.` },
      by,
      year,
      from,
      via,
    },
  },
  relations: {
    singular: "relation",
    doc: say`What came before what, or at one time.`,
    needs: { oneOf: ["earlier+later", "same-time"], exactly: true },
    fields: {
      id,
      earlier: { type: "text", doc: say`An artefact, or an event in words.` },
      later: { type: "text", doc: say`An artefact, or an event in words.` },
      "same-time": { type: "texts", doc: say`Two of them.` },
      "at-least": { type: "number", doc: say`Years between, at least.` },
      "at-most": { type: "number", doc: say`Years between, at most.` },
      because: { type: "text", doc: say`The reason.` },
      by,
      from,
      via,
    },
  },
  arguments: {
    singular: "argument",
    doc: say`A step from premises to a claim, or against something.`,
    needs: { oneOf: ["therefore", "against"], exactly: true },
    fields: {
      id,
      because: { type: "refs", to: premises, required: true, doc: say`What it rests on.` },
      therefore: { type: "ref", to: ["claims"], doc: say`The claim it is for.` },
      against: { type: "refs", to: attackable, doc: say`What it is against.` },
      text: { type: "text", doc: say`The step in words.` },
      by,
      from,
      year,
      via,
      scheme: {
        type: "choice",
        of: [
          "trace",
          "parallel",
          "analogy",
          "function",
          "experiment",
          "silence",
          "authority",
          "metrology",
          "stratigraphy",
          "context",
          "chronology",
          "text-or-image",
          "provenance",
          "other",
        ],
        doc: say`The sort of step.`,
      },
      strength,
      "why-strength": { type: "text", doc: say`Why it weighs more or less.` },
    },
  },
  derivations: {
    singular: "derivation",
    doc: say`A number computed by a plug-in.`,
    fields: {
      id,
      plugin: { type: "text", required: true, doc: say`The plug-in.` },
      inputs: { type: "json", required: true, doc: say`What it computes on.` },
      parameters: { type: "json", doc: say`Its settings.` },
      "bears-on": {
        type: "items",
        doc: say`What the numbers say of which claim.`,
        fields: {
          claim: { type: "ref", to: ["claims"], required: true, doc: say`The claim.` },
          supports: { type: "json", doc: say`Comparisons that must all hold.` },
          disputes: { type: "json", doc: say`Comparisons that must all hold.` },
          strength,
        },
      },
      looks: { type: "whole", doc: say`How often the data were looked at with other settings.` },
      text: { type: "text", doc: say`What it is for.` },
    },
  },
  examinations: {
    singular: "examination",
    doc: say`A look that could be taken, and what it might show.`,
    fields: {
      id,
      of: { type: "refs", to: ["artefacts"], required: true, doc: say`The things to look at.` },
      method: { type: "text", required: true, doc: say`How.` },
      outcomes: {
        type: "items",
        required: true,
        doc: say`What may come of it.`,
        fields: {
          id,
          text: { type: "text", required: true, doc: say`The outcome as a sentence.` },
          sees: {
            type: "items",
            doc: say`Features seen or missed.`,
            fields: { feature: { type: "text", required: true, doc: say`The kind of trace.` }, present },
          },
          measures: {
            type: "items",
            doc: say`Dimensions it would give.`,
            fields: {
              of: { type: "ref", to: ["artefacts"], required: true, doc: say`The thing.` },
              dimension: { type: "text", required: true, doc: say`The dimension.` },
              value: { type: "quantity", required: true, doc: say`The figure.` },
            },
          },
          therefore: { type: "refs", to: ["claims"], doc: say`Claims it would speak for.` },
          against: { type: "refs", to: attackable, doc: say`What it would speak against.` },
          strength,
          probability: { type: "probability", doc: say`How probable, or how probable under each answer.` },
        },
      },
      cost: { type: "amount", doc: say`In the corpus's measure of cost.` },
      destructive: { type: "flag", doc: say`It uses up or marks the thing; default false.` },
      permit: { type: "text", doc: say`What permission it takes.` },
    },
  },
  talks: {
    singular: "talk",
    doc: say`Steps in which the question is presented.`,
    fields: {
      id,
      title: { type: "text", required: true, doc: say`Its title.` },
      steps: {
        type: "items",
        required: true,
        doc: say`What is shown in turn.`,
        fields: {
          show: { type: "json", doc: say`Ids, or one thing to draw.` },
          text: { type: "text", doc: say`Words on the screen.` },
          notes: { type: "text", doc: say`Words for the speaker.` },
        },
      },
    },
  },
  searches: {
    singular: "search",
    doc: say`A search of the literature, as it was made.`,
    fields: {
      id,
      where: { type: "text", required: true, doc: say`Catalogue, shelf or index.` },
      words: { type: "text", required: true, doc: say`The words searched.` },
      when: { type: "date", doc: say`The day.` },
      found: { type: "whole", doc: say`How many were found.` },
      screened: { type: "whole", doc: say`How many were looked at.` },
      kept: { type: "whole", doc: say`How many were kept.` },
      "left-out": {
        type: "items",
        doc: say`How many were left out, and why.`,
        fields: {
          n: { type: "whole", required: true, doc: say`How many.` },
          why: { type: "text", required: true, doc: say`The reason.` },
        },
      },
      by,
    },
  },
  readings: {
    singular: "reading",
    doc: say`Whether a source was read.`,
    fields: {
      from: { type: "citations", required: true, doc: say`The source.` },
      status: {
        type: "choice",
        of: ["to-read", "read", "nothing-in-it", "not-found"],
        required: true,
        doc: say`What became of it.`,
      },
      when: { type: "date", doc: say`When.` },
      by,
    },
  },
} as const satisfies Readonly<Record<ListName, Kind>>;

/** Fields that every record may have. */
export const everywhere = {
  note: { type: "text", doc: say`Anything worth keeping.` },
  short: { type: "text", most: 40, doc: say`At most 40 characters, for map, figures and slides.` },
  "entered-by": { type: "text", doc: say`Who typed it.` },
  "checked-by": { type: "text", doc: say`Who compared it with the source.` },
} as const satisfies Fields;

/** The lists of a corpus, in the order of the manual. */
export const listNames: readonly ListName[] = Object.keys(kinds) as readonly ListName[];

/** The table's row for a list. */
export function kindOf(list: ListName): Kind {
  return kinds[list];
}
