/**
 * What the client says, in the language of the findings: the one of the setting `handtight.language`, else that of the editor. The
 * editor's own function knows only its own.
 */
import { env, workspace } from 'vscode';
import { filled } from '../language/say/say.ts';
import de from './l10n/bundle.l10n.de.json' with { type: 'json' };
import es from './l10n/bundle.l10n.es.json' with { type: 'json' };

/** Each text by its English, which is what there is in any other language. */
const bundles: Readonly<Record<string, Readonly<Record<string, string>>>> = { en: {}, es, de };

/** Must be the setting in the manifest. */
export const languageSetting = 'handtight.language';

/** Code of the language that things are said in. */
export function language(): 'en' | 'es' | 'de' {
  const set = workspace.getConfiguration().get(languageSetting);
  const wanted = [set, env.language.replace(/-.*$/u, '')].find((one) => Object.hasOwn(bundles, String(one)));
  return (wanted ?? 'en') as 'en' | 'es' | 'de';
}

export const l10n = {
  /** A text with its holes, `{0}`, filled. */
  t(text: string, ...fillings: readonly (string | number)[]): string {
    return filled(bundles[language()]![text] ?? text, fillings.map(String));
  },
};
