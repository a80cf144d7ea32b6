/** `a` to `z`, then `aa`: what sources are listed under, and what a box has room for. */
export function letterAt(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26));
  return index < 26 ? letter : letterAt(Math.floor(index / 26) - 1) + letter;
}
