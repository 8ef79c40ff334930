/** A hand in a thread of Node's: what src/worker.ts is in the browser. */
import { parentPort } from "node:worker_threads";
import { Hand } from "../../src/cells/crew/hand.ts";
import { functions } from "../../src/library/index.ts";

const hand = new Hand({
  functions,
  stretch: 40,
  answer: (answer) => parentPort?.postMessage(answer),
  later: (act) => setTimeout(act, 0),
  now: () => performance.now(),
});

parentPort?.on("message", (message) => hand.take(message));
