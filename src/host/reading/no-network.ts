/** Stands in for the network packages that the bibliography parsers ask for: a corpus is read from its own files only. */
export default function refuse(): never {
  throw new Error("Unexpected request to the network, expected only files of the corpus");
}

/** The companion export that those packages have; nothing ever makes one. */
export class Headers {}
