/** Findings, in the protocol's terms. */
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver-types';
import { type Finding, type Severity, shortMessage } from '../../language/model/diagnostic.ts';

/** What the editor shows after a diagnostic's source. */
const diagnosticSource = 'handtight';

/** Findings of what is written and does nothing: the editor shows it faded. */
const unnecessary = new Set([
  'allow-without-effect',
  'spec-unused',
  'part-unused',
  'step-unreachable',
  'nothing-done-here',
  'repair-changes-nothing',
]);

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
    message: finding.step === undefined ? shortMessage(finding) : `Step ${finding.step}: ${shortMessage(finding)}`,
    ...(unnecessary.has(finding.rule) ? { tags: [DiagnosticTag.Unnecessary] } : {}),
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
