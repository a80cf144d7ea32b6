import { say } from '../../../say/say.ts';
import { behind, blank } from '../../edits.ts';
import { judgedRule } from '../../judged-rule.ts';

export const toolNotWrittenDown = judgedRule({
  code: 'tool-not-written-down',
  severity: 'warning',
  ofAbsence: true,
  title: 'A figure is judged, and the tool that showed it is not written down.',
  why: say`whoever certifies a figure says what showed it.`,
  fix: (at) => ({ title: say`Write the tool`, safe: false, edits: [behind(at, ` on ${blank}`)] }),
});
