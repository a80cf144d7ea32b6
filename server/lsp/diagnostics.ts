/** Findings, in the protocol's terms. */
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver-types';
import { isUnnecessary, problemText } from '../../language/ide/problem.ts';
import type { Finding, Severity } from '../../language/model/diagnostic.ts';

/** Who says it, in the editor's list of problems. */
const diagnosticSource = 'handtight';

/**
 * A finding as a diagnostic: its code is the rule, and the code's link opens the rule's page.
 * @param rulePage URI of a rule's page, null where it has none
 * @param clientUri the client's spelling of a file's URI
 */
export function diagnosticOf(
  finding: Finding,
  rulePage: (rule: string) => string | null,
  clientUri: (uri: string) => string,
): Diagnostic {
  const page = rulePage(finding.rule);
  return {
    range: finding.source.range,
    severity: severityOf(finding.severity),
    code: finding.rule,
    ...(page === null ? {} : { codeDescription: { href: page } }),
    source: diagnosticSource,
    message: problemText(finding),
    ...(isUnnecessary(finding) ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(finding.related === undefined
      ? {}
      : {
          relatedInformation: finding.related.map(({ message, source }) => ({
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
