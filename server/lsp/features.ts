/** All features that are in files of their own. */
import type { Feature, Session } from './feature.ts';
import { format } from './format.ts';
import { hierarchy } from './hierarchy.ts';
import { hints } from './hints.ts';
import { lenses } from './lenses.ts';
import { navigation } from './navigation.ts';
import { pull } from './pull.ts';
import { signature } from './signature.ts';
import { structure } from './structure.ts';
import { tokens } from './tokens.ts';

const features: readonly Feature[] = [navigation, signature, format, hints, structure, tokens, lenses, hierarchy, pull];

export function registerFeatures(session: Session): void {
  for (const feature of features) feature.register(session);
}
