/** Where the keyboard was in a panel whose buttons go away when they are pressed: it is not to fall out of it. */
export class KeyboardPlace {
  private at: Element | undefined;
  private item: Element | undefined;
  private list: Element | undefined;
  private index = 0;

  /** Remembers what has the keyboard, and which item of which list it stands in. */
  readonly note = ({ target }: FocusEvent): void => {
    if (!(target instanceof Element)) return;
    this.at = target;
    this.item = target.closest("li") ?? undefined;
    this.list = this.item?.parentElement ?? undefined;
    this.index = this.item && this.list ? [...this.list.children].indexOf(this.item) : 0;
  };

  /** After a drawing that took the remembered place away, goes to what stands there now, or else to the head. */
  restore(head: HTMLElement | null | undefined): void {
    const isLost = this.at !== undefined && !this.at.isConnected && document.activeElement === document.body;
    if (!isLost) return;
    const next = this.list?.isConnected ? (this.list.children[this.index] ?? this.list.lastElementChild) : undefined;
    const item = this.item?.isConnected ? this.item : next;
    // Of the same item it is its last button that was pressed; of another one its first place is the cell.
    const places = [...(item?.querySelectorAll<HTMLElement>("a, button, textarea") ?? [])];
    const place = item === this.item ? places.at(-1) : places[0];
    (place ?? head)?.focus({ preventScroll: place === undefined });
  }
}
