import { LspDriver } from '../../lsp-driver.ts';

const running = new Set<LspDriver>();

/** Starts a language server on its standard streams. */
export function startServer(args: readonly string[], env = process.env): LspDriver {
  const driver = new LspDriver(process.execPath, [...args, '--stdio'], { env });
  running.add(driver);
  void driver.exited.then(() => running.delete(driver));
  return driver;
}

/** Ends what a bench that failed has left behind. */
export function killServers(): void {
  for (const { process } of running) process.kill();
  running.clear();
}
