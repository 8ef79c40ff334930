/** A hand in a thread of its own: the library's functions, handed to what the cells compute there. */
import { Hand } from "./cells/crew/hand.ts";
import { functions } from "./library/index.ts";

const hand = new Hand({
  functions,
  stretch: 40,
  answer: (answer) => self.postMessage(answer),
  later: (act) => setTimeout(act, 0),
  now: () => performance.now(),
});

self.addEventListener("message", ({ data }) => hand.take(data));
