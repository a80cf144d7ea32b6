import { pathToFileURL } from 'node:url';
import { type Parsed, parse } from '../../../language/syntax/parse.ts';
import { langiumParse } from '../../parse/reference.ts';
import type { Bench } from '../bench.ts';
import { type Contestant, processorTime, sideBySide } from '../measure/side-by-side.ts';
import { longPath, longProcedure, withSlip } from '../workload/procedures.ts';
import { yamlText } from '../workload/records.ts';

const parsing: Bench = {
  title: 'the parser, whole and after an edit, against Langium’s and `yaml`: processor time',
  inProcess: true,
  async *run({ peers, quick }) {
    const yaml = peers === null ? null : ((await import(pathToFileURL(peers.yaml).href)) as Yaml);
    for (const [steps, times] of [
      [100, 40],
      [10_000, 1],
    ] as const) {
      const { text } = longProcedure(steps).find(({ path }) => path === longPath)!;
      const wrong = withSlip(text);
      const peerText = yamlText(Buffer.byteLength(text));
      let before: Parsed = parse(text);
      let isWrong = false;
      const each = (name: string, work: () => unknown): Contestant => ({
        name,
        measure: () =>
          processorTime(() => {
            for (let time = 0; time < times; time++) work();
          }) / times,
      });
      const edit = () => {
        isWrong = !isWrong;
        before = parse(isWrong ? wrong : text, before);
      };
      yield {
        kind: 'comparison',
        unit: 'ms',
        work: `parse of ${steps.toLocaleString('en')} steps, ${(Buffer.byteLength(text) / 1000).toFixed(0)} kB`,
        measured: await sideBySide(
          [
            each('Handtight', () => parse(text)),
            each('after an edit', edit),
            each('Langium', () => langiumParse(text)),
            ...(yaml === null ? [] : [each('yaml', () => yaml.parseDocument(peerText))]),
          ],
          { most: quick ? 5 : 15, seconds: 60, warm: 2 },
        ),
        limits: [],
      };
    }
  },
};
export default parsing;

interface Yaml {
  parseDocument(text: string): unknown;
}
