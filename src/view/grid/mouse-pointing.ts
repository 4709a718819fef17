import { type Cell, one } from "../block";
import type { Desk } from "../desk";
import { pointAt, pointingNow } from "../pointing";
import type { LayOut } from "./lay-out";

/** Presses on cells while a formula waits for a reference: they point at cells and leave the selection alone. */
export class MousePointing {
  private from: Cell | undefined;

  constructor(
    private readonly desk: Desk,
    private readonly layOut: LayOut,
  ) {}

  pressed(event: MouseEvent, row: number, column: number): void {
    this.from = undefined;
    const pointing = row >= 0 && column >= 0 && event.button === 0 ? pointingNow() : undefined;
    if (!pointing) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    this.from = { row: this.layOut.line(row), column };
    pointAt(this.desk, pointing, this.layOut.page, one(this.from));
  }

  dragged(event: MouseEvent, row: number, column: number): void {
    const pointing = this.from && event.buttons === 1 && row >= 0 && column >= 0 ? pointingNow() : undefined;
    if (!pointing || !this.from) return;
    event.stopImmediatePropagation();
    pointAt(this.desk, pointing, this.layOut.page, { from: this.from, to: { row: this.layOut.line(row), column } });
  }
}
