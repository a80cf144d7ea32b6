import { looseParts } from '../../../analysis/loose.ts';
import { bareFaces, isDraining, openPorts } from '../../../analysis/openings.ts';
import { capital, faceWords, listed, partsWords } from '../../../analysis/prose.ts';
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
      const when = step.verb === 'hold-for' ? 'while the unit waits' : 'when the unit is sent out';
      const why = 'nobody knows for how long, or who handles it';
      const open = isDraining(flow, before) ? null : openPorts(flow, before);
      if (open !== null) {
        const { names, since, cause } = open;
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: `${names.length > 1 ? 'Ports' : 'Port'} ${listed(names)} ${names.length > 1 ? 'are' : 'is'} open ${when}.`,
          why: `${why}.`,
          help: `Write “cap ${names.join(', ')}” before this step.`,
        });
      }
      for (const { face, since, cause } of bareFaces(flow, before)) {
        report({
          at: step,
          path,
          since,
          rootCause: cause,
          message: `${capital(faceWords(procedure, face.id))} is bare ${when}.`,
          why: `${why}.`,
          help: `${face.guardedBy === null ? 'Cover it first' : `Write “guard ${face.id} with ${face.guardedBy}” before this step`}.`,
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
        message: `The ${partsWords(procedure, names)} ${names.length > 1 ? 'lie' : 'lies'} loose ${when}.`,
        why: `${why}.`,
        help: `Write “keep ${[...new Set(loose.parts.map((part) => part.base))].join(', ')}” before this step.`,
        data: missingBefore(step, `keep ${[...new Set(loose.parts.map((part) => part.base))].join(', ')} ${blank}`),
      });
    }),
  }),
  fix: fixStep,
};
