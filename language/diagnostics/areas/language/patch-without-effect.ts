import { problemRule } from '../../problem-rule.ts';

export const patchWithoutEffect = problemRule({
  code: 'patch-without-effect',
  title: 'A patch changes nothing, or the same step as another patch.',
});
