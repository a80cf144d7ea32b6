import { allSteps } from '../../../analysis/locations.ts';
import type { Source } from '../../../model/source.ts';
import { say } from '../../../say/say.ts';
import type { Rule } from '../../rule.ts';

/** A test is held to the spec of another test, although there is one of its own name. */
export const limitOfAnotherTest: Rule<{ source: Source; name: string }> = {
  code: 'limit-of-another-test',
  severity: 'error',
  since: '0.2.0',
  title: 'A test is held to the spec of another test, although there is one of its own name.',
  procedure(procedure, report) {
    const steps = allSteps(procedure);
    const tests = new Set(steps.flatMap((step) => (step.verb === 'test' || step.verb === 'set' ? step.gate.test : [])));
    const specs = new Set(procedure.specs.map(({ name }) => name));
    for (const step of steps) {
      if ((step.verb !== 'test' && step.verb !== 'set') || step.limit?.form !== 'spec') continue;
      const { test } = step.gate;
      const { spec, source } = step.limit;
      if (spec === test || !specs.has(test) || !tests.has(spec)) continue;
      report({
        at: step,
        source,
        message: say`${test} is held to ${spec}, which is the figure of another test; there is a spec called ${test}.`,
        why: say`the figures of two tests are seldom the same, and the certificate shows the wrong one.`,
        help: say`Write “within ${test}”.`,
        data: step.call === null ? { source, name: test } : undefined,
      });
    }
  },
  fix({ source, name }) {
    return { title: say`Write ${name}`, safe: false, edits: [{ source, text: name }] };
  },
};
