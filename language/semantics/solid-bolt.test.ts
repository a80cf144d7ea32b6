import { describe, expect, it } from 'vitest';
import { resolve } from '../db/resolve.ts';
import { english } from '../say/say.ts';
import { parse } from '../syntax/parse.ts';

/** A family with one joint, and something else about its stud. */
function resolved(joint: string, more = '') {
  const { ast, problems } = parse(
    `family holder {\n part body "Body"\n part stud "Stud" on body holds clamp\n part clamp "Clamp" on body\n${more}\n joint stud to body ${joint}\n}\n`,
  );
  expect(problems).toEqual([]);
  return resolve([{ uri: 'main', ast }]);
}

const solid = (joint: string, more?: string) => {
  const { families, problems } = resolved(joint, more);
  expect(problems).toEqual([]);
  return families[0]!.joints[0]!;
};

const told = (joint: string, more?: string) => {
  const { families, problems } = resolved(joint, more);
  expect(families[0]!.joints[0]!.solid).toBeNull();
  return problems.map((problem) =>
    problem.kind === 'syntax' ? `${problem.source.range.start.character} ${english(problem.message)}` : problem.kind,
  );
};

describe('solid class', () => {
  it('comes with the size of the thread, before and after the other traits', () => {
    const bolt = {
      diameter: { number: '8', unit: 'mm' },
      pitch: { number: '1.25', unit: 'mm' },
      propertyClass: '8.8',
    };
    expect(solid('"M8x1.25" solid class 8.8').solid).toEqual(bolt);
    expect(solid('"M8" threads oiled, solid class 8.8 left-hand')).toMatchObject({
      solid: bolt,
      oiled: true,
      leftHand: true,
      handTightIsFinal: false,
    });
    expect(solid('"M8x1"\n   solid class 10.9, hand-tight is final')).toMatchObject({
      solid: { propertyClass: '10.9' },
      handTightIsFinal: true,
    });
  });

  it('does not apply to a joint that does not say it', () => {
    expect(solid('"M8x1.25" threads oiled').solid).toBeNull();
    expect(solid('').solid).toBeNull();
  });

  it('that is none is answered with those that are, at the figure', () => {
    expect(told('"M8" solid class 7.7')).toEqual([
      '37 There is no property class 7.7: write the one marked on the head or the end of the bolt, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9.',
    ]);
  });

  it('with a decimal comma is answered with the point', () => {
    expect(resolved('"M8" solid class 10,9').problems).toMatchObject([{ kind: 'syntax', replacement: '10.9' }]);
  });

  it('needs a thread, and a metric one', () => {
    expect(told('solid class 8.8')).toEqual([
      '20 What a bolt can take is calculated from its thread: write it before “solid class”, like "M8x1.25", or "M8" for the coarse pitch.',
    ]);
    expect(told('"3/8-24 UNF" solid class 8.8')).toEqual([
      '20 “3/8-24 UNF” is not read as a metric thread, and only ISO metric threads are judged by their class: write it with its pitch, like "M8x1.25" ("M8" alone is the coarse one, M3 to M36). Leave “solid class” out for inch threads.',
    ]);
    expect(told('"M13" solid class 8.8')).toHaveLength(1);
  });

  it('is refused to a part with another in it or a port on it: it is hollow', () => {
    const hollow = (inside: string) =>
      `20 stud has ${inside} in it, so it is hollow: it has less metal than its thread suggests, and its torque cannot be judged by the thread. Leave “solid class” out.`;
    const at = (message: string) => message.replace(/^20/u, '25');
    expect(told('"M8" solid class 8.8', ' part needle "Needle" in stud')).toEqual([at(hollow('needle'))]);
    expect(told('"M8" solid class 8.8', ' part pin "Pin" through stud')).toEqual([at(hollow('pin'))]);
    expect(told('"M8" solid class 8.8', ' port leak on stud')).toEqual([at(hollow('leak'))]);
  });

  it('may be given at a nut, for the stud that it is on', () => {
    const { families, problems } = resolved('"M8"', ' part nut "Nut" on stud\n joint nut to stud "M8" solid class 8.8');
    expect(problems).toEqual([]);
    expect(families[0]!.joints.find(({ part }) => part === 'nut')!.solid?.propertyClass).toBe('8.8');
  });

  it('said twice is reported once', () => {
    const { families, problems } = resolved('"M8" solid class 8.8, solid class 10.9');
    expect(problems).toHaveLength(1);
    expect(families[0]!.joints[0]!.solid?.propertyClass).toBe('8.8');
  });
});
