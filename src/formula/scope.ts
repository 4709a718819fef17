import { say } from "../words/say";
import { readExpression } from "./read";
import { type Run, runnable, type Slots, type Test, testable } from "./run";
import { UnknownName } from "./unknown-name";

/** Names and their slots while a definition is read, in the order in which they come to exist. */
export class Scope {
  private readonly places = new Map<string, number>();

  /** Gives a name its slot. @throws Error when the name is taken. */
  add(name: string): number {
    if (this.places.has(name) || name === "pi") throw new Error(say`${name} is defined twice`);
    const place = this.places.size;
    this.places.set(name, place);
    return place;
  }

  /** The slot of a name. @throws Error when it is not defined yet. */
  at(name: string): number {
    const place = this.places.get(name);
    if (place === undefined) throw new UnknownName(name);
    return place;
  }

  has(name: string): boolean {
    return this.places.has(name);
  }

  get names(): readonly string[] {
    return [...this.places.keys()];
  }

  run(text: string): Run {
    return runnable(readExpression(text), this.places);
  }

  test(text: string): Test {
    return testable(readExpression(text), this.places);
  }
}

/** A step made ready: it reads earlier slots and writes its own, or throws a Fault. */
export type Act = (slots: Slots) => void;
