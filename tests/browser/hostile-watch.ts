import { expect } from "vitest";
import type { OpenDesk, Workplace } from "./desk";
import { outOfPlace } from "./layout";
import { outOfOrder } from "./text-order";
import { unharmed, watchedDesk } from "./unharmed";

/** The sizes at which nothing may leave its place. */
export const sizes = [
  [1440, 900],
  [820, 1180],
] as const;

export interface HostileDesk extends OpenDesk {
  /** Asks whether nothing has run, everything stands in its place and every word in its order. */
  readonly expectWell: (where: string) => Promise<void>;
}

/** A desk of a size, and what asks whether it is as it should be. */
export async function hostileDesk(place: Workplace, [width, height]: readonly [number, number]): Promise<HostileDesk> {
  const desk = await watchedDesk(place, width, height);
  const expectUnharmed = await unharmed(desk);
  const { page } = desk;
  const expectWell = async (where: string) => {
    // The side is drawn when the browser has nothing better to do.
    await page.evaluate(
      () => new Promise((done) => requestIdleCallback(() => requestAnimationFrame(done), { timeout: 400 })),
    );
    await expectUnharmed(where);
    expect(await outOfPlace(page), where).toEqual([]);
    expect(await outOfOrder(page), where).toEqual([]);
  };
  return { ...desk, expectWell };
}
