import type { Bench } from '../bench.ts';
import { sideBySide } from '../measure/side-by-side.ts';
import { spreadOf } from '../measure/spread.ts';
import { node, ourCommand, type Used } from '../programs/command.ts';
import { manyProcedures } from '../workload/procedures.ts';
import { schema, yamlText } from '../workload/records.ts';

const peerName = 'yaml with schema';

const check: Bench = {
  title: 'the whole process of `handtight check` on a folder, cold and with the cache, against YAML with a schema',
  async *run(setting) {
    const { folders, checkouts, peers, quick, brief } = setting;
    for (const count of quick ? [100] : [1000, 5000]) {
      const folder = folders.of(`check ${count}`, () => manyProcedures(count));
      const yaml = folders.of(`yaml ${count}`, () => [
        { path: 'schema.json', text: JSON.stringify(schema) },
        ...manyProcedures(count).map(({ path, text }) => ({
          path: path.replace(/rebuild$/u, 'yaml'),
          text: yamlText(Buffer.byteLength(text)),
        })),
      ]);
      const used = new Map<string, Used[]>();
      const measured = (name: string, run: () => Promise<Used>) => ({
        name,
        async measure() {
          const one = await run();
          used.set(name, [...(used.get(name) ?? []), one]);
          return one.wall;
        },
      });
      const warm = new Map(checkouts.map(({ name }) => [name, folders.empty()]));
      for (const checkout of checkouts) await ourCommand(setting, checkout, folder, warm.get(checkout.name)!, 'check');
      const spreads = await sideBySide(
        [
          ...checkouts.flatMap((checkout) => [
            measured(`${checkout.name}, cold`, () => ourCommand(setting, checkout, folder, folders.empty(), 'check')),
            measured(`${checkout.name}, with the cache`, () =>
              ourCommand(setting, checkout, folder, warm.get(checkout.name)!, 'check'),
            ),
          ]),
          ...(peers === null
            ? []
            : [measured(peerName, () => node([peers.checkYaml, yaml, `${yaml}/schema.json`], yaml))]),
        ],
        { most: brief ? 3 : 5, seconds: brief ? 30 : 120 },
      );
      const ofPeer = spreads.filter(({ name }) => name === peerName);
      for (const [how, times] of [
        ['cold', 1],
        ['with the cache', 0.3],
      ] as const) {
        const names = checkouts.map(({ name }) => `${name}, ${how}`);
        const compared = [...names, peerName].filter((name) => used.has(name));
        const work = `check of ${count.toLocaleString('en')} procedures, ${how}`;
        yield {
          kind: 'comparison',
          unit: 'ms',
          work,
          measured: [...spreads.filter(({ name }) => names.includes(name)), ...ofPeer],
          limits: [{ of: 'median', times, than: peerName }],
        };
        const spread = (of: (one: Used) => number) =>
          compared.map((name) => ({ name, spread: spreadOf(used.get(name)!.map(of)) }));
        const row = { kind: 'comparison', limits: [] } as const;
        yield { ...row, unit: 'ms', work: `${work}: processor time`, measured: spread(({ processor }) => processor) };
        yield { ...row, unit: 'MB', work: `${work}: most memory`, measured: spread(({ memory }) => memory) };
      }
    }
  },
};
export default check;
