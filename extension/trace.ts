/**
 * Where the messages of the server are logged. The client asks the level of its channel, which is no setting of ours: so the
 * setting `handtight.trace.server` gets a channel whose level it is.
 */
import { Disposable, EventEmitter, LogLevel, type LogOutputChannel, workspace } from 'vscode';

/** Must be the setting in the manifest. */
const setting = 'handtight.trace.server';

/** A channel that writes what is traced into another one, as long as the setting says so. */
export function traceChannel(into: LogOutputChannel): LogOutputChannel & Disposable {
  const level = () => (workspace.getConfiguration().get(setting, 'off') === 'off' ? LogLevel.Off : LogLevel.Trace);
  const changed = new EventEmitter<LogLevel>();
  const configured = workspace.onDidChangeConfiguration((event) => {
    if (event.affectsConfiguration(setting)) changed.fire(level());
  });
  return {
    ...into,
    get logLevel() {
      return level();
    },
    onDidChangeLogLevel: changed.event,
    trace: (message, ...more) => into.info(message, ...more),
    dispose: () => Disposable.from(changed, configured).dispose(),
  };
}
