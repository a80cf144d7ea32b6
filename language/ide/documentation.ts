/** What a suggestion is, in Markdown: worked out when it is looked at, not when it is offered. */
import { rules } from '../diagnostics/index.ts';
import { type Tell, term } from '../say/say.ts';
import { type Verb, verbs } from '../syntax/verbs/index.ts';
import type { Suggestion } from './completion/completions.ts';
import { declaredWithin, outlinesWith } from './declared.ts';
import { describeDeclared } from './hover/hover.ts';
import type { Snapshot } from './snapshot.ts';
import { verbMarkdown } from './verb-words.ts';

/** What identifies a suggestion. */
export interface Subject extends Pick<Suggestion, 'label' | 'kind'> {
  readonly names?: string | undefined;
  readonly about?: string | undefined;
}

/** Null where there is no more to say than its label does. */
export function documentationOf(snapshot: Snapshot, { label, kind, names, about }: Subject, tell: Tell): string | null {
  switch (kind) {
    case 'verb':
      return (verbs as readonly (string | undefined)[]).includes(about) ? verbMarkdown(about as Verb, tell) : null;
    case 'rule': {
      const rule = rules.find(({ code }) => code === about);
      return rule === undefined ? null : tell(term(rule.title));
    }
    case 'name':
      return nameText(snapshot, label.replace(/ to .*$/u, ''), names, about, tell);
    case 'step':
      return `\`\`\`rebuild\n${label}\n\`\`\``;
    default:
      return null;
  }
}

function nameText(
  snapshot: Snapshot,
  name: string,
  kind: string | undefined,
  about: string | undefined,
  tell: Tell,
): string | null {
  for (const [uri, all] of outlinesWith(snapshot.result, (one) => `${one.kind} ${one.name}` === about))
    for (const symbol of all) {
      if (`${symbol.kind} ${symbol.name}` !== about) continue;
      const found = declaredWithin(uri, symbol).find((one) => one.symbol.name === name && one.symbol.kind === kind);
      if (found !== undefined) return describeDeclared(found, snapshot.textOf, tell);
    }
  return null;
}
