import type { fromMarkdown } from "mdast-util-from-markdown";

/** A text in CommonMark as a tree. */
export type Root = ReturnType<typeof fromMarkdown>;
/** What stands by itself in a text, or in a part of one. */
export type RootContent = Root["children"][number];
/** Any part of a tree. */
export type Nodes = Root | RootContent;
/** What stands in a line. */
export type PhrasingContent = Extract<RootContent, { readonly type: "paragraph" }>["children"][number];
/** A list. */
export type List = Extract<RootContent, { readonly type: "list" }>;
/** What a note says. */
export type FootnoteDefinition = Extract<RootContent, { readonly type: "footnoteDefinition" }>;
