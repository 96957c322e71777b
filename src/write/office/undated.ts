/** Sign of a file's own head, and of its entry in the list at the end (APPNOTE.TXT 4.3.7 and 4.3.12). */
const head = 0x04034b50;
const entry = 0x02014b50;
const listEnd = 0x06054b50;

/** 1 January 1980, 0:00, the first moment that the format knows, as its date and time. */
const date = 0x0021;
const time = 0x0000;

/** The same zip file in place, with the first moment of its calendar as the time of every entry: equal contents give equal bytes. */
export function undated(zip: Uint8Array): Uint8Array {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = endOf(view);
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (view.getUint32(at, true) !== entry)
      throw new RangeError("undated: an entry of the zip file is missing");
    const own = view.getUint32(at + 42, true);
    if (view.getUint32(own, true) !== head)
      throw new RangeError("undated: a head in the zip file is missing");
    stamp(view, at + 12);
    stamp(view, own + 10);
    at += 46 + [28, 30, 32].reduce((sum, place) => sum + view.getUint16(at + place, true), 0);
  }
  return zip;
}

function stamp(view: DataView, at: number): void {
  view.setUint16(at, time, true);
  view.setUint16(at + 2, date, true);
}

/** Where the end of the list begins: nothing but a comment of at most 65,535 bytes comes after it. */
function endOf(view: DataView): number {
  for (let at = view.byteLength - 22; at >= 0; at--) if (view.getUint32(at, true) === listEnd) return at;
  throw new RangeError("undated: no zip file");
}
