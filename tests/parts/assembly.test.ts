/** Parts that are handled as one, and that stay known inside it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type Changes, coverWith } from './cover.ts';

const read = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../corpus/${name}.rebuild`, import.meta.url)), 'utf8');
const text = `${read('shop')}\n${read('cartridge-sent-out-as-one')}`;
const turbo = (...changes: Changes) => coverWith(changes, text);
const off = '    keep cartridge at balancer "Foam box, lid on"\n';

describe('an assembly', () => {
  it('is taken off, kept, marked, sent out, booked in and fitted by its name', () => {
    const { found, card } = turbo();
    expect(found).toEqual([]);
    const lines = card();
    for (const line of [
      'Remove the cartridge.',
      "Mark the cartridge with part number and serial number: electric pencil, on the oil flange's edge",
      'Send the cartridge out: balancing as one, on the machine for cartridges',
      'Book the cartridge in: sheet of the balancer stapled to the traveler',
      'Fit the cartridge.',
    ])
      expect(lines).toContain(line);
  });

  it('caps all ports of what is in it', () => {
    const step = turbo().procedure.stages[0]!.steps.find(({ verb }) => verb === 'cap')!;
    expect(step.objects.map(({ name }) => name)).toEqual(['oil-in', 'oil-out']);
  });

  it('has parts that go on being known inside it', () => {
    const inside = turbo([off, `    remove wheel\n${off}`]).found;
    expect(inside.join('\n')).toContain(
      'The compressor wheel cannot come off yet: the shaft nut is still in place over it',
    );
    const tight = turbo([off, `    remove nut, wheel\n${off}`]).found;
    expect(tight.join('\n')).toContain('joint-not-slackened');
    const open = turbo([off, `    slacken nut\n    remove nut, wheel\n    keep nut, wheel at turbo\n${off}`]).found;
    expect(open.join('\n')).toContain('compressor wheel');
    expect(open.join('\n')).toContain('part-left-out');
  });

  it('is held by what holds it', () => {
    const { found } = turbo(['    slacken band\n    remove band\n', '']);
    expect(found.join('\n')).toContain('The cartridge cannot come off yet: the clamp band is still in place over it');
  });

  it('has to be put down, and back in', () => {
    expect(turbo([off, '']).found.join('\n')).toContain('parts-left-loose');
    expect(turbo(['    fit cartridge\n', '']).found.join('\n')).toContain('bearing housing');
  });

  it('comes new as a whole, its joints tight', () => {
    const { found } = turbo([off, `    renew cartridge\n${off}`]);
    // Its ports come open.
    expect(found.map((one) => one.split(' ')[0])).toEqual(['open-port-in-dirt']);
  });

  it('is booked in where it was sent out', () => {
    const back = '    book-in of cartridge "Sheet of the balancer stapled to the traveler"\n';
    expect(turbo([back, '']).found.join('\n')).toContain(
      'The cartridge is sent out here, and nothing books it in before the unit is tested or signed off',
    );
    expect(turbo([back, '    book-in of screw\n']).found.join('\n')).toContain('The cartridge is sent out here');
    expect(turbo([back, '    book-in\n']).found).toEqual([]);
  });

  it('is not washed as one: what is meant is named', () => {
    expect(turbo([off, `    wash cartridge in solvent\n${off}`]).found.join('\n')).toContain(
      'cartridge is an assembly, and wash is done to single parts: name those that are meant, of bearing-housing, shaft, wheel and nut.',
    );
  });

  it('is carried by one of its parts', () => {
    const { found } = turbo(['of bearing-housing, shaft, wheel, nut', 'of shaft, wheel, nut, screw']);
    expect(found.join('\n')).toContain('In cartridge nothing carries shaft and screw together');
  });

  it('is called like no part, and is misspelled like one', () => {
    expect(turbo(['assembly cartridge', 'assembly wheel']).found.join('\n')).toContain('duplicate-name');
    expect(turbo(['    remove cartridge\n', '    remove cartrigde\n']).found.join('\n')).toContain('cartridge');
  });
});
