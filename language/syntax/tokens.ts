import { DefaultTokenBuilder, type Grammar, type TokenBuilderOptions } from 'langium';
import { numberPattern, quantityPattern } from '../quantities/index.ts';

/** Order of terminals: what can begin like another comes before it. */
const order = ['WS', 'COMMENT', 'EOL', 'DATE', 'QUANTITY', 'NUMBER', 'STRING', 'ID', 'UNREAD'];

/**
 * Builds the tokens with QUANTITY and NUMBER taken from the table of units, so that a unit is written once
 * (in quantities/units.ts) and the grammar, the reader and the formatter cannot diverge.
 */
export class RebuildTokenBuilder extends DefaultTokenBuilder {
  override buildTokens(grammar: Grammar, options?: TokenBuilderOptions) {
    const tokens = super.buildTokens(grammar, options) as { name: string; PATTERN?: unknown }[];
    const digits = Array.from('0123456789');
    for (const token of tokens) {
      const pattern = token.name === 'QUANTITY' ? quantityPattern : token.name === 'NUMBER' ? numberPattern : null;
      if (pattern === null) continue;
      const sticky = new RegExp(pattern, 'uy');
      Object.assign(token, {
        PATTERN: (text: string, offset: number) => {
          sticky.lastIndex = offset;
          return sticky.exec(text);
        },
        LINE_BREAKS: false,
        start_chars_hint: digits,
      });
    }
    const keywords = tokens.filter((token) => !order.includes(token.name));
    const terminals = order.flatMap((name) => tokens.filter((token) => token.name === name));
    return [...keywords, ...terminals] as ReturnType<DefaultTokenBuilder['buildTokens']>;
  }
}
