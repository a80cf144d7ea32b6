import module from 'node:module';

// A second start compiles nothing anew. Node 20 does not know how: there it only starts a little later.
module.enableCompileCache?.();

// A reader that has seen enough (`| head`) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

const { run } = await import('./run.ts');
process.exitCode = await run(process.argv);
