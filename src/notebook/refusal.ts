/** What breaks a line, cannot be seen, or turns the direction of writing: a file may hold it in any name. */
const unseen = /[\p{Cc}\p{Zl}\p{Zp}\u061C\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF]/gu;
const longest = 800;

/** A sentence on one line, also where it quotes what a file holds. */
function oneLine(message: string): string {
  const line = message.replace(unseen, "\uFFFD");
  return line.length > longest ? `${line.slice(0, longest - 200)} … ${line.slice(-200)}` : line;
}

/** An edit or a file that cannot be taken; the notebook stays as it was. The message is one full sentence. */
export class Refusal extends Error {
  override readonly name = "Refusal";

  constructor(message: string) {
    super(oneLine(message));
  }
}
