import { html, type TemplateResult } from "lit/html.js";

// Shapes that stand beside words: each says by its outline what the colour says again.

/** A ring: holds. */
export const ringMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><circle cx="7.5" cy="7.5" r="5.4" fill="none" stroke="currentColor" stroke-width="1.6" /></svg>`;

/** A filled corner, as the triangle of a level that is missed: falls short. */
export const cornerMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d="M1.5 13.5V2L13 13.5Z" fill="currentColor" /></svg>`;

/** A hollow square on its tip: open, cannot be judged. */
export const openMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d="M7.5 1.6 13.4 7.5 7.5 13.4 1.6 7.5Z" fill="none" stroke="currentColor" stroke-width="1.6" /></svg>`;

/** A warning sign: caution. */
export const careMark: TemplateResult = html`<svg class="mark" viewBox="0 0 20 20" aria-hidden="true"><path d="M10 2.5 18 17H2Z M10 8v4M10 14.2v.6" fill="none" stroke="currentColor" stroke-width="1.6" /></svg>`;

/** The section of a hull with its waterline and the tunnel across it. */
export const hullMark: TemplateResult = html`<svg class="hull" viewBox="0 0 34 26" aria-hidden="true" fill="none" stroke="currentColor"><path d="M2 2C5 16 11 23 17 24 23 23 29 16 32 2" stroke-width="1.6" /><path d="M9.5 12.4H24.5V16.6H9.5Z" stroke-width="1.6" /><path d="M2 7.4H32" stroke-dasharray="3 2.4" /></svg>`;

/** Two lines: a note, to be read once. */
export const noteMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d="M2 5.5H13M2 9.5H9" fill="none" stroke="currentColor" stroke-width="1.6" /></svg>`;

/** A tick: reviewed, and nothing behind it has changed. */
export const tickMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d="M2 8 6 12 13 3" fill="none" stroke="currentColor" stroke-width="2" /></svg>`;

/** An hourglass: reviewed once, and stale since. */
export const staleMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true"><path d="M3 2H12L3 13H12Z" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round" /></svg>`;

/** Three dots: there is more that can be done. */
export const moreMark: TemplateResult = html`<svg class="mark" viewBox="0 0 15 15" aria-hidden="true" fill="currentColor"><circle cx="2.5" cy="7.5" r="1.4" /><circle cx="7.5" cy="7.5" r="1.4" /><circle cx="12.5" cy="7.5" r="1.4" /></svg>`;
