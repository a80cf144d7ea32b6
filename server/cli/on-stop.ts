const signals = ['SIGINT', 'SIGTERM'] as const;

/**
 * Says something when the program is asked to stop (Ctrl-C), and lets it end by the signal, as whoever started it expects.
 * Files are written in one go between two signals: there is none half done. Call what it gives back when the work is over.
 */
export function onStop(say: () => void): () => void {
  const stop = (signal: NodeJS.Signals) => {
    say();
    // Other listeners, as of a spinner, only put the terminal in order; the line above has done so.
    process.removeAllListeners(signal);
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, stop);
  return () => {
    for (const signal of signals) process.off(signal, stop);
  };
}
