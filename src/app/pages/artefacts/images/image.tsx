import { useEffect, useState } from "react";
import { Link, useLocation } from "wouter";
import type { ImagePage as Page } from "../../../../show/artefacts/picture/page.ts";
import type { useAddress } from "../../../address.ts";
import { pathOf, recordPath, underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { FieldList } from "../../../parts/fields.tsx";
import { PageLink, RecordLink, dirOf } from "../../../parts/link.tsx";
import { Looks } from "../../../parts/places/looks.tsx";
import { words as shared } from "../../../words/index.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { imageWords as words } from "../../../words/recording/images.ts";
import { ToForms } from "../../sheet/form/to-form.tsx";
import { Measure } from "./measure/measure.tsx";
import { pictureEnding, usePicture } from "./picture-file.ts";
import type { PictureShown } from "./picture-file.ts";
import { Lacks } from "./pictures.tsx";
import { Stage } from "./stage/stage.tsx";
import type { Size } from "./stage/view.ts";

interface Props {
  readonly page: Page;
  readonly address: ReturnType<typeof useAddress>;
}

/** The page of a picture: to be looked at, or measured on, with what is known of it. */
export function ImagePage({ page, address }: Props) {
  const { asOf, query } = address;
  const name = inReadersWords(page.name);
  const measuring = query.has("measure");
  const here = pathOf("image", page.id);
  const [, go] = useLocation();
  const other = measuring ? here : `${here}?measure`;
  useActions(words.picture, [
    { name: measuring ? words.look : words.measure, key: "m", run: () => go(underLens(other, asOf)) },
  ]);
  return (
    <article className="image-page" key={page.id}>
      <p className="label kind">{words.picture}</p>
      <h1 dir={dirOf(name)}>{name}</h1>
      <p className="crossing">
        <span>{words.shows}</span>{" "}
        {page.of.map((thing, place) => (
          <span key={thing.id}>
            {place > 0 && marks.comma}
            <PageLink page="artefact" id={thing.id} text={thing.name} asOf={asOf} />
          </span>
        ))}
      </p>
      <p className="crossing">
        <Link href={underLens(recordPath(page.id), asOf)}>{shared.recordSheet}</Link>
      </p>
      <Looks
        label={words.stage}
        looks={[
          [here, words.look, !measuring],
          [`${here}?measure`, words.measure, measuring],
        ]}
        asOf={asOf}
      />
      <Pictured page={page} name={name} measuring={measuring} asOf={asOf} />
      <FieldList fields={page.fields} asOf={asOf} />
      <Lacks picture={page} />
      {page.measured.length > 0 && (
        <section>
          <h2 className="label">{words.measuredOn}</h2>
          <ul className="measured-on">
            {page.measured.map((one) => (
              <li key={one.id} className="sentence">
                <RecordLink id={one.id} text={one.name} asOf={asOf} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {!measuring && <ToForms kind="image" id={page.id} asOf={asOf} />}
    </article>
  );
}

interface PicturedProps {
  readonly page: Page;
  readonly name: string;
  readonly measuring: boolean;
  readonly asOf: number | null;
}

/** The picture itself, once it is there and its size is known; or why it is not shown. */
function Pictured({ page, name, measuring, asOf }: PicturedProps) {
  const shown = usePicture(page.file);
  const size = useSize(typeof shown === "string" ? null : shown);
  if (!pictureEnding.test(page.file) || size === "unreadable")
    return <p className="trouble">{words.unshown(page.file)}</p>;
  if (typeof shown === "string") return <p className="trouble">{words[shown](page.file)}</p>;
  if (shown === null || size === null) return <p className="quiet">{words.loading}</p>;
  const drawn = /\.svg$/i.test(page.file);
  const given = { url: shown.url, name, size, drawn };
  return (
    <>
      {shown.said.hasPlace && (
        <p className="trouble" role="note">
          {words.hasPlace}
        </p>
      )}
      {measuring ? (
        <Measure page={page} shown={shown} asOf={asOf} {...given} />
      ) : (
        <Stage {...given} tools={null} told="" />
      )}
    </>
  );
}

/** The size of a picture in its own pixels. */
function useSize(shown: PictureShown | null): Size | "unreadable" | null {
  const url = shown?.url ?? null;
  const [found, setFound] = useState<{ readonly url: string; readonly size: Size | "unreadable" } | null>(
    null,
  );
  useEffect(() => {
    if (url === null) return;
    const image = new Image();
    const tell = (): void => {
      const { naturalWidth: width, naturalHeight: height } = image;
      setFound({ url, size: width > 0 && height > 0 ? { width, height } : "unreadable" });
    };
    image.onload = tell;
    image.onerror = tell;
    image.src = url;
  }, [url]);
  return found !== null && found.url === url ? found.size : null;
}
