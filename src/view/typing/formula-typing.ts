// Past 150 lines: one conversation with the keys while a formula is typed.
import { nothing, render } from "lit/html.js";
import type { FormulaName } from "../../notebook/own/names-above";
import { argumentAtCaret, nameAtCaret, takesReference, wordAtCaret } from "./at-caret";
import { type KnownFunction, suggestionsFor } from "./known-function";
import { argumentHint, hintId, listId, ofFunction, optionId, type Suggestion, suggestionList } from "./typing-help";

/** Names in the list at once. */
const mostNames = 12;

type Field = HTMLTextAreaElement | HTMLInputElement;

export interface TypingOptions {
  /** Everything that can be called. */
  readonly functions: readonly KnownFunction[];
  /** The values of a row that is picked from a list; empty for all others. */
  readonly choices: readonly string[];
  /** The words of a formula that stands without an equals sign, on a function page; empty for all others. */
  readonly names?: readonly FormulaName[];
  /** Answers an arrow key with the reference that it points to; undefined where arrows move the caret. */
  readonly arrow?: (key: string) => string | undefined;
  /** Told when the text changes by other means than the keyboard. */
  readonly changed?: () => void;
}

/** Help while a cell's text is typed, in the grid and in the line above it: suggestions, hints, pointing at cells. */
export class FormulaTyping {
  private readonly popup = document.createElement("div");
  private readonly stopping = new AbortController();
  private suggestions: readonly Suggestion[] = [];
  private active = 0;
  private dismissed = "";
  /** The text for which the list was made. */
  private seen: string | undefined;
  /** The reference that was pointed at last; pointing again replaces it. */
  private pointed: { readonly start: number; readonly end: number } | undefined;

  constructor(
    private readonly field: Field,
    private readonly options: TypingOptions,
  ) {
    this.popup.className = "typing-help";
    (document.querySelector("main") ?? document.body).append(this.popup);
    const { signal } = this.stopping;
    field.addEventListener("keydown", (event) => this.onKey(event as KeyboardEvent), { capture: true, signal });
    field.addEventListener("input", () => this.refresh(), { signal });
    field.addEventListener("compositionend", () => this.refresh(), { signal });
    document.addEventListener("selectionchange", () => this.refresh(), { signal });
    window.addEventListener("resize", () => this.place(), { signal });
    this.refresh();
  }

  stop(): void {
    this.stopping.abort();
    this.popup.remove();
    for (const name of ["aria-controls", "aria-activedescendant", "aria-autocomplete", "aria-describedby"]) {
      this.field.removeAttribute(name);
    }
  }

  /** Whether a click on a cell puts its reference into the text. */
  get takesPointing(): boolean {
    return this.isPointing || takesReference(this.field.value, this.caret);
  }

  /** Whether the caret stands just after a reference that was pointed at. */
  get isPointing(): boolean {
    return this.pointed !== undefined && this.caret === this.pointed.end;
  }

  /** Puts a reference in at the caret, or in the place of the one pointed at just before. */
  point(reference: string): void {
    const start = this.isPointing && this.pointed ? this.pointed.start : this.caret;
    this.replace(start, this.caret, reference);
    this.pointed = { start, end: start + reference.length };
    this.refresh();
  }

  private get caret(): number {
    return this.field.selectionEnd ?? this.field.value.length;
  }

  private replace(start: number, end: number, by: string): void {
    this.field.setRangeText(by, start, end, "end");
    this.options.changed?.();
  }

  private onKey(event: KeyboardEvent): void {
    if (event.isComposing || event.keyCode === 229) return;
    const isOpen = this.suggestions.length > 0;
    const take = () => {
      event.preventDefault();
      event.stopImmediatePropagation();
    };
    if (event.key.startsWith("Arrow") && !event.shiftKey && !event.ctrlKey && !event.metaKey && !event.altKey) {
      if (isOpen && (event.key === "ArrowDown" || event.key === "ArrowUp")) {
        take();
        const count = this.suggestions.length;
        const from = this.active < 0 && event.key === "ArrowUp" ? 0 : this.active;
        this.show((from + (event.key === "ArrowDown" ? 1 : count - 1)) % count);
        return;
      }
      const reference = this.takesPointing ? this.options.arrow?.(event.key) : undefined;
      if (reference === undefined) return;
      take();
      this.point(reference);
      return;
    }
    if (!isOpen) return;
    if (event.key === "Escape") {
      take();
      this.dismissed = this.field.value;
      this.refresh();
    } else if (event.key === "Tab" || event.key === "Enter") {
      const suggestion = this.suggestions[this.active];
      if (!suggestion) return;
      // A complete name is not completed again: the key goes on to the cell. So does the one that picks a choice.
      const isDone = suggestion.kind === "choice" || this.nameIs(suggestion.text);
      if (!isDone) take();
      if (suggestion.kind === "choice" || !isDone) this.pick(this.active);
    }
  }

  private nameIs(name: string): boolean {
    return nameAtCaret(this.field.value, this.caret)?.toUpperCase() === name;
  }

  private pick(index: number): void {
    const suggestion = this.suggestions[index];
    if (!suggestion) return;
    if (suggestion.kind === "choice") {
      this.replace(0, this.field.value.length, suggestion.text);
      this.dismissed = this.field.value;
    } else {
      const { value } = this.field;
      const typed = nameAtCaret(value, this.caret) ?? wordAtCaret(value, this.caret) ?? "";
      const bracket = suggestion.kind === "name" || value[this.caret] === "(" ? "" : "(";
      this.replace(this.caret - typed.length, this.caret, suggestion.text + bracket);
    }
    this.refresh();
  }

  private found(): readonly Suggestion[] {
    const { value } = this.field;
    if (value === this.dismissed && value !== "") return [];
    const { choices, functions } = this.options;
    if (choices.length > 0 && !value.startsWith("=")) {
      const fitting = choices.filter((choice) => choice.toLowerCase().startsWith(value.toLowerCase()));
      const shown = fitting.length === 0 || choices.includes(value) ? choices : fitting;
      return shown.map((choice) => ({ text: choice, about: "", kind: "choice" }));
    }
    if (!value.startsWith("=")) return this.namesFound();
    const letters = nameAtCaret(value, this.caret);
    return letters === undefined ? [] : suggestionsFor(functions, letters).map(ofFunction);
  }

  private namesFound(): readonly Suggestion[] {
    const { names = [] } = this.options;
    const word = names.length > 0 ? wordAtCaret(this.field.value, this.caret) : undefined;
    // A name that is written out is not completed: the key goes on to the cell.
    if (word === undefined || names.some(({ name }) => name === word)) return [];
    return names
      .filter(({ name }) => name.toLowerCase().startsWith(word.toLowerCase()))
      .slice(0, mostNames)
      .map(({ name, about, isCall }) => ({ text: name, about, kind: isCall ? "call" : "name" }));
  }

  private refresh(): void {
    if (this.pointed && this.caret !== this.pointed.end) this.pointed = undefined;
    const isSameText = this.field.value === this.seen;
    this.seen = this.field.value;
    this.suggestions = this.found();
    this.show(isSameText && this.active < this.suggestions.length ? this.active : this.firstActive());
  }

  /**
   * What a Tab or Enter would take: the best function, or the choice that is written or the only one left; none where
   * what is typed fits no choice, so that it is refused and not replaced by another.
   */
  private firstActive(): number {
    const [first, second] = this.suggestions;
    if (first?.kind !== "choice") return 0;
    const { value } = this.field;
    const written = this.suggestions.findIndex(({ text }) => text === value);
    const isOnlyOne = second === undefined && value !== "" && first.text.toLowerCase().startsWith(value.toLowerCase());
    return written >= 0 ? written : isOnlyOne ? 0 : -1;
  }

  private show(active: number): void {
    this.active = active;
    const at = this.suggestions.length > 0 ? undefined : argumentAtCaret(this.field.value, this.caret);
    const known = at && this.options.functions.find(({ name }) => name === at.call.name);
    render(
      [
        suggestionList(this.suggestions, active, (index) => this.pick(index)),
        at && known ? argumentHint(known, at) : nothing,
      ],
      this.popup,
    );
    const set = (name: string, value: string | undefined) =>
      value === undefined ? this.field.removeAttribute(name) : this.field.setAttribute(name, value);
    const isOpen = this.suggestions.length > 0;
    this.field.setAttribute("aria-autocomplete", "list");
    set("aria-controls", isOpen ? listId : undefined);
    set("aria-activedescendant", isOpen && active >= 0 ? optionId(active) : undefined);
    set("aria-describedby", at && known ? hintId : undefined);
    this.popup.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: "nearest" });
    this.place();
  }

  /** Under the text, or above it where there is no room below. */
  private place(): void {
    const field = this.field.getBoundingClientRect();
    const { width, height } = this.popup.getBoundingClientRect();
    const isBelow = field.bottom + height + 4 < window.innerHeight || field.top < height;
    this.popup.style.left = `${Math.max(4, Math.min(field.left, window.innerWidth - width - 4))}px`;
    this.popup.style.top = `${isBelow ? field.bottom + 2 : field.top - height - 2}px`;
  }
}
