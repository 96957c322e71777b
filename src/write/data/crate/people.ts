import type { Settings } from "../../../read/settings/settings.ts";
import { addressOf } from "../graph/licence.ts";
import { said } from "./entity.ts";
import type { Entity } from "./entity.ts";

/** Those who made the corpus: by their ORCID where they have one. */
export function authorsIn({ authors }: Settings): readonly Entity[] {
  return authors.map(({ name, orcid, role }, place) => {
    const number = /\d{4}-\d{4}-\d{4}-\d{3}[\dX]/.exec(orcid ?? "")?.[0];
    const id = number === undefined ? `#author-${place + 1}` : `https://orcid.org/${number}`;
    return said({ "@id": id, "@type": "Person", name, description: role });
  });
}

/** What may be done with something, by the address of the licence where it has a known one. */
export function licenceOf(licence: string | null, name: string): Entity {
  const text = licence?.trim() ?? "";
  if (text === "")
    return {
      "@id": `#licence-${name}`,
      "@type": "CreativeWork",
      name: "All rights reserved",
      description: "No licence is recorded. Ask the authors before anything of this is used again.",
    };
  const address = addressOf(text);
  return {
    "@id": address ?? `#licence-${name}`,
    "@type": "CreativeWork",
    name: text,
    description:
      address === null ? `What may be done with it: ${text}` : `The licence that is given as ${text}.`,
    ...(address === null ? {} : { identifier: address }),
  };
}
