import { config } from "zod/v4";

// What it would compile from text the app's policy refuses, and its asking whether it may is a breach already.
config({ jitless: true });

/** The checker of what comes in, without what it would compile for speed; it stands in for `zod` in the bundles. */
export * from "zod/v4";
