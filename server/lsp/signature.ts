/** What a verb takes, in the protocol's terms. */
import { signatureAt } from '../../language/ide/signature.ts';
import { asked, type Feature } from './feature.ts';

export const signature: Feature = {
  register(session) {
    session.connection.onSignatureHelp(({ textDocument: { uri }, position }) => {
      const { snapshot, file } = asked(session, uri);
      const found = signatureAt(snapshot, file, position, session.reader().tell);
      if (found === null) return null;
      const { label, documentation, parameters, active } = found;
      return {
        signatures: [
          {
            label,
            documentation: { kind: 'markdown', value: documentation },
            parameters: parameters.map(([from, to]) => ({ label: [from, to] })),
            activeParameter: active ?? parameters.length,
          },
        ],
        activeSignature: 0,
      };
    });
  },
};
