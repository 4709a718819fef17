import { say } from "../../words/say";
import { inBackground } from "../background";
import type { Desk } from "../desk";
import type { Offline } from "../offline/offline";
import type { Remedies } from "./alarms";
import type { Keeper } from "./keeper";

const mustWait = () =>
  say`The newer version has to wait: the latest changes are in this window only. Save to a file, then take it.`;

/** What the buttons of an alarm do. */
export function remediesOf(
  desk: Desk,
  keeper: Keeper,
  offline: Offline,
  others: Pick<Remedies, "save" | "notebooks">,
): Remedies {
  const tryAgain = async () => {
    if (await keeper.tryAgain()) desk.say(say`Everything is kept in this browser again.`);
    else desk.say(desk.safety.sentence, "refused");
  };
  const takeOver = async () => {
    const { id } = keeper.open ?? {};
    const { mayLeave } = await import("../files/notebook-file");
    if (id !== undefined && (await mayLeave(desk, desk.notebook.about.title))) await keeper.show(id, true);
  };
  const reread = async () => {
    if (keeper.open) await keeper.show(keeper.open.id);
  };
  const takeNewer = async () => {
    await keeper.flush();
    if (desk.isUnsaved) desk.say(mustWait(), "refused");
    else offline.take();
  };
  return {
    ...others,
    tryAgain: () => inBackground(tryAgain()),
    takeOver: () => inBackground(takeOver()),
    reread: () => inBackground(reread()),
    takeNewer: () => inBackground(takeNewer()),
  };
}
