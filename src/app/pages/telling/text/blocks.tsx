import { Link } from "wouter";
import type { SetBlock, SetHeading, SetTable, SetText } from "../../../../write/telling/set/set-text.ts";
import { pathOf, underLens } from "../../../address.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { tellingWords as words } from "../../../words/telling/telling.ts";
import { Stretch } from "../../sheet/reference/reference.tsx";
import { along, Line, Within } from "./line.tsx";
import type { Leading } from "./line.tsx";
import { Plate } from "./plate.tsx";

interface Props {
  readonly set: SetText;
  readonly leading: Leading;
}

/** A text as it is written: its title, its blocks, and its notes at the foot. */
export function WholeText({ set, leading }: Props) {
  return (
    <article className="manuscript">
      <h2 className="manuscript-title" dir="auto">
        {inReadersWords(set.title)}
      </h2>
      {set.authors.length > 0 && <p dir="auto">{set.authors.join(", ")}</p>}
      {set.blocks.map((block, place) => (
        <One key={place} block={block} leading={leading} />
      ))}
      {set.notes.length > 0 && (
        <section className="notes">
          <h3>{words.notes}</h3>
          <ol>
            {set.notes.map((note, place) => (
              <li key={place} id={`note-${place + 1}`} tabIndex={-1} {...along(note)}>
                <Line of={note} leading={leading} /> <Within to={`call-${place + 1}`}>{words.back}</Within>
              </li>
            ))}
          </ol>
        </section>
      )}
    </article>
  );
}

function One({ block, leading }: { readonly block: SetBlock; readonly leading: Leading }) {
  switch (block.is) {
    case "heading":
      return <Heading heading={block} leading={leading} />;
    case "paragraph":
      return (
        <p {...along(block.of)}>
          <Line of={block.of} leading={leading} />
        </p>
      );
    case "quotation":
      return (
        <blockquote {...along(block.of)}>
          <Line of={block.of} leading={leading} />
        </blockquote>
      );
    case "caution":
      return (
        <p className="caution" {...along(block.of)}>
          <strong>{words.caution}</strong> <Line of={block.of} leading={leading} />
        </p>
      );
    case "list": {
      const List = block.ordered ? "ol" : "ul";
      return (
        <List>
          {block.items.map((item, place) => (
            <li key={place} {...along(item)}>
              <Line of={item} leading={leading} />
            </li>
          ))}
        </List>
      );
    }
    case "terms":
      return (
        <dl>
          {block.rows.map(([name, value], place) => (
            <div key={place}>
              <dt {...along(name)}>
                <Line of={name} leading={leading} />
              </dt>
              <dd {...along(value)}>
                <Line of={value} leading={leading} />
              </dd>
            </div>
          ))}
        </dl>
      );
    case "table":
      return <Table table={block} leading={leading} />;
    case "plate":
      return <Plate plate={block} leading={leading} />;
    case "contents":
      return <Contents entries={block.entries} leading={leading} />;
    case "references":
      return (
        <ul className="entries">
          {block.entries.map(({ id, runs, lang }) => (
            <li key={id} dir="auto" {...(lang === null ? {} : { lang })}>
              {runs.map((run, place) => (
                <Stretch key={place} run={run} />
              ))}
            </li>
          ))}
        </ul>
      );
    case "computations":
      return (
        <ul className="entries">
          {block.entries.map(({ anchor, title, method, key }) => (
            <li key={key} id={anchor} tabIndex={-1} dir="auto">
              <Computed title={inReadersWords(title)} run={key} leading={leading} />, <bdi>{method}</bdi>
              <code dir="ltr">{key}</code>
            </li>
          ))}
        </ul>
      );
    case "room":
      return <div className="room" />;
  }
}

function Computed({
  title,
  run,
  leading,
}: {
  readonly title: string;
  readonly run: string;
  readonly leading: Leading;
}) {
  const derivation = leading.derivations.get(run);
  return derivation === undefined ? (
    <bdi>{title}</bdi>
  ) : (
    <Link href={underLens(pathOf("number", derivation), leading.asOf)}>{title}</Link>
  );
}

/** A heading of the text, two below that of the page. */
function Heading({ heading, leading }: { readonly heading: SetHeading; readonly leading: Leading }) {
  const Level = heading.level === 1 ? "h3" : heading.level === 2 ? "h4" : "h5";
  return (
    <Level id={heading.anchor} tabIndex={-1} {...along(heading.of)}>
      <Line of={heading.of} leading={leading} />
    </Level>
  );
}

function Table({ table, leading }: { readonly table: SetTable; readonly leading: Leading }) {
  const { number, anchor, caption, head, rows, figures } = table;
  const look = (place: number): { readonly className?: string } =>
    figures.includes(place) ? { className: "figure" } : {};
  return (
    // What is broader than its place is moved by keys.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="broad" id={anchor} tabIndex={0} aria-label={words.table(number)}>
      <table>
        <caption>
          <b>{words.table(number)}</b> <Line of={caption} leading={leading} />
        </caption>
        <thead>
          <tr>
            {head.map((one, place) => (
              <th key={place} scope="col" {...along(one)} {...look(place)}>
                <Line of={one} leading={leading} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, line) => (
            <tr key={line}>
              {row.map((one, place) => (
                <td key={place} {...along(one)} {...look(place)}>
                  <Line of={one} leading={leading} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Contents({
  entries,
  leading,
}: {
  readonly entries: readonly SetHeading[];
  readonly leading: Leading;
}) {
  const chief = entries.filter((one) => one.level === 1);
  if (chief.length === 0) return null;
  return (
    <nav aria-label={words.contents}>
      <ol className="contents">
        {chief.map(({ anchor, of }) => (
          <li key={anchor} {...along(of)}>
            <Within to={anchor}>
              <Line of={of} leading={leading} />
            </Within>
          </li>
        ))}
      </ol>
    </nav>
  );
}
