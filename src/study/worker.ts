import { speakAs } from "../words/in-worker";
import type { StudyRequest } from "./messages";

/**
 * Studies away from the page: loaded as a file of its own, never from text, so that the page's content policy holds
 * for the page and the worker may still compile its kernel where its own file is served without a policy of its own.
 */

const answering = speakAs(self.name)
  .then(() => import("./answering"))
  .then((one) => one.answering((reply, handedOver = []) => postMessage(reply, { transfer: handedOver })));

addEventListener("message", async ({ data }: MessageEvent<StudyRequest>) => {
  const answer = await answering;
  answer(data);
});
