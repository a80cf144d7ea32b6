/** Offers the server for assistants (`handtight mcp`) to the editor, for each folder that is open. */
import { type Disposable, type ExtensionContext, lm, McpStdioServerDefinition, workspace } from 'vscode';

/** Must be the id in the manifest. */
const id = 'handtight.assistant';

export function registerAssistant(context: ExtensionContext): Disposable {
  return lm.registerMcpServerDefinitionProvider(id, {
    provideMcpServerDefinitions: () =>
      (workspace.workspaceFolders ?? [])
        .filter(({ uri }) => uri.scheme === 'file')
        .map(({ name, uri }) => {
          const server = new McpStdioServerDefinition(
            `Handtight (${name})`,
            process.execPath,
            [context.asAbsolutePath('out/handtight.mjs'), 'mcp', '--workspace', uri.fsPath],
            // The editor's own program runs as Node so.
            { ELECTRON_RUN_AS_NODE: '1' },
            context.extension.packageJSON.version as string,
          );
          server.cwd = uri;
          return server;
        }),
  });
}
