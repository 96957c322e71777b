import { Link } from "wouter";
import type { Text } from "../../base/text/said/said.ts";
import { pathOf, underLens } from "../address.ts";
import { inReadersWords } from "../words/reader/said.ts";

interface Props {
  readonly id: string;
  readonly text: Text;
  readonly asOf: number | null;
}

/** The name of a record, leading to its page in a room of its kind. */
export function PageLink({ page, id, text, asOf }: Props & { readonly page: string }) {
  const name = inReadersWords(text);
  return (
    <Link href={underLens(pathOf(page, id), asOf)} dir={dirOf(name)}>
      {name}
    </Link>
  );
}

/** The name of a record, leading to its sheet. */
export function RecordLink(props: Props) {
  return <PageLink page="record" {...props} />;
}

/** In which direction a name runs: a foreign name at its head does not turn round the words that follow it. */
export function dirOf(text: string): "ltr" | "rtl" | "auto" {
  const own = text.replace(/\u2068[^\u2069]*\u2069/gu, "");
  const right = own.match(rightToLeft)?.length ?? 0;
  const left = own.match(leftToRight)?.length ?? 0;
  if (own !== text && left + right > 0 && left * right === 0) return left > 0 ? "ltr" : "rtl";
  return right === 0 || left === 0 ? "auto" : left > right ? "ltr" : "rtl";
}

const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufefc]/gu;
const leftToRight = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]/gu;
