import { buildOrder, type Row } from '../analysis/build-order.ts';
import { Relations } from '../analysis/relations.ts';
import type { Family, Part } from '../model/family.ts';
import type { Shop } from '../model/shop.ts';
import { type Said, say } from '../say/say.ts';
import { alignedColumns } from './align.ts';
import { blank, firstOfBase, list } from './blank.ts';
import { DraftedSteps } from './steps.ts';
import { chooseWorkplaces, type Workplaces } from './workplaces.ts';

/** What a first procedure is written from. */
export interface DraftRequest {
  readonly family: Family;
  readonly shop: Shop;
  /** Name and title of the procedure. */
  readonly name: string;
  readonly title: string;
  /** Tests and settings of the family that give a figure, each with its kind, such as `pressure`; the others are watched. */
  readonly reads: ReadonlyMap<string, string>;
  /** Says the words of the draft in the language of who writes on. */
  readonly tell: (said: Said) => string;
}

/**
 * A first procedure for a family: taken in, read as found, taken apart, washed, looked at, built, set, tested, matched, closed
 * and signed off, in the order that the family gives. It checks clean but for its blanks: no figure in it is invented.
 */
export function draftProcedure(request: DraftRequest): string {
  const relations = Relations.of(request.family);
  const rows = oneOfEach(buildOrder(relations));
  const draft = { ...request, relations, rows, at: chooseWorkplaces(request.shop) };
  const { name, title, family, shop, tell } = request;
  return [
    `// ${tell(say`A first draft, made from the family. Each ${blank} is for you to fill in: no figure is given that nobody gave.`)}`,
    `procedure ${name} "${title}" for ${family.name} at ${shop.name}`,
    `  revision A   written by "${blank}"   approved by "${blank}" on ${blank}`,
    '{',
    ...specLines(draft),
    ...[...stages(draft), ...repairs(draft), ...sequences(draft)].flatMap((block) => ['', ...block]),
    '}',
    '',
  ].join('\n');
}

/** Copies of a part are worked on together, by the name that they share. */
function oneOfEach(rows: readonly Row[]): Row[] {
  return firstOfBase(rows, ({ part }) => part.base).map(({ part, inner }) => ({
    part,
    inner: firstOfBase(inner, ({ base }) => base),
  }));
}

interface Draft extends DraftRequest {
  readonly relations: Relations;
  readonly rows: readonly Row[];
  readonly at: Workplaces;
}

function specLines(draft: Draft): string[] {
  const { family, reads, relations, tell } = draft;
  const steps = new DraftedSteps(draft);
  const figures = [
    ...new Set([...family.provenBy.map(({ name }) => name), ...family.adjusters.map(({ sets }) => sets)]),
  ]
    .filter((name) => reads.has(name))
    .map((name) => [`  spec ${name}`, `"${sentence(name)}"`, reads.get(name)!, blank, `source "${blank}"`]);
  const turned = family.joints
    .filter(({ handTightIsFinal }) => !handTightIsFinal)
    .map(({ part }) => relations.part(part));
  const torques = firstOfBase(turned, ({ base }) => base).map(({ base, baseTitle }) => [
    `  spec ${base}-fit`,
    `"${tell(say`${baseTitle} torque`)}"`,
    'torque',
    blank,
    `source "${blank}"`,
  ]);
  const rate = family.provenBy.some(({ name }) => steps.repairOf(name) === 'reshim')
    ? [['  spec shim-rate', `"${tell(say`Shim rate`)}"`, 'rate', blank, `source "${blank}"`]]
    : [];
  return alignedColumns([...figures, ...torques, ...rate]);
}

function stages(draft: Draft): string[][] {
  const { family, relations, rows, at, reads, tell } = draft;
  const steps = new DraftedSteps(draft);
  const inTransit = family.ports.filter(({ under, openInTransit }) => under === null && !openInTransit);
  const ports = inTransit.map(({ base }) => base);
  const covered = family.ports.filter(({ under }) => under !== null).map(({ base }) => base);
  const loose = rows.flatMap(rowParts).filter((part) => !part.renewed && part.name !== steps.body);
  const names = loose.map(({ base }) => base);
  const read = family.provenBy.find(({ name }) => reads.has(name))?.name;
  const { guard, guards } = steps;
  const kept = names.filter((name) => !guards.includes(name));
  const waiting = steps.waiting();
  const keep = (station: string) =>
    kept.length === 0 ? [] : [`keep ${list(kept)} at ${station} "${tell(say`Own lidded basket, own number`)}"`];
  return [
    stage('receive', tell(say`Take in`), at.dirty, [
      'receive',
      'tag',
      ...verb('cap', ports),
      ...(at.solvent === null ? [] : [`clean outside with ${at.solvent}`]),
    ]),
    ...(read === undefined
      ? []
      : [
          stage('as-found', tell(say`As found`), at.tester, [
            ...verb('uncap', ports),
            ...steps.onto,
            `read ${read} as found`,
            ...steps.off,
            ...verb('cap', ports),
          ]),
        ]),
    stage('teardown', tell(say`Strip and mark`), at.dirty, [
      ...(steps.body === undefined ? [] : [`mark ${steps.body} with number, serial "${blank}"`]),
      ...steps.clamped([...steps.takenApart(), ...keep(at.wet), ...guard, ...verb('cap', covered)]),
    ]),
    stage('clean', tell(say`Wash and look over`), at.wet, [
      ...verb('uncap', [...ports, ...covered]),
      ...verb('remove', guards),
      `wash ${list([...(steps.body === undefined ? [] : [steps.body]), ...names])} in ${at.solvent ?? blank}`,
      'blow-dry all with air at most 2 bar',
      ...looks(family, relations, steps.body),
      ...guard,
      ...keep(at.clean),
    ]),
    stage('build', tell(say`Build`), at.clean, [
      ...verb('remove', guards),
      ...(at.oil === null ? [] : [`rinse all in ${at.oil}`]),
      ...steps.clamped([
        'put-together',
        ...(waiting.length === 0 ? [] : [`keep ${list(waiting)} at ${at.tester} "${tell(say`Own cup, own number`)}"`]),
      ]),
      ...steps.felt,
    ]),
    ...(steps.isSet
      ? [stage('set', tell(say`Set`), at.tester, [...steps.onto, ...steps.primed, 'set-and-close'])]
      : []),
    stage('prove', tell(say`Test`), at.tester, [
      ...(steps.isSet ? [] : steps.onto),
      ...steps.primed,
      ...family.provenBy.map(({ name }) => test(name, reads.get(name), steps.repairOf(name))),
      ...steps.off,
    ]),
    ...(family.provenAcrossSet.length === 0
      ? []
      : [
          stage(
            'match',
            tell(say`Match the set`),
            at.tester,
            family.provenAcrossSet.map(
              ({ name }) =>
                `across the set ${name} spread at most ${blank} source "${blank}"   on fail ${steps.repairOf(name)} (${blank} times) of the furthest out`,
            ),
            ', the set together',
          ),
        ]),
    stage('finish', tell(say`Finish`), at.clean, [...verb('cap', ports), `sign-off by "${blank}"`]),
  ];
}

function repairs(draft: Draft): string[][] {
  const steps = new DraftedSteps(draft);
  return steps.repairs().map(({ name, title, steps: lines }) => block(`repair ${name} "${title}"`, lines));
}

function sequences(draft: Draft): string[][] {
  return new DraftedSteps(draft).sequences().map(({ name, steps }) => block(`sequence ${name}`, steps));
}

/** What is watched says so in words; the pulses of a fast lever would spoil an open gauge. */
function test(name: string, kind: string | undefined, repair: string): string {
  const how = kind === undefined ? `at ${blank} with gauge shut accept "${blank}"` : `read ${kind} within ${name}`;
  return `test ${name} ${how}   on fail ${repair} (${blank} times)`;
}

/** What a look finds is renewed with what is matched to it; the body, which has the number, only where nothing else is. */
function looks(family: Family, relations: Relations, body: string | undefined): string[] {
  const renewed = (parts: readonly string[]) => {
    const all = [...new Set(parts.flatMap((part) => [part, ...relations.matches(part)]))];
    const others = all.filter((part) => part !== body);
    return list((others.length === 0 ? all : others).map((part) => relations.part(part).base));
  };
  const checked = firstOfBase(family.alwaysChecked, ({ name }) => relations.part(name).base);
  const faces = family.faces.filter(({ finish }) => finish === 'lapped');
  return [
    ...(faces.length === 0
      ? []
      : [
          `check ${list(faces.map(({ id }) => id))} reuse if "${blank}" reject if "${blank}"   on fail renew ${renewed(faces.map(({ part }) => part))} (once)`,
        ]),
    ...checked.map(
      ({ name }) => `check ${relations.part(name).base} "${blank}"   on fail renew ${renewed([name])} (once)`,
    ),
  ];
}

function rowParts({ part, inner }: Row): readonly Part[] {
  return [part, ...inner];
}

function verb(word: string, objects: readonly string[]): string[] {
  return objects.length === 0 ? [] : [`${word} ${list(objects)}`];
}

function stage(name: string, title: string, at: string, steps: readonly string[], how = ''): string[] {
  return block(`stage ${name} "${title}" at ${at}${how}`, steps);
}

function block(head: string, steps: readonly string[]): string[] {
  return [`  ${head} {`, ...steps.map((step) => `    ${step}`), '  }'];
}

function sentence(name: string): string {
  const words = name.replaceAll('-', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
