import { looseParts } from '../../../analysis/loose.ts';
import { bareFaces, isDraining, openPorts } from '../../../analysis/openings.ts';
import { capital, faceWords, listed, partsWords } from '../../../analysis/prose.ts';
import { say } from '../../../say/say.ts';
import { blank } from '../../edits.ts';
import { on, type Rule } from '../../rule.ts';
import { fixStep, missingBefore, type StepFix } from '../../step-fixes.ts';

/** The unit waits for somebody, or is sent out, with ports open, lapped faces bare or parts loose. */
export const noSafeStop: Rule<StepFix> = {
  code: 'no-safe-stop',
  severity: 'warning',
  since: '0.2.0',
  title: 'The unit waits for somebody or is sent out with ports open, lapped faces bare or parts loose.',
  flow: (flow, report) => ({
    step: on(['hold-for', 'send-out'], ({ step, before, path }) => {
      const { procedure } = flow.graph;
      const when = step.verb === 'hold-for' ? say`while the unit waits` : say`when the unit is sent out`;
      const why = say`nobody knows for how long, or who handles it`;
      const open = isDraining(flow, before) ? null : openPorts(flow, before);
      if (open !== null) {
        const { names, since, cause } = open;
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: say`${names.length > 1 ? say`Ports` : say`Port`} ${listed(names)} ${names.length > 1 ? say`are` : say`is`} open ${when}.`,
          why: say`${why}.`,
          help: say`Write “cap ${names.join(', ')}” before this step.`,
        });
      }
      for (const { face, since, cause } of bareFaces(flow, before)) {
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: say`${capital(faceWords(procedure, face.id))} is bare ${when}.`,
          why: say`${why}.`,
          help: say`${face.guardedBy === null ? say`Cover it first` : say`Write “guard ${face.id} with ${face.guardedBy}” before this step`}.`,
          data: face.guardedBy === null ? undefined : missingBefore(step, `guard ${face.id} with ${face.guardedBy}`),
        });
      }
      const loose = looseParts(flow, before);
      if (loose === null) return;
      const names = loose.parts.map((part) => part.name);
      report({
        at: step,
        path,
        since: loose.since,
        rootCause: loose.cause,
        message: say`The ${partsWords(procedure, names)} ${names.length > 1 ? say`lie` : say`lies`} loose ${when}.`,
        why: say`${why}.`,
        help: say`Write “keep ${[...new Set(loose.parts.map((part) => part.base))].join(', ')}” before this step.`,
        data: missingBefore(step, `keep ${[...new Set(loose.parts.map((part) => part.base))].join(', ')} ${blank}`),
      });
    }),
  }),
  fix: fixStep,
};
