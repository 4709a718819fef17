/**
 * Runs beside the page in the browser: stores the whole program when it is first loaded and answers for it from then
 * on, so that it opens without a network. A newer version is stored whole beside it and waits until it is asked for.
 */
import { precacheAndRoute } from "workbox-precaching";
import type { ToWorker } from "./messages";

/** Every file of the program, written in when it is built; `revision` where the name alone does not tell versions apart. */
declare const programFiles: { readonly url: string; readonly revision: string | null }[];

/** The part of a service worker's surroundings that is in use here; the page's types do not know it. */
interface Surroundings {
  readonly skipWaiting: () => Promise<void>;
  readonly clients: { readonly claim: () => Promise<void> };
  readonly addEventListener: (kind: "message" | "activate", listener: (event: Happening) => void) => void;
}

interface Happening {
  readonly data?: unknown;
  readonly waitUntil: (work: Promise<unknown>) => void;
}

const around = self as unknown as Surroundings;

const takeOver: ToWorker = "take over";

precacheAndRoute(programFiles);
around.addEventListener("message", (event) => {
  if (event.data === takeOver) event.waitUntil(around.skipWaiting());
});
// The page that was loaded first is answered for as well, should the network go before it is loaded again.
around.addEventListener("activate", (event) => event.waitUntil(around.clients.claim()));
