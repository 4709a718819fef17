import type { About } from "./about";
import type { Notebook } from "./model";
import { pagePrefix } from "./references";

type Move = (place: string) => string;

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** A place on the one page as a place on the other: `Supply.drop@Cruiser`, `Supply.*`, `Free!B3`, `'Free sheet'!B3`. */
const placeMove =
  (from: string, to: string): Move =>
  (place) => {
    const begins = [
      [`${from}.`, `${to}.`],
      [pagePrefix(from), pagePrefix(to)],
    ] as const;
    const found = begins.find(([start]) => place.toLowerCase().startsWith(start.toLowerCase()));
    return found ? `${found[1]}${place.slice(found[0].length)}` : place;
  };

/** Accepted findings write the page of a cell without quotation marks: `Free sheet!B3`. */
const findingMove =
  (from: string, to: string): Move =>
  (place) =>
    place.startsWith(`${from}!`) ? `${to}!${place.slice(from.length + 1)}` : placeMove(from, to)(place);

/** The words of a finding, in which a page stands before the cells and the rows of it. */
function wordsMove(from: string, to: string): Move {
  const cells = new RegExp(`(?<![\\p{L}\\p{N}_.'])${literal(pagePrefix(from))}(?=\\$?[A-Za-z\\d])`, "gu");
  const rows = new RegExp(
    `(?<![\\p{L}\\p{N}_.'])${literal(from)}\\.(?=[\\p{L}_][\\p{L}\\p{N}_]*(?![\\p{L}\\p{N}_.(]))`,
    "gu",
  );
  return (words) => words.replace(cells, () => pagePrefix(to)).replace(rows, () => `${to}.`);
}

/** The entries under their new places; one that was left behind under such a place gives way. */
function moved<T>(entries: Record<string, T>, move: Move): Record<string, T> {
  const list = Object.entries(entries).map(([place, entry]) => ({ place, to: move(place), entry }));
  const taken = new Set(list.filter(({ place, to }) => place !== to).map(({ to }) => to));
  return Object.fromEntries(
    list.flatMap(({ place, to, entry }) => (place === to && taken.has(place) ? [] : [[to, entry] as const])),
  );
}

type Settings = NonNullable<About["settings"]>;

/** What a notebook keeps of its spread names inputs by their rows. */
function movedSettings(settings: Settings, move: Move): Settings {
  const { spread } = settings;
  const vary = (spread as { readonly vary?: unknown } | null | undefined)?.vary;
  if (typeof vary !== "object" || vary === null || Array.isArray(vary)) return settings;
  return { ...settings, spread: { ...(spread as object), vary: moved(vary as Record<string, unknown>, move) } };
}

/**
 * Lets everything that is noted of a page follow its name: its note, what is said of its rows, its ticks, accepted
 * findings with the words in which they were read, and the inputs that a spread varies.
 */
export function renameNoted(notebook: Notebook, from: string, to: string): Notebook {
  const { about } = notebook;
  const { notes, rows, reviews, accepted, settings } = about;
  const place = placeMove(from, to);
  const [ofFinding, words] = [findingMove(from, to), wordsMove(from, to)];
  return {
    ...notebook,
    about: {
      ...about,
      ...(notes && { notes: moved(notes, (of) => (of === from ? to : of)) }),
      ...(rows && { rows: moved(rows, place) }),
      ...(reviews && { reviews: moved(reviews, place) }),
      ...(accepted && {
        accepted: accepted.map((one) => ({ ...one, at: ofFinding(one.at), message: words(one.message) })),
      }),
      ...(settings && { settings: movedSettings(settings, place) }),
    },
  };
}
