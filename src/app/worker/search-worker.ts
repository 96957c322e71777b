import { searchIndex } from "./search/index.ts";
import type { Corpus, SearchAsked, SearchTold } from "./search/messages.ts";

const index = searchIndex();
let arrived = false;
let building = false;
let asked: Extract<SearchAsked, { readonly ask: "find" }> | null = null;

self.onmessage = (event: MessageEvent<SearchAsked>) => {
  const message = event.data;
  if (message.ask === "corpus") {
    message.port.onmessage = ({ data }: MessageEvent<Corpus>) => take(data);
    return;
  }
  asked = message;
  answer();
};

function take(documents: Corpus): void {
  index.take(documents);
  arrived = true;
  answer();
  if (!building) {
    building = true;
    setTimeout(slice);
  }
}

/** Indexes one shard, and lets what is asked meanwhile be answered before the next. */
function slice(): void {
  building = index.step();
  if (building) setTimeout(slice);
  answer();
}

function answer(): void {
  if (!asked || !arrived) return;
  const { number, text, most, kind } = asked;
  const told: SearchTold = { number, found: index.find(text, most, kind), ...index.built() };
  self.postMessage(told);
}
