import { inBackground } from "../background";
import type { ToWorker } from "./messages";

/**
 * How the program stands with the copy of it that the browser stores.
 *
 * `none`: not stored, it needs the network. `stored`: it opens without one. `newer`: a newer version is stored and waits.
 * `replaced`: another window has taken the newer version; parts of this one that were not loaded yet are gone.
 */
export type Stored = "none" | "stored" | "newer" | "replaced";

/** A window that stays open asks for a newer version after so long, when it is looked at again (milliseconds). */
const askAgain = 3600_000;

/** Has the browser store the program, and finds newer versions of it. They never take over by themselves. */
export class Offline {
  private now: Stored = "none";
  private registration: ServiceWorkerRegistration | undefined;
  private isTaking = false;
  private asked = Date.now();

  /** @param changed is called when `stored` has changed. */
  constructor(private readonly changed: () => void) {}

  get stored(): Stored {
    return this.now;
  }

  /** Stores the program; where the browser cannot (an insecure address, a private window) nothing is said. */
  async begin(): Promise<void> {
    // Not there outside of secure pages, whatever the types say.
    const workers: ServiceWorkerContainer | undefined = navigator.serviceWorker;
    if (!workers) return;
    let before = workers.controller;
    workers.addEventListener("controllerchange", () => {
      if (this.isTaking) location.reload();
      else this.stand(before ? "replaced" : "stored");
      before = workers.controller;
    });
    const registration = await workers.register("./service-worker.js").catch(() => undefined);
    if (!registration) return;
    this.registration = registration;
    if (registration.active) this.stand("stored");
    if (registration.waiting && registration.active) this.stand("newer");
    registration.addEventListener("updatefound", () => this.follow(registration.installing));
    this.follow(registration.installing);
    document.addEventListener("visibilitychange", () => this.look());
  }

  /** Lets the newer version take over; the page is loaded again then. The work must be kept before. */
  take(): void {
    this.isTaking = true;
    if (this.registration?.waiting) this.registration.waiting.postMessage("take over" satisfies ToWorker);
    else location.reload();
  }

  private follow(worker: ServiceWorker | null): void {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && this.registration?.active) this.stand("newer");
      if (worker.state === "activated" && this.now === "none") this.stand("stored");
    });
  }

  private look(): void {
    if (document.visibilityState !== "visible" || Date.now() - this.asked < askAgain) return;
    this.asked = Date.now();
    inBackground(this.registration?.update().catch(() => undefined) ?? Promise.resolve());
  }

  private stand(stored: Stored): void {
    if (this.now === stored || this.now === "replaced") return;
    this.now = stored;
    this.changed();
  }
}
