import { arabicArtefacts } from "../arabic/shown/artefacts.ts";
import { told } from "../reader/told.ts";
import type { Presence } from "../../../show/artefacts/observed.ts";
import type { EventKind } from "../../../show/artefacts/history/events.ts";
import type { Reading } from "../../../show/artefacts/reading.ts";

const times = (n: number): string => (n >= 10 ? String(Math.round(n)) : n.toFixed(1));

/** Words of the pages of artefacts and of their drawings. */
export const artefactWords = told(
  {
    artefacts: "Artefacts",
    artefact: "artefact",
    help: "Things and their parts. Mark two or more that have a shape to draw them side by side at one scale.",
    filter: "Filter by name, number or kind",
    none: "Nothing fits these words.",
    measured: (n: number) => (n === 1 ? "1 measurement" : `${n} measurements`),
    seen: (n: number) => (n === 1 ? "1 observation" : `${n} observations`),
    parts: (n: number) => (n === 1 ? "1 part" : `${n} parts`),
    mark: (name: string) => `Draw ${name}`,
    marked: (n: number) => (n === 1 ? "One marked; mark another to draw them side by side." : `${n} marked.`),
    drawThem: "Draw side by side",
    clear: "Take all marks away",
    sideBySide: "Side by side at one scale",
    partOf: "part of",
    itsParts: "Parts",
    itsPage: "Dimensions, history and drawing",
    whatItIs: "What it is",
    placeWithheld: "Where it was found is withheld.",
    access: "Who lets you see it",
    // The usual caution of museums and site keepers (common practice).
    caution:
      "Look first, by ways that leave it as it is. Touching, moving or sampling it takes the keeper’s permit, and the consent of those it belongs to or matters to; what local rules and licensed practice ask comes first.",
    drawing: "Drawn to scale",
    dimensions: "Dimensions",
    noDimensions: "Nothing of it has been measured.",
    ofParts: "Dimensions of its parts",
    figure: "Figure as written",
    si: "In SI, ± 1 s",
    state: "State and basis",
    source: "Source",
    year: "Year",
    use: "A derivation",
    alone: "takes it",
    inMean: "takes it into a mean",
    leftOut: (why: string | null) => (why === null ? "leaves it out" : `leaves it out: ${why}`),
    taken: (si: string, readings: number) =>
      readings === 1
        ? `A derivation takes ${si}.`
        : `A derivation takes ${si}, the mean of ${readings} readings.`,
    takenNone: "A derivation takes none of these.",
    how: (how: string) => `taken ${how}`,
    copies: (whose: string) => `copies ${whose}`,
    of: (n: number) => `of ${n}`,
    inConflict: (n: number) => (n === 1 ? "one in conflict" : `${n} in conflict`),
    conflict: "in conflict",
    clash: (who: readonly [string, string], by: string, more: number | null) =>
      `${who[0] === who[1] ? `Two readings of ${who[0]}` : `${who[0]} and ${who[1]}`} differ by ${by}${more === null ? ", where nothing is allowed" : `, ${times(more)} times what their uncertainties allow`}.`,
    shouldEqual: (sum: string, expected: string) => `Should equal ${sum}, ${expected}, and `,
    tieAgrees: (bounded: boolean) => (bounded ? "agrees as far as a bound can tell." : "agrees."),
    tieDiffers: (by: string, more: boolean, allowed: number | null) =>
      `is ${by} ${more ? "more" : "less"}${allowed === null ? ", where nothing is allowed" : `, ${times(allowed)} times what their uncertainties allow`}.`,
    moreClashes: (n: number) => (n === 1 ? "One more pair differs." : `${n} more pairs differ.`),
    observations: "What was seen on it",
    noObservations: "Nothing of it was seen or looked for.",
    presence: {
      true: "present",
      false: "absent",
      unclear: "unclear",
      "not-reported": "not reported",
    } satisfies Readonly<Record<Presence, string>>,
    trace: "Trace",
    observation: "Observation",
    by: "By",
    on: "on",
    history: "History",
    historyHelp: "Above the line, when it was seen or measured and by whom; below it, what befell it.",
    historyPicture: "Its history on a line of years; the same in words is below.",
    befell: (names: string) => `(${names})`,
    looked: (measured: number, seen: number) =>
      [
        measured === 0 ? "" : measured === 1 ? "one dimension measured" : `${measured} dimensions measured`,
        seen === 0 ? "" : seen === 1 ? "one thing observed" : `${seen} things observed`,
      ]
        .filter((one) => one !== "")
        .join(", "),
    via: "via",
    from: (bases: readonly string[]) => `on a ${bases.join(", a ")}`,
    after: (what: string, when: string) => `after “${what}”, ${when}`,
    kinds: {
      excavation: "excavation",
      conservation: "conservation",
      restoration: "restoration",
      move: "move",
      sampling: "sampling",
      loss: "loss",
    } satisfies Readonly<Record<EventKind, string>>,
    states: {
      complete: "complete",
      preserved: "preserved, at least",
      reconstructed: "reconstructed",
    } satisfies Readonly<Record<Reading["state"], string>>,
    images: "Pictures of it",
    hanging: "What would not stand without it",
    noHanging: "No answer to a question hangs on it alone.",
    through: "through",
    scale: (scale: string) => `${scale} in print and in the saved file.`,
    thin: "Thin outlines are one standard uncertainty less and more.",
    brokenEdges: "Jagged edges are lower bounds: the thing went on.",
    suppliedEdges: "Dashed edges are reconstructed, or upper bounds.",
    rows: "The record gives parts no places; they stand side by side.",
    profileNote: "Widths of a profile stand at equal steps from rim to base.",
    undrawn: (name: string, lacks: string) => `${name} is not drawn: nothing measured gives its ${lacks}.`,
    secondBar: "Second scale bar in",
    unitIs: (name: string, size: string, source: string) => `1 ${name} is ${size} (${source}).`,
    unitAssumed: "No range is published for it; 1 % stands in.",
    unitTooLong: (name: string) => `One ${name} is longer than this sheet at this scale.`,
    combed: "The ticks at its end are one standard uncertainty either way.",
    meanOf: (n: number) => `mean of ${n}`,
    form: { circle: "circle", rectangle: "rectangle", profile: "profile" },
    save: "Save as SVG",
    saveName: "drawing",
  },
  arabicArtefacts,
);
