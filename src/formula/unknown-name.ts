import { say } from "../words/say";

/** A formula speaks of a name that no row before it gives. */
export class UnknownName extends Error {
  override readonly name = "UnknownName";

  constructor(unknown: string) {
    super(say`${unknown} is not defined before its use`);
  }
}
