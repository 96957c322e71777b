import { parseHTML } from "linkedom";

/** A document to draw figures in where there is no browser. */
export function svgDocument(): Document {
  return parseHTML("<!doctype html><html><head></head><body></body></html>").document;
}
