import { say } from "../../words/say";

/**
 * Prints a whole document through a frame that is not seen; the browser asks for printer and pages.
 *
 * The frame is of this page's own origin and follows its content policy: it runs no scripts.
 */
export function printDocument(text: string): Promise<void> {
  document.querySelector("iframe.to-print")?.remove();
  const frame = document.createElement("iframe");
  frame.className = "to-print";
  frame.title = say`The sheets that are being printed`;
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  // A frame that is not displayed at all has no pages to print.
  frame.style.cssText = "position:fixed;right:0;bottom:0;width:1px;height:1px;border:0;opacity:0;pointer-events:none";
  frame.srcdoc = text;
  return new Promise((done) => {
    frame.addEventListener("load", () => {
      // Focus would go to the frame; it is for the printer only. The frame stays until the next one: some browsers
      // print after `print` has come back.
      frame.contentWindow?.print();
      done();
    });
    document.body.append(frame);
  });
}
