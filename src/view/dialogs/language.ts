import { html, type TemplateResult } from "lit/html.js";
import { type Language, languageNames } from "../../words/language";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { browserDecimalSign, chosenLanguage, keep, kept } from "../speech";
import { openDialog } from "./dialog";

interface Option {
  readonly value: string;
  readonly words: string;
}

const signWords = (sign: string): string => (sign === "," ? say`comma: 1,5` : say`point: 1.5`);

const list = (label: string, options: readonly Option[], chosen: string, pick: (value: string) => void) =>
  html`<label>${label}
    <select @change=${(event: Event) => pick((event.target as HTMLSelectElement).value)}>
      ${options.map(({ value, words }) => html`<option value=${value} ?selected=${value === chosen}>${words}</option>`)}
    </select>
  </label>`;

/** Chooses the language of the screen and the decimal sign; both are this browser's, not the notebook's. */
export function openLanguage(desk: Desk): Promise<void> {
  const before = { language: kept("language"), decimal: kept("decimal") };
  const wanted = { ...before };
  return openDialog(say`Language and numbers`, ({ update, close }) => {
    const isOther = wanted.language !== before.language || wanted.decimal !== before.decimal;
    const use = () => {
      const isKept = keep("language", wanted.language) && keep("decimal", wanted.decimal);
      close();
      // Every text is made anew, so the page is; the notebook is kept and opens where it was.
      if (isKept) location.reload();
      else
        desk.say(
          say`This browser does not let the page keep the choice; allow it to store data, then choose again.`,
          "refused",
        );
    };
    const languages: Option[] = (Object.keys(languageNames) as Language[]).map((value) => ({
      value,
      words: languageNames[value],
    }));
    const pickLanguage = (value: string) => {
      wanted.language = value;
      update();
    };
    const pickSign = (value: string) => {
      wanted.decimal = value;
      update();
    };
    const body: TemplateResult = html`
      <p>${say`This changes what is read and typed on this screen, in this browser alone. Notebooks, names of functions and your own words stay as they are; files hold numbers with a point.`}</p>
      <div class="units">
        ${list(say`Language`, languages, wanted.language || chosenLanguage(), pickLanguage)}
        ${list(
          say`Decimal sign`,
          [
            { value: "", words: say`as the browser, ${signWords(browserDecimalSign())}` },
            { value: ".", words: signWords(".") },
            { value: ",", words: signWords(",") },
          ],
          wanted.decimal,
          pickSign,
        )}
      </div>
      <p class="soft">${say`With a comma, the arguments of a function are typed with a semicolon between them: =MAX(1,5;2). The page is drawn anew; the notebook stays open.`}</p>
      <div class="choices">
        <button type="button" class="main" ?disabled=${!isOther} @click=${use}>${say`Use this`}</button>
        <button type="button" @click=${close}>${say`Close`}</button>
      </div>`;
    return body;
  });
}
