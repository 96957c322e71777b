/** Texts of records, each on a line of its own: they may have any stops of their own. */
export function Several({ texts }: { readonly texts: readonly string[] }) {
  return texts.map((text) => (
    <span className="one-of-several" dir="auto" key={text}>
      {text}
    </span>
  ));
}
