import { inEnglish } from "../../base/text/said/english.ts";
import type { Model } from "../../build.ts";
import type { Piece } from "../../show/pages/pieces.ts";
import type { ComponentPage, Told, Way } from "../../show/judged/standpoints/component.ts";
import type { FitLine, Named } from "../../show/judged/standpoints/named.ts";
import { standpointsPage } from "../../show/judged/standpoints/page.ts";
import type { StandpointsPage } from "../../show/judged/standpoints/page.ts";
import {
  aboutInWords,
  acceptedInWords,
  countInWords,
  misfitInWords,
  settledInWords,
  waysInWords,
} from "../../show/judged/standpoints/wording.ts";
import { paint, standingMark } from "./paint.ts";
import { quotedText } from "./quoted.ts";

/** The coherent standpoints: what divides them, what tells each alternative from its rivals, and whom each fits. */
export function standpointsText(model: Model): readonly string[] {
  const page = standpointsPage(model);
  return [
    paint.bold(inEnglish(countInWords(page))),
    "",
    ...page.components.flatMap((one, place) => [...componentText(model, one, place), ""]),
    ...jointText(page),
    ...settledText(page),
    ...wholeText(page),
  ];
}

const plain = (pieces: readonly Piece[]): string => pieces.map((one) => one.text).join("");

function componentText({ graph }: Model, one: ComponentPage, place: number): readonly string[] {
  const heads = one.about.map((about, line) =>
    paint.bold(`${line === 0 ? `${place + 1}.` : "  "} ${quotedText(graph, aboutInWords(about))}`),
  );
  const decides = one.questions.length > 0 ? [`   Bears on: ${names(one.questions, "; ")}`] : [];
  const more = one.more.length;
  return [
    ...heads,
    ...decides,
    `   ${inEnglish(waysInWords(one))}`,
    ...one.ways.flatMap((way, at) => ["", ...wayText(way, at, one)]),
    ...(more > 0 ? ["", `   and ${more} more; --json has them all`] : []),
    ...one.accepted.map(({ text, holds }) => `   ${inEnglish(acceptedInWords[holds])}: ${inEnglish(text)}`),
    ...fitText("one of them fits", one.fits, one.unknown, "   "),
  ];
}

function wayText(way: Way, place: number, one: ComponentPage): readonly string[] {
  const letter = one.ways.length > 1 ? `${place + 1})` : "  ";
  const told = one.ways.length > 1 ? way.toldBy : everythingIn(one, place);
  return [
    ...told.map(
      ({ text, fate }, line) => `   ${line === 0 ? letter : "  "} ${standingMark(fate)}  ${inEnglish(text)}`,
    ),
    ...(way.ways > 1 ? [`      ${way.ways} ways look so; what tells them apart is withheld`] : []),
    ...fitText("fits", way.fits, [], "      "),
  ];
}

/** What becomes of all claims where there is but one way; of evidence and arguments where there is no claim. */
function everythingIn({ claims, evidence, arguments: steps }: ComponentPage, place: number): readonly Told[] {
  const rows = claims.length > 0 ? claims : [...evidence, ...steps];
  return rows.map(({ id, text, fates }) => ({ id, text, fate: fates[place] ?? "falls" }));
}

function fitText(
  verb: string,
  fits: readonly FitLine[],
  unknown: readonly Named[],
  indent: string,
): readonly string[] {
  const wholly = fits.filter((one) => one.but === null);
  const nearly = fits.flatMap(({ text, but }) =>
    but === null ? [] : [`${inEnglish(text)} (${plain(misfitInWords(but))})`],
  );
  return [
    ...(wholly.length > 0 ? [`${indent}${verb} ${names(wholly, ", ")} wholly`] : []),
    ...(nearly.length > 0 ? [`${indent}${verb} all but one position of ${nearly.join(", ")}`] : []),
    ...(unknown.length > 0 ? [`${indent}not known of ${names(unknown, ", ")}`] : []),
  ];
}

function jointText({ joint }: StandpointsPage): readonly string[] {
  if (joint.length === 0) return [];
  const lines = joint.map(({ text, on, holds }) => {
    return `   ${inEnglish(acceptedInWords[holds])}: ${inEnglish(text)} (hangs on ${on.map((place) => place + 1).join(", ")})`;
  });
  return [paint.bold("What hangs on several of them"), ...lines, ""];
}

function settledText({ settled }: StandpointsPage): readonly string[] {
  const told = settled.filter((one) => one.claims.length > 0).map((one) => inEnglish(settledInWords(one)));
  return told.length > 0 ? [`The same in every standpoint: ${told.join(", ")}.`] : [];
}

function wholeText({ fits, unknown, scholars }: StandpointsPage): readonly string[] {
  if (scholars === 0) return [];
  const lines = fitText("Some standpoint as a whole fits", fits, unknown, "");
  return lines.length > 0
    ? lines
    : ["No standpoint as a whole fits all, or all but one, of any scholar's latest positions."];
}

function names(those: readonly Named[], by: string): string {
  return those.map((one) => inEnglish(one.text)).join(by);
}
