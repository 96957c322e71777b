import type { Made } from "../../telling/made.ts";

/**
 * The parts of a packed document without what is of the moment: the day is the one given (YYYY-MM-DD), and ids that count on
 * from an earlier document or are drawn at random are counted anew in the order in which they stand.
 */
export function settledParts(parts: readonly Made[], day: string): readonly Made[] {
  const texts = new Map(
    parts.map(({ path, content }) => {
      const isText = typeof content !== "string" && /\.(?:xml|rels)$/.test(path);
      return [path, isText ? new TextDecoder().decode(content) : content];
    }),
  );
  return parts.map(({ path }) => {
    const text = texts.get(path) ?? "";
    if (typeof text !== "string") return { path, content: text };
    if (path === "docProps/core.xml")
      return { path, content: text.replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, `${day}T00:00:00Z`) };
    const [, folder = "", name = ""] = /^(.*\/)?_rels\/(.+)\.rels$/.exec(path) ?? [];
    const links = name === "" ? linksOf(path) : path;
    const list = texts.get(links);
    const whole = typeof list === "string" ? linksNamed(text, list) : text;
    return { path, content: folder === "" && name !== "" ? whole : counted(whole) };
  });
}

/** The path of the list of links of a part. */
function linksOf(path: string): string {
  const [, folder = "", name = ""] = /^(.*\/)?([^/]+)$/.exec(path) ?? [];
  return `${folder}_rels/${name}.rels`;
}

/** A part, or the list itself, with the links of a list counted where their ids are drawn at random. */
function linksNamed(text: string, list: string): string {
  const drawn = [...list.matchAll(/ Id="(rId[^"]*)"/g)]
    .map(([, id = ""]) => id)
    .filter((id) => !/^rId\d+$/.test(id));
  const names = new Map(drawn.map((id, place) => [id, `rIdLink${place + 1}`]));
  return text.replace(/"(rId[^"]*)"/g, (whole, id: string) => {
    const name = names.get(id);
    return name === undefined ? whole : `"${name}"`;
  });
}

/** Ids of bookmarks and pictures, and names of headings in tables of contents, from 1. */
function counted(xml: string): string {
  const counting = (): ((old: string) => string) => {
    const known = new Map<string, string>();
    return (old) => {
      const id = known.get(old) ?? String(known.size + 1);
      known.set(old, id);
      return id;
    };
  };
  const [bookmark, heading, picture] = [counting(), counting(), counting()];
  return xml
    .replace(
      /(<w:bookmark(?:Start|End)\b[^>]*? w:id=")(\d+)"/g,
      (_, before: string, id: string) => `${before}${bookmark(id)}"`,
    )
    .replace(/\b_Toc(\d+)\b/g, (_, id: string) => `_Toc${heading(id)}`)
    .replace(/(<wp:docPr id=")(\d+)"/g, (_, before: string, id: string) => `${before}${picture(id)}"`);
}
