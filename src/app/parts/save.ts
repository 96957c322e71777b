/** Gives an SVG text to the browser as a file to keep. */
export function saveSvg(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the address after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
