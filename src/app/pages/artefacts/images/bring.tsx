import { useState } from "react";
import { useLocation } from "wouter";
import { useDesk } from "../../../desk/desk.tsx";
import { enclose, useEnclosed } from "../../../model/enclosed.ts";
import { DropFiles } from "../../../parts/leaves/drop-files.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { imageWords as words } from "../../../words/recording/images.ts";
import { newPath } from "../../sheet/form/paths.ts";
import { freeName } from "./file-name.ts";
import { pictureEnding } from "./picture-file.ts";

/** Brings a picture into the corpus's folder, and leads to the form in which it is said what it is. */
export function BringPicture({ thing }: { readonly thing: string }) {
  const { readOnly } = useDesk().state;
  const enclosed = useEnclosed();
  const [, go] = useLocation();
  const [said, setSaid] = useState("");
  if (readOnly !== null) return readOnly === "" ? null : <p className="quiet">{words.readOnly(readOnly)}</p>;
  const take = async (given: File | undefined): Promise<void> => {
    if (!given) return;
    if (!pictureEnding.test(given.name)) return setSaid(words.noPicture(given.name));
    const file = freeName(
      given.name,
      (enclosed ?? []).map((one) => one.file),
    );
    setSaid(words.bringing(file));
    const refused = await enclose(file, given);
    if (refused !== null) return setSaid(inReadersWords(refused));
    go(newPath("images", { of: thing, file, publish: "false" }));
  };
  return (
    <>
      <DropFiles
        words={{ drop: words.drop, choose: words.choose, label: words.chosen }}
        accept=".jpg,.jpeg,.png,.webp,.gif,.svg"
        onFiles={([given]) => void take(given)}
      >
        <p className="quiet">{words.kinds}</p>
      </DropFiles>
      <output className="quiet">{said}</output>
    </>
  );
}
