import { dirname } from "node:path";
import { keepNames } from "./disk.ts";
import type { Disk } from "./disk.ts";

/**
 * Sets something that cannot be used aside, under a name that says so, and gives that name: nothing of a desk is thrown
 * away. The reader passes such names over, as the desk does.
 */
export function setAside(disk: Disk, path: string): string {
  const place = placeAside(disk, path);
  disk.rename(path, place);
  keepNames(disk, dirname(path));
  return place;
}

function placeAside(disk: Disk, path: string): string {
  for (let n = 1; ; n++) {
    const place = n === 1 ? `${path}.set-aside` : `${path}.set-aside-${n}`;
    if (!disk.see(place)) return place;
  }
}
