/**
 * Defects that are known and not yet put right: what the fuzzer finds of them is counted and does not fail. Each names
 * the failures by the beginning of their key (`target: place`). Take one out with its cure, and `todo` from its fixture.
 */
export const known: readonly { readonly key: string; readonly why: string }[] = [
  {
    key: 'findings: place of',
    why: 'places one character past the end of a line; the editor’s ranges are being put right',
  },
  {
    key: 'reports: control characters',
    why: 'the text report writes them raw; the command’s reports are being put right',
  },
];

export function isKnown(key: string): boolean {
  return known.some((one) => key.startsWith(one.key));
}
