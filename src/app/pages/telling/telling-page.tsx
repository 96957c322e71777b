import { Link } from "wouter";
import type { useAddress } from "../../address.ts";
import { underLens } from "../../address.ts";
import { tellingWords as words } from "../../words/telling/telling.ts";
import type { TellingPage as Data } from "../../worker/planning/telling.ts";
import { useMaking, useTellable } from "./making.ts";
import type { Tellable } from "./making.ts";
import { Options, optionsIn } from "./options.tsx";
import { PreviewOf } from "./preview.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** Kinds in the order in which they are wanted: texts first. */
const kinds = ["review", "application", "slides", "figures", "tables", "visit", "page", "data"] as const;
type KindName = (typeof kinds)[number];

/** What can be written: a kind, what it is asked, its files, and for texts how they now read. */
export function TellingPage({ page, address }: Props) {
  const tellable = useTellable();
  const { asOf } = address;
  const offered = kinds.filter((kind) => tellable?.some((one) => one.name === kind));
  const kind = offered.find((one) => one === page.asked.kind);
  const own = tellable?.find((one) => one.name === kind);
  return (
    <div className="telling-page">
      <h1>{words.title}</h1>
      <p className="lead">{words.lead}</p>
      {tellable?.length === 0 && <p role="alert">{words.closed}</p>}
      <nav aria-label={words.kind} className="kinds">
        <ul>
          {offered.map((one) => (
            <li key={one}>
              <Link
                href={underLens(`/write?kind=${one}`, asOf)}
                aria-current={one === kind ? "true" : undefined}
              >
                {words.kinds[one]}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {kind !== undefined && own !== undefined && (
        <One kind={kind} tellable={own} page={page} address={address} />
      )}
    </div>
  );
}

function One({
  kind,
  tellable,
  page,
  address,
}: Props & { readonly kind: KindName; readonly tellable: Tellable }) {
  const { asOf, query } = address;
  return (
    <>
      <p>{words.about[kind]}</p>
      <Options page={page} tellable={tellable} address={address} />
      <Make kind={kind} tellable={tellable} options={optionsIn(page, tellable, query)} address={address} />
      {kind === "slides" && <Elsewhere path="/talks" name={words.talks} asOf={asOf} />}
      {kind === "visit" && <Elsewhere path="/visit" name={words.visits} asOf={asOf} />}
      {(kind === "review" || kind === "application") && <PreviewOf page={page} asOf={asOf} />}
    </>
  );
}

/** Where what is written can be looked at in the app. */
function Elsewhere({
  path,
  name,
  asOf,
}: {
  readonly path: string;
  readonly name: string;
  readonly asOf: number | null;
}) {
  return (
    <p>
      {words.lookedAt} <Link href={underLens(path, asOf)}>{name}</Link>
    </p>
  );
}

interface MakeProps {
  readonly kind: KindName;
  readonly tellable: Tellable;
  readonly options: ReturnType<typeof optionsIn>;
  readonly address: Props["address"];
}

function Make({ kind, tellable, options, address }: MakeProps) {
  const [making, make] = useMaking();
  const { lens } = address;
  return (
    <section className="make">
      <h2 className="label">{words.make}</h2>
      <p className="formats">
        {tellable.formats.map((format) => (
          <button
            key={format}
            type="button"
            disabled={making.state === "making"}
            onClick={() => make({ kind, format, options, lens })}
          >
            {format in words.formats ? words.formats[format as keyof typeof words.formats] : `.${format}`}
          </button>
        ))}
      </p>
      <output className="quiet">{making.said}</output>
    </section>
  );
}
