import { useId, useLayoutEffect, useRef } from "react";
import type { ReactNode } from "react";
import { searchWords as words } from "../../words/search.ts";

interface Props {
  readonly title: string;
  /** Called when it is shut, once the focus is back where it was. */
  readonly onShut: () => void;
  readonly children: ReactNode;
}

/** A leaf laid over the side of the page while one chooses; Escape shuts it, and so does any form in it of the method `dialog`. */
export function Leaf({ title, onShut, children }: Props) {
  const leaf = useRef<HTMLDialogElement>(null);
  const name = useId();
  useLayoutEffect(() => {
    const dialog = leaf.current;
    if (!dialog?.open) dialog?.showModal();
    // Shut before it is taken away: only so does the focus return.
    return () => dialog?.close();
  }, []);
  return (
    <dialog ref={leaf} className="leaf" aria-labelledby={name} onClose={onShut}>
      <div className="head">
        <h2 id={name}>{title}</h2>
        <form method="dialog">
          <button type="submit">{words.close}</button>
        </form>
      </div>
      {children}
    </dialog>
  );
}
