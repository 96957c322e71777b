import type { ReactNode } from "react";
import { Link } from "wouter";
import { parted } from "../../../../write/telling/set/parted.ts";
import { plainWords } from "../../../../write/telling/set/set-text.ts";
import type { SetInline, SetInlines } from "../../../../write/telling/set/set-text.ts";
import { pathOf, underLens } from "../../../address.ts";
import { dirOf } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { direction } from "../../../words/reader/language.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { Stretch } from "../../sheet/reference/reference.tsx";

/** What lines of a text lead to beside it. */
export interface Leading {
  /** The derivation that a run computed, by the run's key. */
  readonly derivations: ReadonlyMap<string, string>;
  readonly asOf: number | null;
  /** The language of the corpus's own words, by BCP 47. */
  readonly language: string;
}

/** A line of a text, with its citations, standings, numbers and notes. */
export function Line({ of, leading }: { readonly of: SetInlines; readonly leading: Leading }) {
  return of.map((one, place) => <Part key={place} one={one} leading={leading} />);
}

/** In which direction a line runs: one with words of ours with the page, one of the corpus's own words by itself. */
export function along(of: SetInlines): { readonly dir?: ReturnType<typeof dirOf> } {
  return of.some(isOurs) ? {} : { dir: dirOf(plainWords(of, inReadersWords)) };
}

function isOurs(one: SetInline): boolean {
  if (one.is === "text" || one.is === "printed") return typeof one.text !== "string";
  return one.is === "standing" || ("of" in one && one.of.some(isOurs));
}

function Part({ one, leading }: { readonly one: SetInline; readonly leading: Leading }) {
  switch (one.is) {
    case "text":
      // Words of the corpus turn nothing round that stands beside them.
      return typeof one.text === "string" ? (
        <bdi lang={leading.language}>{one.text}</bdi>
      ) : (
        inReadersWords(one.text)
      );
    case "words": {
      const words = one.quoted ? `“${one.text}”` : one.text;
      return <bdi {...(one.lang === null ? {} : { lang: one.lang })}>{words}</bdi>;
    }
    case "strong":
      return (
        <strong>
          <Line of={one.of} leading={leading} />
        </strong>
      );
    case "emphasis":
      return (
        <em>
          <Line of={one.of} leading={leading} />
        </em>
      );
    case "runs":
      return (
        // A citation is a sentence of the page's language, whatever script its names are in.
        <bdi dir={direction}>
          {(direction === "rtl" ? one.runs : parted(one.runs)).map((run, place) => (
            <Stretch key={place} run={run} />
          ))}
        </bdi>
      );
    case "printed": {
      const derivation = leading.derivations.get(one.run);
      const text = <bdi className="figure">{inReadersWords(one.text)}</bdi>;
      if (derivation === undefined) return text;
      return <Link href={underLens(pathOf("number", derivation), leading.asOf)}>{text}</Link>;
    }
    case "standing":
      return <StandingMark standing={one.standing} />;
    case "note":
      return (
        <sup>
          <Within to={`note-${one.number}`} id={`call-${one.number}`}>
            {one.number}
          </Within>
        </sup>
      );
    case "link":
      return (
        <Within to={one.to}>
          <Line of={one.of} leading={leading} />
        </Within>
      );
  }
}

/** Leads to another place of the text, without a step of the window's history. */
export function Within({
  to,
  id,
  children,
}: {
  readonly to: string;
  readonly id?: string;
  readonly children: ReactNode;
}) {
  return (
    <a
      href={`#${to}`}
      id={id}
      onClick={(event) => {
        event.preventDefault();
        const place = document.getElementById(to);
        place?.scrollIntoView({ block: "start" });
        place?.focus({ preventScroll: true });
      }}
    >
      {children}
    </a>
  );
}
