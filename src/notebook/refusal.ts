/** An edit or a file that cannot be taken; the notebook stays as it was. The message is one full sentence. */
export class Refusal extends Error {
  override readonly name = "Refusal";
}
