import { html, nothing, type TemplateResult } from "lit/html.js";
import { argumentSign } from "../../notebook/typed-formula";
import { counted, say } from "../../words/say";
import type { ArgumentAtCaret } from "./at-caret";
import type { KnownArgument, KnownFunction } from "./known-function";

/** One line of the list under the text: a function, one of a row's choices, a name or a call in a formula of a function page. */
export interface Suggestion {
  readonly text: string;
  readonly about: string;
  readonly kind: "named" | "built in" | "choice" | "name" | "call";
}

export const listId = "typing-list";
export const hintId = "typing-hint";
export const optionId = (index: number): string => `typing-option-${index}`;

export const ofFunction = ({ name, title, isNamed }: KnownFunction): Suggestion => ({
  text: name,
  about: title,
  kind: isNamed ? "named" : "built in",
});

/** The list; picking with the mouse must not take the focus from the text. */
export const suggestionList = (
  suggestions: readonly Suggestion[],
  active: number,
  pick: (index: number) => void,
): TemplateResult | typeof nothing =>
  suggestions.length === 0
    ? nothing
    : html`<ul id=${listId} role="listbox" aria-label=${say`Suggestions`}>
        ${suggestions.map(
          ({ text, about, kind }, i) => html`<li
            id=${optionId(i)}
            role="option"
            aria-selected=${i === active}
            class=${kind === "named" || kind === "name" ? "named" : ""}
            @mousedown=${(event: Event) => {
              event.preventDefault();
              event.stopPropagation();
              pick(i);
            }}
          ><span class="text">${text}</span> <span class="about">${about}</span></li>`,
        )}
      </ul>`;

/** `current while running, A; 0 to 5000 A; 20 when left out`. */
function argumentSentence({ about, unit, allowed, otherwise, isOptional }: KnownArgument): string {
  const parts = [
    [about, unit].filter(Boolean).join(", "),
    allowed && allowed !== "any number" && allowed !== "any text" ? say`allowed ${allowed}` : "",
    otherwise ? say`${otherwise} when left out` : isOptional ? say`may be left out` : "",
  ];
  return parts.filter(Boolean).join("; ");
}

/** The call being typed with its arguments, the current one in bold, and what that one takes. */
export function argumentHint(known: KnownFunction, { argument }: ArgumentAtCaret): TemplateResult | typeof nothing {
  const { args } = known;
  if (!args) return nothing;
  const last = args.length - 1;
  const at = known.repeats ? Math.min(argument, last) : argument;
  const current = args[at];
  const sentence = current ? argumentSentence(current) : "";
  return html`<div id=${hintId} class="hint">
    <p class="call">
      ${known.name}(${args.map(
        ({ name, isOptional }, i) =>
          html`${i > 0 ? `${argumentSign()} ` : ""}${i === at ? html`<b>${name}</b>` : html`<span>${name}</span>`}${isOptional ? "?" : ""}${known.repeats && i === last ? " …" : ""}`,
      )})
    </p>
    <p>
      ${
        current
          ? html`<b>${current.name}</b>${sentence ? html`: ${sentence}` : nothing}`
          : html`${say`It takes ${counted(args.length, "argument")}; this is one too many.`}`
      }
    </p>
    <p class="title">${known.title}</p>
  </div>`;
}
