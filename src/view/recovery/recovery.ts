import { version } from "../../../package.json";
import type { Notebook } from "../../notebook/model";
import { say } from "../../words/say";
import type { Desk } from "../desk";
import { fileName, handOut } from "../files/hand-out";
import { FaultDialog } from "./fault-dialog";
import { type Fault, faultOf, reportOf } from "./report";
import { rescued } from "./rescue";

/** What browsers report as errors of the page although nothing is wrong with it. */
const harmless = /^ResizeObserver loop/;

const notLoaded = () =>
  say`A part of the program could not be loaded: there may be no network, or a newer version has taken its place. Load the page again.`;

/**
 * Stands by for errors that nobody expected: says what happened, has the work kept, and offers a file with the notebook
 * and a report that the person reads before handing it on.
 */
export class Recovery {
  private fault: Fault | undefined;
  private subject: Notebook | undefined;
  private readonly parts = new WeakSet<object>();
  private readonly dismissed = new Set<string>();
  private dialog: FaultDialog | undefined;

  /** @param flush has everything written to the browser's database that is not there yet. */
  constructor(
    private readonly desk: Desk,
    private readonly flush: () => Promise<boolean>,
  ) {}

  /** Listens from now on. */
  begin(): void {
    window.addEventListener("error", ({ error, message }) => this.meet(error ?? message));
    window.addEventListener("unhandledrejection", ({ reason }) => this.meet(reason));
    window.addEventListener("vite:preloadError", ({ payload }) => this.parts.add(payload));
  }

  /** @param subject the notebook that it is about, where that is not the one on the desk. */
  meet(problem: unknown, subject?: Notebook): void {
    const next = faultOf(problem, new Date());
    if (harmless.test(next.what)) return;
    const isSame = next.what === this.fault?.what;
    this.subject = subject;
    this.fault = isSame && this.fault ? { ...next, times: this.fault.times + 1 } : next;
    this.flush().then(
      () => this.show(problem),
      () => this.show(problem),
    );
  }

  private show(problem: unknown): void {
    const { fault } = this;
    if (!fault || this.dismissed.has(fault.what)) return;
    const isPart = typeof problem === "object" && problem !== null && this.parts.has(problem);
    this.say([isPart ? notLoaded() : say`What the program says of it: ${fault.what}`, this.kept]);
  }

  private say(sentences: readonly string[]): void {
    const saveReport = () => handOut("athwart-report.txt", this.report, "text/plain;charset=utf-8");
    this.dialog ??= new FaultDialog(
      [
        { label: say`Save the notebook to a file`, act: () => this.save(), isMain: true },
        { label: say`Load the page again`, act: () => location.reload() },
        { label: say`Go on`, act: () => this.goOn() },
      ],
      [
        { label: say`Save the report`, act: saveReport },
        { label: say`Copy it`, act: () => this.copy() },
      ],
    );
    this.dialog.show({ sentences, report: this.report });
  }

  /** Whether the work is safe, for the person. */
  private get kept(): string {
    if (this.subject) return say`The notebook could not be opened; another one was opened in its place.`;
    const { kind } = this.desk.safety;
    if (kind === "kept") {
      return say`Everything up to the last change is kept in this browser, and opens where you were when the page is loaded again.`;
    }
    return kind === "closed" || kind === "behind"
      ? say`This window only reads the notebook; the window that has it keeps it.`
      : say`The latest changes are in this window only: save the notebook to a file before the page is loaded again.`;
  }

  private get report(): string {
    const { desk, fault } = this;
    if (!fault) return "";
    const theme = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
    return reportOf(fault, {
      version,
      browser: navigator.userAgent,
      window: `${innerWidth} × ${innerHeight}, ${theme}, ${navigator.language}`,
      notebook: this.subject ?? desk.notebook,
      page: desk.notebook.pages.indexOf(desk.page) + 1,
      safety: desk.safety.brief || say`not begun`,
    });
  }

  private save(): void {
    const { desk, subject } = this;
    const bounds = subject ? undefined : desk.bounds();
    if (bounds) {
      this.say([bounds.save]);
      return;
    }
    const notebook = subject ?? desk.notebook;
    const { name, content, type } = rescued(notebook, fileName(notebook.about.title));
    handOut(name, content, type);
    if (!subject) desk.saved();
  }

  private goOn(): void {
    if (this.fault) this.dismissed.add(this.fault.what);
    this.dialog?.close();
  }

  private copy(): void {
    navigator.clipboard?.writeText(this.report).catch(() => undefined);
  }
}
