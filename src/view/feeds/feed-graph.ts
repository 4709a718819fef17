// Past 150 lines: one drawing whose nodes, keys and way back share where the keyboard is.
import { repeat } from "lit/directives/repeat.js";
import { html, nothing, svg, type TemplateResult } from "lit/html.js";
import type { LiveNotebook } from "../../notebook/live";
import { type Position, pageById } from "../../notebook/model";
import { counted, say } from "../../words/say";
import { cellName, one } from "../block";
import type { CellMark } from "../cell-marks";
import type { Desk } from "../desk";
import { feedMarks } from "./feed-marks";
import { type FeedNode, fedNodes, feedingNodes } from "./feed-nodes";
import { fitted } from "./feed-words";
import { around, heightOf, lineHeight, type Placed, placed, side } from "./placed";

const middle = 50;
const gap = 18;
const belowFont = "11px 'IBM Plex Sans'";

const same = (a: Position | undefined, b: Position): boolean =>
  a?.page === b.page && a.row === b.row && a.column === b.column;

/** The selected cell with what feeds it at its left and what it feeds at its right, to walk along with keys or mouse. */
export class FeedGraph {
  /** Cells that were left on the walk, the last one last. */
  private trail: Position[] = [];
  private at: Position | undefined;
  /** Where the graph is about to go itself. */
  private leading: Position | undefined;
  private readonly open = new Set<string>();
  /** The node that has the keyboard when the graph has it. */
  private current = "";
  private isPinned = false;
  private isInside = false;
  private marked = "";

  constructor(
    private readonly desk: Desk,
    private readonly update: () => void,
    private readonly toCells: () => void,
  ) {
    desk.subscribe(({ kind }) => {
      if (kind === "opened") this.trail = [];
    });
  }

  /** Undefined where nothing feeds the cell and it feeds nothing. */
  show(live: LiveNotebook, at: Position): TemplateResult | undefined {
    if (!same(this.at, at)) {
      // Another cell than the graph led to: the walk is over.
      this.trail = this.at && same(this.leading, at) ? this.trail : [];
      this.leading = undefined;
      this.at = at;
      this.current = "";
      this.open.clear();
    }
    const { notebook } = live;
    const [leftNodes, rightNodes] = [feedingNodes(notebook, at, this.open), fedNodes(notebook, at, this.open)];
    this.mark(live, at);
    if (leftNodes.length === 0 && rightNodes.length === 0) return undefined;
    const content = document.querySelector(".side-content");
    const width = Math.max(240, Math.min(content ? content.clientWidth - 36 : 320, 720));
    const sides = [leftNodes, rightNodes].filter((nodes) => nodes.length > 0).length;
    const column = Math.min(340, (width - middle - sides * gap) / sides);
    const left = placed(live, at, leftNodes, column);
    const right = placed(live, at, rightNodes, column);
    const cells = (list: readonly Placed[]) =>
      list.reduce((sum, { node }) => sum + (node.kind === "range" ? 0 : node.kind === "more" ? node.count : 1), 0);
    const [feeding, fed] = [cells(left), cells(right)];
    const back = this.trail.at(-1);
    return html`<section class="feeds" aria-label=${say`Fed by and feeds`} @focusin=${() => this.inside(true)} @focusout=${(event: FocusEvent) => this.inside((event.currentTarget as Element).contains(event.relatedTarget as Node | null))}>
      <div class="choices">
        ${back ? html`<button type="button" @click=${() => this.back()}>${say`Back to ${this.name(back)}`}</button>` : nothing}
        <button type="button" aria-pressed=${this.isPinned ? "true" : "false"} @click=${() => this.pin()}>${say`Show in the cells`}</button>
      </div>
      <p class="ends"><span>${say`Fed by ${feeding === 0 ? say`nothing` : counted(feeding, "cell")}`}</span><span>${say`Feeds ${fed === 0 ? say`nothing` : counted(fed, "cell")}`}</span></p>
      ${this.drawing(at, left, right, column)}
      <p class="soft" id="feed-keys">${say`Arrow keys walk, Enter goes to the cell, Backspace goes back.`}</p>
    </section>`;
  }

  /** @param column width in px of a node's column. */
  private drawing(at: Position, left: readonly Placed[], right: readonly Placed[], column: number): TemplateResult {
    const height = Math.max(heightOf(left), heightOf(right), 32) + 4;
    const from = left.length > 0 ? column + gap : 2;
    const width = from + middle + (right.length > 0 ? gap + column : 2);
    const downLeft = (height - heightOf(left)) / 2;
    const downRight = (height - heightOf(right)) / 2;
    const centre = height / 2;
    const wire = (x: number, y: number, end: number) =>
      `M${x} ${y}C${(x + end) / 2} ${y} ${(x + end) / 2} ${centre} ${end} ${centre}`;
    const wires = [
      ...left
        .filter(({ node }) => !(node.kind === "cell" && node.inRange))
        .map((one) => wire(column, downLeft + one.y + one.height / 2, from)),
      ...right.map((one) => wire(from + middle + gap, downRight + one.y + one.height / 2, from + middle)),
    ];
    const spoken = say`${cellName(at)} in the middle, ${left.length === 0 ? say`nothing feeds it` : say`what feeds it at the left`}, ${right.length === 0 ? say`it feeds nothing` : say`what it feeds at the right`}`;
    const isCurrent = (id: string) => (this.current === "" ? id === "self" : id === this.current);
    const node = (x: number, down: number, way: string) => (one: Placed) => {
      const { words, inset, lines } = one;
      const at = (row: number) => around / 2 + row * lineHeight + 11;
      return svg`<g class="node ${one.node.kind}" role="button" tabindex=${isCurrent(one.node.id) ? "0" : "-1"}
          data-id=${one.node.id} aria-label=${`${way} ${words.spoken}`} transform="translate(${x + inset} ${down + one.y})"
          @click=${() => this.act(one.node)} @focus=${() => this.reach(one.node.id)}>
        <title>${words.spoken}</title>
        <rect width=${column - inset} height=${one.height} rx="2" />
        ${lines.map((text, row) => svg`<text x=${side} y=${at(row)}>${text}</text>`)}
        ${words.below ? svg`<text class="below" x=${side} y=${at(lines.length)}>${fitted(words.below, column - inset - 2 * side, belowFont)}</text>` : nothing}
      </g>`;
    };
    const id = ({ node: { id: own } }: Placed) => own;
    return html`<svg class="feed-graph" viewBox="0 0 ${width} ${height}" style=${`max-width: ${width}px`} role="group" aria-label=${spoken} aria-describedby="feed-keys" @keydown=${(event: KeyboardEvent) => this.key(event, left, right)}>
      ${wires.map((path) => svg`<path class="wire" d=${path} />`)}
      ${repeat(left, id, node(0, downLeft, say`Fed by`))}
      <g class="node self" role="button" tabindex=${isCurrent("self") ? "0" : "-1"} data-id="self" aria-label=${say`${this.name(at)}, the selected cell`} transform="translate(${from} ${centre - 14})" @click=${this.toCells} @focus=${() => this.reach("self")}>
        <rect width=${middle} height="28" rx="2" />
        <text x=${middle / 2} y="18" text-anchor="middle">${cellName(at)}</text>
      </g>
      ${repeat(right, id, node(from + middle + gap, downRight, say`Feeds`))}
    </svg>`;
  }

  private name(at: Position): string {
    const page = pageById(this.desk.notebook, at.page);
    return `${at.page === this.desk.page.id ? "" : `${page?.name ?? ""} `}${cellName(at)}`;
  }

  private reach(id: string): void {
    this.current = id;
  }

  /** Moves the keyboard to a node that is drawn already. */
  private focus(id: string): void {
    this.current = id;
    const nodes = document.querySelectorAll<SVGGElement>(".feed-graph .node");
    for (const node of nodes) {
      const isWanted = node.dataset.id === id;
      node.setAttribute("tabindex", isWanted ? "0" : "-1");
      if (isWanted) node.focus();
    }
  }

  private key(event: KeyboardEvent, left: readonly Placed[], right: readonly Placed[]): void {
    const id = this.current || "self";
    const column = left.some(({ node }) => node.id === id)
      ? left
      : right.some(({ node }) => node.id === id)
        ? right
        : [];
    const place = column.findIndex(({ node }) => node.id === id);
    const half = (list: readonly Placed[]) => list[Math.floor((list.length - 1) / 2)]?.node.id;
    const to: Record<string, string | undefined> = {
      ArrowUp: column[place - 1]?.node.id,
      ArrowDown: column[place + 1]?.node.id,
      Home: column[0]?.node.id,
      End: column.at(-1)?.node.id,
      ArrowLeft: column === left ? undefined : column === right ? "self" : half(left),
      ArrowRight: column === right ? undefined : column === left ? "self" : half(right),
    };
    if (column.length === 0) Object.assign(to, { ArrowLeft: half(left), ArrowRight: half(right) });
    if (event.key in to) {
      const next = to[event.key];
      if (next) this.focus(next);
    } else if (event.key === "Enter" || event.key === " ") {
      const node = [...left, ...right].find((one) => one.node.id === id)?.node;
      if (node) this.act(node);
      else this.toCells();
    } else if (event.key === "Backspace") {
      this.back();
    } else if (event.key === "Escape") {
      this.toCells();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  private act(node: FeedNode): void {
    if (node.kind === "more") {
      this.open.add(node.list);
      const [first] = document.querySelectorAll<SVGGElement>(`.feed-graph .node[data-id="${CSS.escape(node.id)}"]`);
      const before = first?.previousElementSibling?.getAttribute("data-id");
      this.update();
      if (before) this.focusSoon(before);
      return;
    }
    if (this.at) this.trail.push(this.at);
    this.lead(node.at);
  }

  private back(): void {
    const last = this.trail.pop();
    if (last) this.lead(last);
  }

  /** Selects a cell and draws the graph around it; the keyboard stays in the graph. */
  private lead(at: Position): void {
    this.leading = at;
    this.desk.select(one(at), at.page);
    this.update();
    this.focusSoon("self");
  }

  /** The side is drawn when the browser finds the time. */
  private focusSoon(id: string): void {
    const until = Date.now() + 1500;
    const look = () => {
      const isDrawn = !this.leading && document.querySelector(`.feed-graph .node[data-id="${CSS.escape(id)}"]`);
      if (isDrawn) this.focus(id);
      else if (Date.now() < until) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  }

  private pin(): void {
    this.isPinned = !this.isPinned;
    this.update();
  }

  private inside(is: boolean): void {
    if (is === this.isInside) return;
    this.isInside = is;
    this.update();
  }

  /** Marks in the cells what feeds the selected one and what it feeds, while that is asked for. */
  private mark({ notebook }: LiveNotebook, at: Position): void {
    const isOn = this.isPinned || this.isInside;
    const key = isOn ? `${at.page} ${at.row} ${at.column} ${this.desk.live?.text(at)}` : "";
    if (key === this.marked) return;
    this.marked = key;
    const marks = isOn ? feedMarks(notebook, at) : new Map<string, CellMark>();
    // The side is being drawn now; the cells are drawn after it.
    setTimeout(() => this.desk.marks.set("feeds", marks));
  }
}
