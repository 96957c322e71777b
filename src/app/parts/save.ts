/** Gives an SVG text to the browser as a file to keep. */
export function saveSvg(text: string, name: string): void {
  saveText(text, name, "image/svg+xml");
}

/** Gives a text of some media type to the browser as a file to keep. */
export function saveText(text: string, name: string, type: string): void {
  saveFile(new Blob([text], { type }), name);
}

/** Gives a file to the browser to keep. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
