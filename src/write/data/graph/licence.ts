import { part, plain } from "./ground.ts";
import type { Ground } from "./ground.ts";
import type { Node } from "./sheet.ts";

/** What may be done with something: the right as it is recorded, and the licence by its address where it has a known one. */
export function putLicence({ sheet }: Ground, subject: Node, licence: string | undefined): void {
  if (licence === undefined) return;
  const right = part(subject, "licence");
  sheet.is(right, "crm:E30_Right");
  sheet.has(right, "rdfs:label", plain(licence));
  sheet.has(subject, "crm:P104_is_subject_to", right);
  const address = addressOf(licence.trim());
  if (address !== null) sheet.has(subject, "dcterms:license", { iri: address });
}

/** The address of a Creative Commons licence by its SPDX name, or of one that is given by its address. */
export function addressOf(licence: string): string | null {
  if (/^https?:\/\/[^\s<>"{}|\\^`]+$/.test(licence)) return licence;
  if (licence === "CC0-1.0") return "https://creativecommons.org/publicdomain/zero/1.0/";
  const [, terms, version] = /^CC-(BY(?:-(?:SA|NC|ND|NC-SA|NC-ND))?)-(\d\.\d)$/.exec(licence) ?? [];
  return terms === undefined || version === undefined
    ? null
    : `https://creativecommons.org/licenses/${terms.toLowerCase()}/${version}/`;
}
