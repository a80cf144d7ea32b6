/** A shim that sets a volume: its rate is in what is read, and the advice follows from it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { checkFiles } from '../../language/db/workspace.ts';
import { wordsIn } from '../../language/i18n/index.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import { buildRecommendations } from '../../language/recommendations/advised.ts';

const shop = {
  uri: 'shop',
  text: readFileSync(fileURLToPath(new URL('../corpus/shop.rebuild', import.meta.url)), 'utf8'),
};

const feeder = (rate: string) =>
  checkFiles([
    shop,
    {
      uri: 'x',
      text: `family feeder "Feed pump" {
  part body "Body"  held in "fixture"
  part shim "Shim"  in body  chosen from shims-8
  port inlet on body
  proven by delivery
}
procedure feed "Feed" for feeder at corpus-shop revision A {
  spec shim-rate "Rate" rate ${rate} source "Invented"
  number F-1
  stage one at rig {
    test delivery read volume at 600 rpm for 200 strokes within 50 mL ±2 with GC-100 source "x" on fail reshim (3 times)
  }
  repair reshim { choose shim to bring delivery to 50 mL by shim-rate }
}
job 5 of feed revision A at corpus-shop {
  unit 1 number F-1 serial 1 {
    shim out 1.30 mm with MIC-1   delivery 44 mL on GC-100
  }
}
`,
    },
  ]);

it('works a shim out of a rate in volume', () => {
  const [job] = feeder('4 mL per 0.1 mm').jobs;
  const said = buildRecommendations(job!, wordsIn('en')).map(({ sentence }) => sentence?.replaceAll('\u00a0', ' '));
  // 6 mL are wanted, and 4 mL come of 0.1 mm: 0.15 mm; the drawer has steps of 0.02 mm.
  expect(said).toEqual(['Fit 1.44 mm (now 1.30 mm): expect 50 mL']);
});

it('refuses a rate of something else than what is read, and one per nothing that is fitted', () => {
  const found = (rate: string) =>
    feeder(rate)
      .diagnostics.filter(({ rule }) => rule === 'wrong-kind-of-unit')
      .map(fullMessage);
  expect(found('4 mL per 0.1 mm')).toEqual([]);
  expect(found('4 bar per 0.1 mm')[0]).toContain('and delivery is a volume');
  expect(found('4 mL per 3 s')[0]).toContain('per 3');
});
