/** What is wrong with the command line or the file, as a sentence. */
export class UsageError extends Error {}
