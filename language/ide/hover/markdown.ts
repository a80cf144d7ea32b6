/** Text that Markdown reads unchanged. */
export function markdownText(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!<>|~]/g, '\\$&');
}

/** A table; the first row is its head. */
export function table([head = [], ...rows]: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(markdownText).join(' | ')} |`;
  return [line(head), `|${' --- |'.repeat(head.length)}`, ...rows.map(line)].join('\n');
}
