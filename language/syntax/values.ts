import { type CstNode, DefaultValueConverter, type GrammarAST, type ValueType } from 'langium';

/** Text in quotes is the author's own: it stays as written, and nothing in it is an escape. */
export class RebuildValueConverter extends DefaultValueConverter {
  protected override runConverter(rule: GrammarAST.AbstractRule, input: string, node: CstNode): ValueType {
    if (rule.name === 'STRING') return input.replace(/^"/u, '').replace(/"$/u, '');
    return super.runConverter(rule, input, node);
  }
}
