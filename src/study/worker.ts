import { speakAs } from "../words/in-worker";
import { answering } from "./answering";
import type { StudyRequest } from "./messages";

/**
 * Studies away from the page: loaded as a file of its own, never from text, so that the page's content policy holds
 * for the page and the worker may still compile its kernel where its own file is served without a policy of its own.
 */
const answer = answering((reply) => postMessage(reply));

const spoken = speakAs(self.name);

addEventListener("message", async ({ data }: MessageEvent<StudyRequest>) => {
  await spoken;
  answer(data);
});
