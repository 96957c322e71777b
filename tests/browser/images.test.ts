import { walk } from "./chromium.ts";
import { measurePicture } from "./picture-walk.ts";

walk(
  "measures on a picture by keys alone, tells the conflict, records it, and brings a picture in",
  measurePicture,
);
