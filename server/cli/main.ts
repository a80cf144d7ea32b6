import module from 'node:module';

// A second start compiles nothing again. Node 20 does not know how: there it only starts a little later.
module.enableCompileCache?.();

for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that has seen enough (`| head`) closes the pipe: that is no error.
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0);
    // Where even this cannot be said, the exit code does: the answer did not arrive.
    const why = error.code === 'ENOSPC' ? 'the disk that it goes to is full' : error.message;
    if (stream === process.stdout) process.stderr.write(`handtight: The answer could not be written: ${why}.\n`);
    process.exit(2);
  });
}

const { run } = await import('./run.ts');
const { defect } = await import('./defect.ts');
// What a library left to itself may throw.
process.on('uncaughtException', (error) => process.exit(defect(error)));
process.exitCode = await run(process.argv);
