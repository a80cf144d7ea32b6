/** Most texts; then all are forgotten. */
const most = 4_000;

/** What texts mean, where that is a matter of the text alone: what is written in the same way is the same object. */
export class ByText<Meaning> {
  private readonly known = new Map<string, Meaning>();

  get(text: string): Meaning | undefined {
    return this.known.get(text);
  }

  set(text: string, meaning: Meaning) {
    if (this.known.size >= most) this.known.clear();
    // A copy: a piece of a text keeps the whole alive.
    this.known.set(` ${text}`.slice(1), meaning);
  }
}
