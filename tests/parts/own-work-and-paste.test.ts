/** What work in the author's own words changes, and the paste that lapping leaves. */
import { describe, expect, it } from 'vitest';
import type { Changes } from './cover.ts';
import { coverWith } from './cover.ts';

const looked = (text: string): Changes => [
  ['  joint screw', '  face cover.seat lapped meets body.seat\n  joint screw'],
  ['    keep shaft, bush, cover at build\n', `    ${text}\n    keep shaft, bush, cover at build\n`],
];
const rulesOf = (found: readonly string[]) => found.map((one) => one.split(' ')[0]);

describe('lapping paste', () => {
  const check = 'check cover.seat, body.seat  reuse if "bright"  lap if "stained"';

  it('is still there at the next look', () => {
    const { found } = coverWith(looked(`${check}  reject if "scored"`));
    expect(found.join('\n')).toContain('lapping paste is still on them');
    expect(found.join('\n')).toContain('Write “then wash in FLUID” behind “lap if”');
  });

  it('is washed off on the way back', () => {
    const { found, card, procedure } = coverWith(looked(`${check} then wash in solvent  reject if "scored"`));
    expect(rulesOf(found)).not.toContain('checked-dirty');
    expect(rulesOf(found)).not.toContain('fitted-dirty');
    expect(procedure.repairs[0]!.steps.map(({ verb }) => verb)).toEqual(['lap', 'wash', 'wipe']);
    expect(card().join('\n')).toMatch(/Wash the cover and pump body in cleaning solvent/u);
  });

  it('is measured through, and built on, until it is washed off', () => {
    const lapped = (more: string) => coverWith(looked(`lap cover.seat, body.seat${more}`)).found;
    expect(rulesOf(lapped(''))).toContain('fitted-dirty');
    expect(lapped('').join('\n')).toContain('a rinse does not take it off');
    expect(lapped('\n    rinse cover, body in oil').join('\n')).toContain('fitted-dirty');
    expect(lapped('\n    wipe cover, body').join('\n')).toContain('fitted-dirty');
    expect(
      rulesOf(lapped('\n    wash cover, body in solvent\n    blow-dry cover, body with air at most 2 bar')),
    ).not.toContain('fitted-dirty');
    expect(
      rulesOf(lapped('\n    measure cover within 9.9..10.1 mm with "caliper" source "Own" on fail renew cover (once)')),
    ).toContain('checked-dirty');
  });

  it('is on nothing else', () => {
    const { found } = coverWith(
      looked('check cover.seat, body.seat  reuse if "bright" then wash in solvent  reject if "scored"'),
    );
    expect(found.join('\n')).toContain('“then wash in solvent” belongs to lapping');
  });
});

describe('work in the author’s own words', () => {
  const repaired = (work: string): Changes => [
    ...looked('check bush "Bore smooth"  on fail ease (once)'),
    ['    sign-off by "Lead"\n  }\n', `    sign-off by "Lead"\n  }\n  repair ease {\n    ${work}\n  }\n`],
  ];

  it('changes what it says, and prints it', () => {
    const { found, card } = coverWith(repaired('do "Scrape the bore by hand" to bush'));
    expect(rulesOf(found)).not.toContain('repair-changes-nothing');
    expect(card().join('\n')).toContain('Scrape the bore by hand (2 bearing bushes (drive and cover end))');
  });

  it('cures nothing where it says nothing', () => {
    expect(rulesOf(coverWith(repaired('do "Scrape the bore by hand"')).found)).toContain('repair-changes-nothing');
  });

  it('cures nothing of what failed where it is done to something else', () => {
    expect(rulesOf(coverWith(repaired('do "Scrape it by hand" to cover')).found)).toContain('repair-cannot-cure');
  });

  it('makes stale what was measured before it', () => {
    const measured = (after: string) =>
      coverWith(
        looked(`measure bush within 9.9..10.1 mm with "caliper" source "Own"  on fail renew bush (once)${after}`),
      ).found;
    expect(rulesOf(measured('\n    do "Scrape the bore by hand"'))).not.toContain('gate-stale');
    expect(rulesOf(measured('\n    do "Scrape the bore by hand" to bush'))).toContain('gate-stale');
  });

  it('is done to parts, faces and adjusters, and to nothing else', () => {
    expect(coverWith(repaired('do "Scrape it" to bsh')).found.join('\n')).toContain('bush');
  });
});
