import { storable } from "../../../base/text/steering.ts";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Words as HTML, in a text or an attribute. What no document may hold (controls, halves of pairs) is a sign for it. */
export function escaped(text: string): string {
  return storable(text).replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);
}
