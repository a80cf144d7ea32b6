/** Mistakes that were seeded by hand are found, one by one, at their step; what is right and looks like one is not. */
import { expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { corpusFiles } from '../corpus/files.ts';
import { type Seeded, slips, sound } from './slips.ts';

const files = corpusFiles();

function checked({ file, edits }: Seeded) {
  const uri = `${file}.rebuild`;
  const lines = (text: string) => text.replaceAll(/\/(?= {2}| {4})/gu, '\n');
  const text = edits.reduce(
    (now, [from, to]) => {
      expect(now, `${uri} has this text`).toContain(lines(from));
      return now.replace(lines(from), () => lines(to));
    },
    files.find((one) => one.uri === uri)!.text,
  );
  return checkFiles([...files.filter((one) => one.uri === 'shop.rebuild'), { uri, text }]).diagnostics;
}

it.each(slips.map((slip) => [slip.rule, slip.what, slip] as const))('%s: %s', (rule, _, slip) => {
  const found = checked(slip).map((one) => `${one.rule} ${one.step ?? '–'}`);
  expect(found).toContain(`${rule} ${slip.step ?? '–'}`);
});

it.each(sound.map((one) => [one.what, one] as const))('not: %s', (_, one) => {
  expect(checked(one).map((found) => `${found.step ?? '–'} ${found.rule}: ${fullMessage(found)}`)).toEqual([]);
});
