import type { VisitSheet } from "../../../../show/desk/visit/sheet/sheet.ts";
import { beforeBlocks } from "../../../../show/desk/visit/blocks/before.ts";
import type { Block } from "../../../../show/desk/visit/blocks/block.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";

/** What is to be known and asked before anybody goes. */
export function Before({ sheet }: { readonly sheet: VisitSheet; readonly asOf: number | null }) {
  if (sheet.looks === null) return <p className="quiet">{words.planning}</p>;
  const [, ...blocks] = beforeBlocks(sheet);
  if (blocks.length === 0) return null;
  return (
    <section className="before">
      <h2>{words.before}</h2>
      {blocks.map((block, at) => (
        <Piece key={at} block={block} />
      ))}
    </section>
  );
}

function Piece({ block }: { readonly block: Block }) {
  switch (block.is) {
    case "heading":
      return <h3 dir="auto">{inReadersWords(block.text)}</h3>;
    case "text":
      return (
        <p dir="auto">
          {block.strong ? <strong>{inReadersWords(block.text)}</strong> : inReadersWords(block.text)}
        </p>
      );
    case "list":
      return (
        <ul className="notes">
          {block.items.map(inReadersWords).map((one) => (
            <li key={one} dir="auto">
              {one}
            </li>
          ))}
        </ul>
      );
    case "terms":
      return (
        <dl className="asked-of">
          {block.rows.map(([name, value], at) => (
            <div key={at}>
              <dt>{inReadersWords(name)}</dt>
              <dd dir="auto">{inReadersWords(value)}</dd>
            </div>
          ))}
        </dl>
      );
    default:
      return null;
  }
}
