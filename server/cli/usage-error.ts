/** The command was called wrongly, or its input cannot be read: exit code 2, the message alone. */
export class UsageError extends Error {}
