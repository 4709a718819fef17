import { say } from "../../words/say";
import type { Notebook } from "../model";
import { Refusal } from "../refusal";
import type { Around } from "./around";
import { backTo } from "./back-to";
import type { Database } from "./database";
import { holdNotebook, type Line } from "./hold";
import { Kept } from "./kept";
import { isLong, type Loaded, loaded, mend, shorten, stored } from "./load";
import { change } from "./records";
import { Writer } from "./writer";

interface Opening {
  readonly database: Database;
  readonly around: Around;
  readonly line: Line;
  /** What to call when the database is closed from outside. */
  readonly closings: Set<() => void>;
  /** Of this window. */
  readonly name: string;
  readonly id: string;
  /** Whether it is to be taken from the window that has it. */
  readonly takeOver: boolean;
  /** The notebook as it is already shown, where it has no history yet. */
  readonly as: Notebook | undefined;
}

const mendedSentence = ({ damage }: Loaded): string | undefined =>
  damage &&
  (damage.from === "check"
    ? say`A part of this notebook's journal was damaged; its present state was saved apart and is whole, older steps cannot be taken back.`
    : say`The end of this notebook's journal was damaged; the last changes may be missing: compare with a named version or a file.`);

/** Makes this window the one that writes, and reads what there is. */
async function toWrite({ database, around, id, name }: Opening) {
  const claimed = await change(database, id, undefined, (old) => {
    if (old.deleted !== undefined) throw new Refusal(say`"${old.title}" is deleted; restore it first.`);
    return { ...old, holder: name, opened: around.now() };
  });
  if (isLong(claimed)) await shorten(database, id, name).catch(() => undefined);
  const all = await stored(database, id);
  const found = loaded(all);
  const record = found.damage ? await mend(database, id, name, found, all.check) : all.record;
  return { found, record };
}

/** Opens a notebook to be written, or to be read when another window has it. */
export async function openKept(opening: Opening): Promise<Kept> {
  const { database, around, line, closings, id, name } = opening;
  let writer: Writer | undefined;
  const hold = await holdNotebook(around, line, id, opening.takeOver, () => writer?.taken());
  const onKept = (listener: (last: number) => void) =>
    line.listen((message) => {
      if (message.kind === "kept" && message.notebook === id) listener(message.last);
    });
  if (!hold) {
    const all = await stored(database, id);
    const { notebook, history } = loaded(all);
    return new Kept({
      ...{ database, record: all.record, notebook, history, mended: undefined, writer: undefined, onKept },
      release: () => undefined,
    });
  }
  try {
    const { found, record } = await toWrite(opening);
    const isAsShown = opening.as && backTo(found.notebook)(opening.as) === opening.as;
    const notebook = isAsShown && opening.as ? opening.as : found.notebook;
    const deaf = line.listen((message) => answer(message));
    const closed = () => writer?.closed();
    closings.add(closed);
    const answer = (message: { readonly kind: string; readonly notebook: string }) => {
      if (message.notebook !== id) return;
      if (message.kind === "who") line.say({ kind: "here", notebook: id });
      if (message.kind === "wanted") giveUp().catch(() => undefined);
    };
    const release = () => {
      deaf();
      closings.delete(closed);
      hold.release();
    };
    const giveUp = async () => {
      await writer?.flush();
      writer?.taken();
      release();
      line.say({ kind: "given", notebook: id });
    };
    return new Kept({
      ...{ database, record, notebook, history: found.history, mended: mendedSentence(found), release, onKept },
      writer: (tell) => {
        writer = new Writer(database, line, around, name, record, notebook, tell);
        return writer;
      },
    });
  } catch (cause) {
    hold.release();
    throw cause;
  }
}
