import { expect, test } from 'vitest';
import { askedAt, edited, procedureText } from '../../../tests/holder.ts';
import { readerOf } from '../../i18n/translate.ts';
import { hoverAt } from './hover.ts';

function hover(marked: string) {
  const { snapshot, file, position } = askedAt(marked);
  const found = hoverAt(snapshot, file, position, readerOf('en'));
  return (
    found && {
      ...found,
      said: marked
        .replace('<|>', '')
        .split('\n')
        [found.range.start.line]!.slice(found.range.start.character, found.range.end.character),
    }
  );
}

test('a name is shown as it is declared, with what it is of', () => {
  const { said, markdown } = hover(edited('slacken nut', 'slacken nu<|>t'))!;
  expect(said).toBe('nut');
  expect(markdown).toBe(
    '**nut** Nozzle nut\n\n```rebuild\npart nut "Nozzle nut" on body holds nozzle\n```\n\npart of family holder\n\nHere: in place; as found; dirty; dry; tight as found.',
  );
});

test('what is no step says nothing', () => {
  expect(hover(edited('revision A', 'revi<|>sion A'))).toBeNull();
  expect(hover(edited('"holding fixture"', '"holding fi<|>xture"'))).toBeNull();
});

test('a finding says why it matters, before the name at its place', () => {
  const { markdown } = hover(edited('    clamp body in "holding fixture"\n    slacken nut', '    slacken nu<|>t'))!;
  expect(markdown).toMatch(/^\*\*not-clamped\*\*: it turns in the hand[\s\S]*\n\n---\n\n\*\*nut\*\*/u);
});

test('a family is shown taken apart', () => {
  const { markdown } = hover(procedureText.replace('for holder', 'for hol<|>der'))!;
  const [, alt, data] = /!\[(.*)\]\(data:image\/svg\+xml;base64,([^|]+)\|width=\d+\)/u.exec(markdown)!;
  expect(alt).toMatch(/exploded view/u);
  expect(Buffer.from(data!, 'base64').toString()).toMatch(/^<svg [\s\S]*Nozzle nut[\s\S]*<\/svg>/u);
});

test('marks of Markdown in the words of an author are words', () => {
  const { markdown } = hover(edited('spec nut-fit torque', 'spec nut<|>-fit "*Bold* [link](x)" torque'))!;
  expect(markdown).toContain('**nut-fit** \\*Bold\\* \\[link\\]\\(x\\)');
});
