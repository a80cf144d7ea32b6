import { own } from '../../model/steps.ts';
import type { Verb } from '../../model/verbs.ts';
import type { Quantity } from '../../quantities/types.ts';
import { verbsThat } from '../../syntax/verbs/index.ts';
import { type Calls, either, stepSays, worksWith } from './calls.ts';
import type { Scene } from './caution.ts';
import { metAt, nearDeclares, stepDeclares } from './declared.ts';
import { atLeast, figuresOf, ofKind } from './figures.ts';

/** Verbs at which what is driven may be driven. */
const drives: readonly Verb[] = verbsThat('drives');

/** A resistance from here on is read by an insulation tester, which brings a high voltage of its own (common practice, no source). */
const insulates: Quantity = { number: '1', unit: 'MΩ' };

/** The resistance of an insulation is read. */
export const testsInsulation: Calls = ({ procedure, step }) => {
  const figure = atLeast(figuresOf(procedure, step), insulates);
  return figure === null ? null : worksWith(figure);
};

/** What the step reads, or its figures, are electrical. */
function readsElectrical(scene: Scene) {
  const { procedure, step } = scene;
  const reads = own(step, 'test')?.reads;
  if (reads === 'voltage' || reads === 'current') return stepSays(`read ${reads}`);
  if (testsInsulation(scene) !== null) return null;
  if (reads === 'resistance') return stepSays(`read ${reads}`);
  const figure = ofKind(figuresOf(procedure, step), 'voltage', 'current', 'resistance');
  return figure === null ? null : worksWith(figure);
}

/** Driven electrically: a figure, a reading, or a live part, station or step. Handling a live part dead is not near it. */
export const isDriven: Calls = either(readsElectrical, stepDeclares('live'), metAt(drives, nearDeclares('live')));
