import { Link } from "wouter";
import type { Picture } from "../../../../show/artefacts/picture/page.ts";
import { pathOf, underLens } from "../../../address.ts";
import { FieldList } from "../../../parts/fields.tsx";
import { PageLink } from "../../../parts/link.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { imageWords as words } from "../../../words/recording/images.ts";
import { artefactWords } from "../../../words/shown/artefacts.ts";
import { BringPicture } from "./bring.tsx";
import { pictureEnding, usePicture } from "./picture-file.ts";

interface Props {
  readonly pictures: readonly Picture[];
  readonly thing: string;
  readonly asOf: number | null;
}

/** The pictures of a thing, each with what is known of it, and a way to bring another in. */
export function Pictures({ pictures, thing, asOf }: Props) {
  return (
    <section className="pictures">
      <h2 className="label">{artefactWords.images}</h2>
      {pictures.length === 0 && <p className="quiet">{words.none}</p>}
      {pictures.map((picture) => (
        <div className="picture" key={picture.id}>
          <Small picture={picture} asOf={asOf} />
          <div>
            <p className="sentence">
              <PageLink page="image" id={picture.id} text={picture.name} asOf={asOf} />
            </p>
            <FieldList fields={picture.fields} asOf={asOf} />
            <Lacks picture={picture} />
          </div>
        </div>
      ))}
      <BringPicture thing={thing} />
    </section>
  );
}

/** What has to be known of a picture before anybody prints it, and whether it may be printed at all. */
export function Lacks({ picture }: { readonly picture: Picture }) {
  return (
    <div className="lacks quiet">
      {picture.lacks.map((one) => (
        <p key={one}>{words.lacks[one]}</p>
      ))}
      <p>{picture.isPublished ? words.published : words.unpublished}</p>
    </div>
  );
}

function Small({ picture, asOf }: { readonly picture: Picture; readonly asOf: number | null }) {
  const shown = usePicture(picture.file);
  if (!pictureEnding.test(picture.file)) return <p className="quiet">{words.unshown(picture.file)}</p>;
  if (shown === null) return <span className="small" />;
  if (typeof shown === "string") return <p className="quiet">{words[shown](picture.file)}</p>;
  return (
    <Link href={underLens(pathOf("image", picture.id), asOf)} className="small">
      <img src={shown.url} alt={words.open(inReadersWords(picture.name))} />
    </Link>
  );
}
