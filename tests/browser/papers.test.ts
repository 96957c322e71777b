import { walk } from "./chromium.ts";
import { readPaper } from "./paper-walk.ts";

walk("brings a paper in, takes words and a part of a page from it, and finds both again", readPaper);
