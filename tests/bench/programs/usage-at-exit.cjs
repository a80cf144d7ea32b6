/** Loaded before a program that is measured: writes what the process has used, when it ends. */
const { writeFileSync } = require('node:fs');
const { isMainThread } = require('node:worker_threads');

if (isMainThread)
  process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    const used = { processor: (userCPUTime + systemCPUTime) / 1000, memory: (maxRSS * 1024) / 1e6 };
    writeFileSync(process.env.USAGE_REPORT, JSON.stringify(used));
  });
