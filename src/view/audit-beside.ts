import { inBackground } from "./background";
import type { Desk } from "./desk";
import type { Beside, Side } from "./side";

/**
 * Findings and ticks, brought in when they are first asked for, or when the notebook holds ticks to show in the cells.
 *
 * @returns what puts them beside the cells, or takes them away.
 */
export function auditBeside(desk: Desk, side: Side, toCells: () => void): () => void {
  let panel: Promise<Beside> | undefined;
  const close = () => {
    side.put(undefined);
    document.querySelector<HTMLElement>(".tools button[aria-pressed]")?.focus();
  };
  const load = () => {
    panel ??= import("./audit/audit-panel").then(
      ({ AuditPanel }) => new AuditPanel(desk, () => side.update(), toCells, close),
    );
    return panel;
  };
  desk.subscribe(({ kind }) => {
    if (kind !== "notice" && kind !== "selection" && !panel && desk.live && desk.notebook.about.reviews) {
      inBackground(load());
    }
  });
  return () => inBackground(load().then((one) => side.put(side.shown === one ? undefined : one)));
}
