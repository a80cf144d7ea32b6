/** Findings, in the protocol's terms. */
import type { ClientCapabilities } from 'vscode-languageserver';
import { DiagnosticSeverity, DiagnosticTag, type Diagnostic as LspDiagnostic } from 'vscode-languageserver-types';
import { isUnnecessary, type Language, problemText, translated } from '../../language/ide/problem.ts';
import type { Diagnostic, Severity } from '../../language/model/diagnostic.ts';

/** Who says it, in the editor's list of problems. */
const diagnosticSource = 'handtight';

/**
 * A finding as a diagnostic: its code is the rule, and the code's link opens the rule's page.
 * @param rulePage URI of a rule's page, null where it has none
 * @param clientUri the client's spelling of a file's URI
 * @param client what the client can show
 * @param language of its texts
 */
export function diagnosticOf(
  found: Diagnostic,
  rulePage: (rule: string) => string | null,
  clientUri: (uri: string) => string,
  client: ClientCapabilities,
  language: Language,
): LspDiagnostic {
  const diagnostic = translated(found, language);
  const can = client.textDocument?.publishDiagnostics ?? client.textDocument?.diagnostic;
  const page = rulePage(diagnostic.rule);
  return {
    range: diagnostic.source.range,
    severity: severityOf(diagnostic.severity),
    code: diagnostic.rule,
    ...(page === null || can?.codeDescriptionSupport === false ? {} : { codeDescription: { href: page } }),
    source: diagnosticSource,
    message: problemText(diagnostic, language),
    ...(isUnnecessary(diagnostic) && can?.tagSupport !== undefined ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(diagnostic.related === undefined || can?.relatedInformation !== true
      ? {}
      : {
          relatedInformation: diagnostic.related.map(({ message, source }) => ({
            message,
            location: { uri: clientUri(source.file), range: source.range },
          })),
        }),
  };
}

function severityOf(severity: Severity): DiagnosticSeverity {
  switch (severity) {
    case 'error':
      return DiagnosticSeverity.Error;
    case 'warning':
      return DiagnosticSeverity.Warning;
    case 'hint':
      return DiagnosticSeverity.Hint;
  }
}
