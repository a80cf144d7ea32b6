/** All features that are in files of their own. */
import type { ClientCapabilities, ServerCapabilities } from 'vscode-languageserver';
import type { Feature, Session } from './feature.ts';
import { format } from './format.ts';
import { navigation } from './navigation.ts';
import { signature } from './signature.ts';

const features: readonly Feature[] = [navigation, signature, format];

export function featureCapabilities(client: ClientCapabilities): ServerCapabilities {
  return Object.assign({}, ...features.map((feature) => feature.capabilities(client)));
}

export function registerFeatures(session: Session): void {
  for (const feature of features) feature.register(session);
}
