import { say } from "../../words/say";

/** What a button of the dialog is called and does. */
export interface Choice {
  readonly label: string;
  readonly act: () => void;
  readonly isMain?: boolean;
}

export interface FaultWords {
  readonly sentences: readonly string[];
  readonly report: string;
}

const element = <K extends keyof HTMLElementTagNameMap>(
  name: K,
  properties: Partial<HTMLElementTagNameMap[K]> = {},
  ...children: readonly Node[]
): HTMLElementTagNameMap[K] => {
  const made = Object.assign(document.createElement(name), properties);
  made.append(...children);
  return made;
};

const buttons = (choices: readonly Choice[]): HTMLElement =>
  element(
    "div",
    { className: "choices" },
    ...choices.map(({ label, act, isMain = false }) =>
      element("button", { type: "button", className: isMain ? "main" : "", textContent: label, onclick: act }),
    ),
  );

/**
 * Says what went wrong, in front of everything. Made without the libraries that draw the rest of the page: they may be
 * what failed.
 *
 * @param choices what can be done. @param forReport what can be done with the report, which is read before.
 */
export class FaultDialog {
  private readonly dialog = element("dialog");
  private readonly sentences = element("div");
  private readonly report = element("pre", { className: "report", tabIndex: 0 });

  constructor(choices: readonly Choice[], forReport: readonly Choice[]) {
    this.report.setAttribute("role", "group");
    this.report.setAttribute("aria-label", say`The report`);
    const title = element("h2", { id: "fault-title", textContent: say`Something went wrong in this program` });
    const summary = element("summary", { textContent: say`Report for those who can mend it` });
    const note = element("p", { textContent: say`It goes nowhere by itself. Read it before you hand it on.` });
    const details = element("details", {}, summary, note, this.report, buttons(forReport));
    this.dialog.setAttribute("aria-labelledby", "fault-title");
    this.dialog.className = "fault";
    this.dialog.append(title, this.sentences, buttons(choices), details);
    // Keys belong to the dialog alone while it is open.
    this.dialog.addEventListener("keydown", (event) => event.stopPropagation());
  }

  show({ sentences, report }: FaultWords): void {
    this.sentences.replaceChildren(...sentences.map((textContent) => element("p", { textContent })));
    this.report.textContent = report;
    if (this.dialog.open) return;
    if (!this.dialog.isConnected) document.body.append(this.dialog);
    this.dialog.showModal();
  }

  close(): void {
    this.dialog.close();
  }
}
