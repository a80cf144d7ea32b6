import type { SourceFile } from '../../../language/db/workspace.ts';
import type { FuzzCase } from '../case.ts';
import type { Random } from '../random.ts';
import { someWorkspace } from '../seeds.ts';

/** A text that grows with a size: what costs more than it should shows here. */
interface Bomb {
  readonly name: string;
  /** Sizes that the tests build; the larger ones are for the hour by hand. */
  readonly sizes: readonly number[];
  readonly by: (size: number) => string;
}

const many = (size: number, one: (index: number) => string) =>
  Array.from({ length: size }, (_, index) => one(index)).join('');

const shopAndFamily = `shop s {
  station t pressure
  station b dirty
  gauge G range 0..400 bar class 0.25 at t
  stock drawer from 1.00 mm to 1.95 mm by 0.05 mm
}
family f {
  part body
  part shim in body chosen from drawer
  part spring on shim
  part nut on body holds spring
  port inlet on body
  joint nut to body
  proven by opening
}
`;
const procedure = (inside: string, head = 'procedure p for f at s') => `${head}
  revision A
{
  spec opening pressure 250 bar +8 -0 source "x"
  spec rate rate 96 bar per mm source "x"
${inside}
}
`;
const stage = (steps: string, name = 'only') => `  stage ${name} at t {\n${steps}\n  }\n`;

/** Sizes are such that each is far below a second where the work grows with the text. */
export const bombs: readonly Bomb[] = [
  {
    name: 'nested only',
    sizes: [5, 40],
    by: (size) =>
      shopAndFamily + procedure(`  number A\n${stage(`${'only A { '.repeat(size)}receive${' }'.repeat(size)}`)}`),
  },
  { name: 'open braces', sizes: [10, 60], by: (size) => `procedure p ${'{ '.repeat(size)}` },
  { name: 'heads with no end', sizes: [10, 60], by: (size) => 'stage {\n'.repeat(size) },
  {
    name: 'long list of parts',
    sizes: [50, 200],
    by: (size) => shopAndFamily + procedure(stage(`    wash ${many(size, (index) => `${index > 0 ? ', ' : ''}body`)}`)),
  },
  {
    name: 'many parts',
    sizes: [20, 60],
    by: (size) =>
      `shop s { station t }\nfamily f {\n  part p0\n${many(size, (index) => `  part p${index + 1} on p${index}\n`)}}\nprocedure p for f at s {\n  stage a at t {\n    remove ${many(size, (index) => `${index > 0 ? ', ' : ''}p${size - index}`)}\n  }\n}\n`,
  },
  {
    name: 'sequences that double',
    sizes: [3, 6],
    by: (size) =>
      `sequence q0 { receive }\n${many(size, (index) => `sequence q${index + 1} { q${index}   q${index} }\n`)}${shopAndFamily}${procedure(stage(`    q${size}`))}`,
  },
  {
    name: 'chain of like',
    sizes: [5, 12],
    by: (size) =>
      shopAndFamily +
      procedure(stage('    receive'), 'procedure p0 for f at s') +
      many(
        size,
        (index) => `procedure p${index + 1} for f at s like p${index} {\n  after receive in only {\n    tag\n  }\n}\n`,
      ),
  },
  {
    name: 'ring of like',
    sizes: [1, 4],
    by: (size) =>
      shopAndFamily + many(size, (index) => `procedure p${index} for f at s like p${(index + 1) % size} {\n}\n`),
  },
  {
    name: 'ring of sequences',
    sizes: [1, 4],
    by: (size) =>
      many(size, (index) => `sequence q${index} { q${(index + 1) % size} }\n`) +
      shopAndFamily +
      procedure(stage('    q0')),
  },
  {
    name: 'repairs for every gate',
    sizes: [2, 5],
    by: (size) =>
      shopAndFamily +
      procedure(
        stage(
          many(
            size,
            (index) =>
              `    test t${index} accept "x" on fail ${many(size, (other) => `${other > 0 ? ', ' : ''}r${other} (twice)`)}\n`,
          ),
        ) + many(size, (index) => `  repair r${index} {\n    relieve\n    clean outside\n  }\n`),
      ),
  },
  {
    name: 'long string',
    sizes: [1000, 5000],
    by: (size) => shopAndFamily + procedure(stage(`    do "${'a b '.repeat(size / 4)}"`)),
  },
  { name: 'long name', sizes: [200, 1000], by: (size) => `family ${'x'.repeat(size)} { part ${'y'.repeat(size)} }\n` },
  {
    name: 'long number',
    sizes: [50, 300],
    by: (size) =>
      shopAndFamily +
      procedure(`  spec a pressure ${'9'.repeat(size)}.${'9'.repeat(size)} bar ±1 source "x"\n${stage('    receive')}`),
  },
  {
    name: 'many numbers',
    sizes: [10, 40],
    by: (size) =>
      shopAndFamily +
      procedure(
        `${many(size, (index) => `  number N-${index} {\n    opening ${200 + index} bar +8 -0 source "x"\n  }\n`)}${stage('    test opening read pressure within opening on fail')}`,
      ),
  },
  {
    name: 'many units',
    sizes: [12, 40],
    by: (size) =>
      `${shopAndFamily}${procedure(`  number A\n${stage('    test opening read pressure within opening on fail r (once)')}  repair r {\n    choose shim to bring opening to 254 bar by rate\n  }\n`)}job 1 of p at s {\n${many(size, (index) => `  unit ${index + 1} number A serial ${index} {\n    shim out 1.30 mm  opening 231 bar\n  }\n`)}}\n`,
  },
  {
    name: 'many lines that cannot be read',
    sizes: [20, 80],
    by: (size) => shopAndFamily + procedure(stage('    zork the thing\n'.repeat(size))),
  },
  {
    name: 'many cylinders',
    sizes: [8, 32],
    by: (size) =>
      `shop s { station t }\nfamily f {\n  part body\n  part valve on body for each cylinder 1..${size}\n  part cap on valve for each cylinder 1..${size}\n}\nprocedure p for f at s {\n  stage a at t { remove cap, valve }\n}\n`,
  },
];

function built(random: Random): SourceFile {
  const bomb = random.pick(bombs);
  return { uri: 'bomb.rebuild', text: bomb.by(random.pick(bomb.sizes)) };
}

/** Built texts, alone or beside sound ones. */
export function bomb(random: Random): FuzzCase {
  return { kind: 'bombs', versions: [[...(random.chance(0.3) ? someWorkspace(random) : []), built(random)]] };
}
