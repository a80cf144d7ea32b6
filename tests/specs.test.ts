/** The specifications of the library: text in, text out. */
import { expect, it } from 'vitest';
import { checkFiles } from '../language/db/workspace.ts';
import { renderSpecsHtml, renderSpecsText } from '../language/documents/renderers/index.ts';
import { buildSpecs } from '../language/documents/specs/index.ts';
import { specsReport } from '../server/cli/specs-schema.ts';
import { libraryFiles } from './library.ts';

const { procedures } = checkFiles(libraryFiles(true));

it('rebuild-one-spring as it is printed in a terminal (npm test -- tests/specs -u rewrites it)', async () => {
  const { procedure } = procedures.find((one) => one.procedure.name === 'rebuild-one-spring')!;
  const text = renderSpecsText(buildSpecs(procedure), { width: 100 });
  expect(text.split('\n').every((line) => [...line].length <= 100)).toBe(true);
  await expect(text).toMatchFileSnapshot('snapshots/rebuild-one-spring.specs.txt');
});

it.each(procedures.map(({ procedure }) => procedure))(
  '$name: a value or a word for each number, in every form',
  (procedure) => {
    const specs = buildSpecs(procedure);
    const cells = specs.groups.flatMap(({ items }) =>
      items.flatMap(({ figures }) => figures.flatMap((one) => one.cells)),
    );
    expect(cells.length).toBeGreaterThan(0);
    for (const cell of cells) if (cell !== null) expect(cell.value !== '' || cell.missing.length > 0).toBe(true);
    expect(specsReport.parse({ ...specs, missing: 0 }).groups).toEqual(specs.groups);
    expect(renderSpecsHtml(specs)).not.toMatch(/undefined|\[object/u);
    for (const width of [40, 61, 80, 160])
      for (const line of renderSpecsText(specs, { width }).split('\n'))
        expect([...line].length).toBeLessThanOrEqual(width);
  },
);
