import { visible } from './visible.ts';

/**
 * How far a long print has come, on the standard error and only where that is a terminal. By `ora`: it is kept up, asks for
 * terminal, CI and dumb terminals by itself, and takes its line away while others are written, to either stream. The
 * bars of cli-progress leave traces there, and its last release is of 2023; listr2 needs the work to be put into its own tasks.
 */
export interface Progress {
  readonly say: (words: string) => void;
  readonly stop: () => void;
}

const silent: Progress = { say: () => {}, stop: () => {} };

export async function startProgress(): Promise<Progress> {
  // A terminal that does not know its width says 0, and ora would count lines of no width forever.
  if (!process.stderr.isTTY || process.stderr.columns === 0) return silent;
  const { default: ora } = await import('ora');
  // The keyboard is left alone: Ctrl-C stays a signal.
  const spinner = ora({ discardStdin: false });
  if (!spinner.isEnabled) return silent;
  return {
    say: (words) => {
      spinner.text = visible(words);
      if (spinner.isSpinning) spinner.render();
      else spinner.start();
    },
    stop: () => void spinner.stop(),
  };
}
