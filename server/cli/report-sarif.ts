import { isAbsolute } from 'node:path';
import type { Log, PhysicalLocation, Result } from 'sarif';
import { URI } from 'vscode-uri';
import { rules } from '../../language/diagnostics/index.ts';
import { fullMessage } from '../../language/model/diagnostic.ts';
import type { Source } from '../../language/model/source.ts';
import type { Checked } from './check.ts';
import { visibleJson } from './visible.ts';

/** SARIF 2.1.0 (OASIS), for code scanning. Lines and columns count from one there. */
export function sarifReport({ diagnostics }: Checked): string {
  const results = diagnostics.map(
    (diagnostic): Result => ({
      ruleId: diagnostic.rule,
      ruleIndex: rules.findIndex((rule) => rule.code === diagnostic.rule),
      level: diagnostic.severity === 'error' ? 'error' : 'warning',
      message: { text: fullMessage(diagnostic) },
      properties: { message: diagnostic.message, why: diagnostic.why, help: diagnostic.help, when: diagnostic.when },
      locations: [{ physicalLocation: physical(diagnostic.source) }],
      ...(diagnostic.related === undefined
        ? {}
        : {
            relatedLocations: diagnostic.related.map(({ message, source }, id) => ({
              id,
              message: { text: message },
              physicalLocation: physical(source),
            })),
          }),
    }),
  );
  const log: Log = {
    version: '2.1.0',
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    runs: [
      {
        tool: {
          driver: {
            name: 'handtight',
            rules: rules.map(({ code, title, severity }) => ({
              id: code,
              shortDescription: { text: title },
              defaultConfiguration: { level: severity === 'error' ? 'error' : 'warning' },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        results,
      },
    ],
  };
  return `${visibleJson(log)}\n`;
}

function physical({ file, range }: Source): PhysicalLocation {
  return {
    artifactLocation: { uri: uriOf(file) },
    region: {
      startLine: range.start.line + 1,
      startColumn: range.start.character + 1,
      endLine: range.end.line + 1,
      endColumn: range.end.character + 1,
    },
  };
}

/** A file below the current folder is named from there, one elsewhere in full. */
function uriOf(file: string): string {
  return isAbsolute(file) ? URI.file(file).toString() : URI.file(`/${file}`).toString().slice('file:///'.length);
}
