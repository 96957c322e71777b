// @ts-expect-error The package does not say what its worker has.
import * as handler from "pdfjs-dist/legacy/build/pdf.worker.mjs";

// The reader of PDFs asks a page for its address and a worker for its work: here both are this very process.
Object.assign(globalThis, { location: { origin: "file:///nowhere" }, pdfjsWorker: handler });
