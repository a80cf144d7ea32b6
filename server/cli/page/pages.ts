/** The answers of the ledger as pages. */
import { term } from '../../../language/say/say.ts';
import type { AffectedBy, history, Learned } from '../../host/ledger/questions.ts';
import { roleText } from '../../host/ledger/result-words.ts';
import type { Row } from '../../host/ledger/sqlite.ts';
import { type OpenJob, share, visitFacts, visitTitle } from '../ledger.ts';
import { worded, words } from '../messages.ts';
import type { Column } from '../rows.ts';
import { heading, lines, type Page, pageTable, plots } from './page.ts';
import type { Plot, PlotPoint } from './plot.ts';

type History = NonNullable<ReturnType<typeof history>>;

/** Each visit with its results, and how each reading went from visit to visit. */
export function historyPage(word: string, { by, visits }: History): Page {
  const of = (role: string, name: string) =>
    visits.flatMap(({ unit, results }) =>
      results.flatMap((one) =>
        one.role === role && one.name === name && one.value !== null
          ? [{ on: String(one.day ?? unit.closed), value: Number(one.value) }]
          : [],
      ),
    );
  const read = visits.flatMap(({ results }) => results.filter((one) => one.role === 'as left' && one.value !== null));
  const drawn = [...new Map(read.map((one) => [String(one.name), String(one.value_unit)])).entries()].map(
    ([name, unit]): Plot => ({
      title: worded`${name}, visit by visit`,
      unit,
      form: by === 'serial' ? 'line' : 'points',
      series: ['as found', 'as left'].map((role) => ({ name: words(term(role)), points: of(role, name) })),
    }),
  );
  return {
    title: worded`History: ${term(by)} ${word}`,
    about: worded`The last visit first.`,
    blocks: [
      ...(visits.length > 1 ? plots(drawn) : []),
      ...visits.flatMap(({ unit, results }) => [
        heading(visitTitle(unit)),
        lines(visitFacts(unit)),
        pageTable(results, visitColumns()),
      ]),
    ],
  };
}

const visitColumns = (): readonly Column<Row>[] => [
  { key: 'role', head: worded`what`, value: (row) => (row.role === 'words' ? row.name : roleText(row, words)) },
  {
    key: 'value',
    head: worded`reading`,
    value: ({ value, value_unit: unit, note }) => (value === null ? note : `${value} ${unit}`),
  },
  {
    key: 'passed',
    head: worded`verdict`,
    value: ({ passed }) => (passed === null ? null : passed === 1 ? worded`pass` : worded`fail`),
  },
  { key: 'limited', head: worded`limit`, value: (row) => row.limited },
  { key: 'tool', head: worded`tool`, value: (row) => [row.tool, row.watched].filter((one) => one !== null).join(', ') },
  { key: 'person', head: worded`by`, value: (row) => row.person },
  { key: 'day', head: worded`day`, value: (row) => row.day },
];

interface AffectedTable {
  readonly columns: readonly Column<Row>[];
  readonly summary: string;
}

const asked = ['tool', 'by', 'batch', 'procedure', 'revision', 'from', 'to', 'within'] as const;

/** How near to its limit each reading was, day by day, by unit of measure: a gauge that drifts shows. */
export function affectedPage(
  rows: readonly Row[],
  of: AffectedBy & { readonly within?: string | undefined },
  { columns, summary }: AffectedTable,
): Page {
  const figures = rows.filter(({ margin, day }) => typeof margin === 'number' && day !== null);
  const different = (all: readonly Row[], what: string) => [...new Set(all.map((row) => String(row[what])))];
  return {
    title: worded`What was judged so`,
    about: `${asked.flatMap((name) => (of[name] === undefined ? [] : `--${name} ${of[name]}`)).join(' ')}. ${summary}`,
    blocks: [
      ...plots(
        different(figures, 'value_unit').map((unit) => {
          const own = figures.filter((row) => row.value_unit === unit);
          return {
            title: worded`Inside its limit by`,
            unit,
            form: 'points',
            from: 0,
            series: different(own, 'name').map((name) => ({
              name,
              points: own
                .filter((row) => row.name === name)
                .map((row) => ({ on: String(row.day), value: Number(row.margin) })),
            })),
          };
        }),
      ),
      pageTable(rows, columns),
    ],
  };
}

/** Month by month: for each procedure, and comebacks by cause. */
export function learnPage(
  rows: readonly Learned[],
  { procedure, from, to }: Pick<AffectedBy, 'procedure' | 'from' | 'to'>,
  columns: readonly Column<Learned>[],
): Page {
  const over = (of: (row: Learned) => Omit<PlotPoint, 'on'> | null) =>
    [...new Set(rows.map((row) => row.procedure))].map((name) => ({
      name,
      points: rows.flatMap((row) => {
        const point = row.procedure === name ? of(row) : null;
        return point === null ? [] : [{ on: row.month, ...point }];
      }),
    }));
  const shares = (of: (row: Learned) => number | null) =>
    over((row) => {
      const value = of(row);
      return value === null ? null : { value };
    });
  const causes = [...new Set(rows.flatMap(({ comebacks }) => Object.keys(comebacks)))].sort();
  const months = [...new Set(rows.map(({ month }) => month))];
  const came = (month: string, cause: string) =>
    rows.reduce((sum, row) => sum + (row.month === month ? (row.comebacks[cause] ?? 0) : 0), 0);
  const percent = { unit: '%', form: 'line', from: 0, to: 100 } as const;
  const rateUnits = [...new Set(rows.flatMap(({ rate }) => (rate === null ? [] : [rate.unit])))];
  const options = [
    ['procedure', procedure],
    ['from', from],
    ['to', to],
  ].flatMap(([name, value]) => (value === undefined ? [] : `--${name} ${value}`));
  return {
    title: worded`What the closed jobs show`,
    about: [worded`Month by month, by the day of closing.`, ...options].join(' '),
    blocks: [
      ...plots([
        {
          ...percent,
          title: worded`passed at once`,
          series: shares(({ firstPass, units }) => share(firstPass, units)),
        },
        {
          ...percent,
          title: worded`as found still good`,
          series: shares(({ foundPassed, found }) => share(foundPassed, found)),
        },
        ...rateUnits.map(
          (unit): Plot => ({
            title: worded`What a shim brought, with its standard error`,
            unit: `${unit} per mm`,
            form: 'points',
            series: over(({ rate }) =>
              rate?.unit === unit
                ? { value: Number(rate.slope.toFixed(2)), error: Number(rate.error.toFixed(2)) }
                : null,
            ),
          }),
        ),
        {
          title: worded`came back, by cause`,
          unit: worded`units`,
          form: 'stack',
          from: 0,
          series: causes.map((name) => ({ name, points: months.map((on) => ({ on, value: came(on, name) })) })),
        },
      ]),
      pageTable(rows, columns),
    ],
  };
}

export function openPage(rows: readonly OpenJob[], today: string, columns: readonly Column<OpenJob>[]): Page {
  return { title: worded`What is in the house`, about: today, blocks: [pageTable(rows, columns)] };
}
