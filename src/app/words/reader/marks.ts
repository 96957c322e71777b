import { told } from "./told.ts";

/** Marks between words in a row, each with the space after it. */
export const marks = told({ comma: ", ", semicolon: "; " }, { comma: "، ", semicolon: "؛ " });
