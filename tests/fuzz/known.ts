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
  {
    key: 'findings: procedure not checked and clean',
    why: 'a ring of like is passed over in silence; resolve is being put right',
  },
  { key: 'findings: message of syntax', why: 'a message names what is not there; resolve is being put right' },
  { key: 'check: language/resolve/', why: 'resolve throws where a name is missing; it is being put right' },
  { key: 'check again: language/resolve/', why: 'the same, in a check that keeps what it knew' },
  { key: 'check: stack', why: 'nesting has no bound yet; it gets one' },
  { key: 'check again: stack', why: 'the same, in a check that keeps what it knew' },
  {
    key: 'sheet: language/sheet/names.ts titleOf',
    why: 'a stage without a name reaches the sheet; resolve is being put right',
  },
];

export function isKnown(key: string): boolean {
  return known.some((one) => key.startsWith(one.key));
}
