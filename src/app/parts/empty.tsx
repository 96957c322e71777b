/** What is not there yet, and the lines in a file that would make it. */
export function Empty({ text, lines }: { readonly text: string; readonly lines: string }) {
  return (
    <div className="empty">
      <p className="sentence">{text}</p>
      <pre dir="ltr">
        <code>{lines}</code>
      </pre>
    </div>
  );
}
