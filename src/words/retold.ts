import { withDecimalSign } from "./decimal-sign";
import { spoken } from "./language";

/** Fewer letters than this are in too many sentences to be known again by. */
const leastLetters = 6;

interface Pattern {
  readonly english: RegExp;
  readonly own: string;
  readonly places: readonly string[];
}

const lettersIn = (template: string): number => template.replace(/\{\d\}/g, "").match(/\p{L}/gu)?.length ?? 0;

function patternsOf(catalogue: Readonly<Record<string, unknown>>): readonly Pattern[] {
  return Object.entries(catalogue)
    .filter(([english, own]) => typeof own === "string" && /\{\d\}/.test(english) && lettersIn(english) >= leastLetters)
    .sort(([one], [other]) => lettersIn(other) - lettersIn(one))
    .map(([english, own]) => {
      const parts = english.split(/\{(\d)\}/);
      const source = parts.map((part, i) => (i % 2 === 1 ? "(.*?)" : part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")));
      return {
        english: new RegExp(`^${source.join("")}$`, "su"),
        own: own as string,
        places: parts.filter((_, i) => i % 2 === 1),
      };
    });
}

let known: { readonly of: unknown; readonly patterns: readonly Pattern[]; readonly sentences: Map<string, string> } = {
  of: undefined,
  patterns: [],
  sentences: new Map(),
};

/**
 * A sentence that was made in English elsewhere, such as a finding that a file knows by its English words, in the
 * language that is spoken: what was put into it is put into the other sentence. What no catalogue knows stays.
 */
export function retold(sentence: string): string {
  const { catalogue } = spoken();
  if (known.of !== catalogue) known = { of: catalogue, patterns: patternsOf(catalogue), sentences: new Map() };
  const { patterns, sentences } = known;
  const before = sentences.get(sentence);
  if (before !== undefined) return before;
  const told = (text: string): string => {
    const whole = catalogue[text];
    if (typeof whole === "string") return whole;
    for (const { english, own, places } of patterns) {
      const found = english.exec(text);
      if (!found) continue;
      const values = new Map(places.map((place, i) => [place, told(found[i + 1] ?? "")]));
      return own.replace(/\{(\d)\}/g, (_, place: string) => values.get(place) ?? "");
    }
    // A place before a colon is no sentence of a catalogue; what is said of it may be.
    const [, place, rest] = /^(.{1,80}?: )(.+)$/su.exec(text) ?? [];
    return place !== undefined && rest !== undefined ? withDecimalSign(place) + told(rest) : withDecimalSign(text);
  };
  const result = told(sentence);
  sentences.set(sentence, result);
  return result;
}
